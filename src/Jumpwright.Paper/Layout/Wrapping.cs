using System.Globalization;
using Jumpwright.Quantities;

namespace Jumpwright.Paper.Layout;

/// <summary>
/// Breaks text into lines that are never wider than asked: first between words, never between a number and its unit where a line has room
/// for both; a word too long for a line is cut, after a hyphen if it has one.
/// </summary>
internal static class Wrapping
{
    public static IReadOnlyList<IReadOnlyList<Piece>> Lines(IEnumerable<Run> runs, double widthPt)
    {
        var lines = new List<IReadOnlyList<Piece>>();
        var line = new List<Piece>();
        double x = 0;
        foreach (Run run in runs)
        {
            double space = run.Style.Width(" ");
            foreach (string word in Words(run, widthPt))
            {
                double width = run.Style.Width(word);
                double gap = line.Count == 0 ? 0 : space;
                if (line.Count > 0 && x + gap + width > widthPt + 0.01)
                {
                    lines.Add(line);
                    line = [];
                    x = 0;
                    gap = 0;
                }

                Place(line, word, run.Style, x, gap);
                x = line[^1].X + run.Style.Width(line[^1].Text);
            }
        }

        if (line.Count > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>Joins a word to the piece before it where the style is the same, so that text reads back as text.</summary>
    private static void Place(List<Piece> line, string word, TextStyle style, double x, double gap)
    {
        if (line.Count > 0 && ReferenceEquals(line[^1].Style, style))
        {
            line[^1] = line[^1] with { Text = line[^1].Text + " " + word };
        }
        else
        {
            line.Add(new Piece(word, style, x + gap));
        }
    }

    private static IEnumerable<string> Words(Run run, double widthPt)
    {
        string printable = Fonts.PaperFonts.Printable(Unbroken.In(run.Text));
        foreach (string word in printable.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(Fitting))
        {
            if (run.Style.Width(word) <= widthPt)
            {
                yield return word;
                continue;
            }

            string part = "";
            TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(word);
            while (elements.MoveNext())
            {
                string element = elements.GetTextElement();
                if (part.Length > 0 && run.Style.Width(part + element) > widthPt)
                {
                    int hyphen = part.LastIndexOf('-') + 1;
                    int cut = hyphen > 0 ? hyphen : part.Length;
                    yield return part[..cut];
                    part = part[cut..];
                }

                part += element;
            }

            yield return part;
        }

        // What belongs together is drawn, and read back, with ordinary spaces.
        IEnumerable<string> Fitting(string held) =>
            held.Replace(Unbroken.Space, ' ') is var whole && run.Style.Width(whole) <= widthPt
                ? [whole]
                : whole.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }
}
