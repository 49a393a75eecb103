using System.Globalization;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>
/// What can be read on a printed card or sheet, read back from the PDF's bytes alone: it knows nothing of the records
/// the paper was made from. Use it to prove what stands on paper, and what does not.
/// </summary>
internal sealed partial class CardText
{
    private const double PointsPerCm = 72 / 2.54;

    private CardText(IReadOnlyList<IReadOnlyList<Word>> pages, IReadOnlyList<(double WidthPt, double HeightPt)> sizes)
    {
        Pages = pages;
        Sizes = sizes;
        All = Squeeze(string.Join(' ', pages.SelectMany(Lines)));
    }

    /// <summary>The words of each page with their boxes, pt from the bottom left.</summary>
    public IReadOnlyList<IReadOnlyList<Word>> Pages { get; }

    public IReadOnlyList<(double WidthPt, double HeightPt)> Sizes { get; }

    /// <summary>Everything in reading order, single spaces.</summary>
    public string All { get; }

    public static CardText Read(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        var pages = document.GetPages().ToList();
        return new CardText(
            [.. pages.Select(p => (IReadOnlyList<Word>)[.. p.GetWords()])],
            [.. pages.Select(p => (p.Width, p.Height))]
        );
    }

    /// <summary>True when the words stand on the paper, whatever the line breaks and case.</summary>
    public bool Says(string text) => All.Contains(Squeeze(text), StringComparison.OrdinalIgnoreCase);

    /// <summary>Fails unless the words stand on the paper.</summary>
    public void MustSay(string text) =>
        Assert.True(Says(text), $"The paper does not say \"{Squeeze(text)}\". It says: {All}");

    /// <summary>Fails if the words stand on the paper. Give names of exercises, not ids.</summary>
    public void MustNotSay(string text) =>
        Assert.False(Says(text), $"The paper says \"{Squeeze(text)}\", which is forbidden here. It says: {All}");

    /// <summary>
    /// Names of the exercises in the order they are done: what is set in the type of exercise names, each after its number.
    /// </summary>
    public IReadOnlyList<string> ExerciseNames()
    {
        const double NameType = 13;
        const double NumberType = 17;
        var names = new List<List<string>>();
        foreach (IReadOnlyList<Word> page in Pages)
        {
            var ofPage = page.Where(w => w.Letters.Count > 0)
                .Select(w => (Word: w, Size: w.Letters[0].PointSize, Line: w.Letters[0].StartBaseLine.Y))
                .OrderByDescending(w => Math.Round(w.Line))
                .ThenBy(w => w.Word.BoundingBox.Left);
            foreach (var (word, size, _) in ofPage)
            {
                if (Math.Abs(size - NumberType) < 0.1)
                {
                    names.Add([]);
                }
                else if (Math.Abs(size - NameType) < 0.1 && names.Count > 0)
                {
                    names[^1].Add(word.Text);
                }
            }
        }

        return [.. names.Select(n => string.Join(' ', n))];
    }

    /// <summary>Every box to land on, m.</summary>
    public IReadOnlyList<double> BoxesM() => [.. HeightsCmAfter("land on a box of").Select(cm => cm / 100)];

    /// <summary>Every height in cm that stands after one of these words, for example <c>step off</c> or <c>box</c>.</summary>
    public IReadOnlyList<double> HeightsCmAfter(string words) =>
        [
            .. Regex
                .Matches(
                    All,
                    Regex.Escape(words) + @"\s+(\d+(?:\.\d+)?) cm",
                    RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
                    TimeSpan.FromSeconds(5)
                )
                .Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)),
        ];

    /// <summary>Every drop that an athlete is told to step off, m.</summary>
    public IReadOnlyList<double> DropsM() => [.. HeightsCmAfter("step off").Select(cm => cm / 100)];

    /// <summary>Total ground contacts as printed; null where the card has none.</summary>
    public int? TotalContacts() =>
        TotalLine().Match(All) is { Success: true } m
            ? int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture)
            : null;

    /// <summary>Every dose as printed, sets and reps.</summary>
    public IReadOnlyList<(int Sets, int Reps)> Doses() =>
        [
            .. DoseText()
                .Matches(All)
                .Select(m =>
                    (
                        int.Parse(m.Groups["sets"].Value, CultureInfo.InvariantCulture),
                        int.Parse(m.Groups["reps"].Value, CultureInfo.InvariantCulture)
                    )
                ),
        ];

    /// <summary>Fails if a letter stands nearer to the sheet's edge than asked, or outside the given middle of it.</summary>
    public void MustStayInside(double widthCm, double heightCm)
    {
        for (int i = 0; i < Pages.Count; i++)
        {
            double side = (Sizes[i].WidthPt - (widthCm * PointsPerCm)) / 2;
            double end = (Sizes[i].HeightPt - (heightCm * PointsPerCm)) / 2;
            foreach (Word word in Pages[i])
            {
                PdfRectangle box = word.BoundingBox;
                Assert.True(
                    box.Left >= side - 0.5
                        && box.Right <= Sizes[i].WidthPt - side + 0.5
                        && box.Bottom >= end - 0.5
                        && box.Top <= Sizes[i].HeightPt - end + 0.5,
                    $"\"{word.Text}\" on page {i + 1} stands outside the safe area: {box}"
                );
            }
        }
    }

    /// <summary>Fails if two words lie over each other.</summary>
    public void MustNotOverlap()
    {
        for (int p = 0; p < Pages.Count; p++)
        {
            Word[] words = [.. Pages[p].Where(w => !string.IsNullOrWhiteSpace(w.Text))];
            for (int i = 0; i < words.Length; i++)
            {
                for (int j = i + 1; j < words.Length; j++)
                {
                    PdfRectangle a = words[i].BoundingBox;
                    PdfRectangle b = words[j].BoundingBox;
                    double wide = Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left);
                    double high = Math.Min(a.Top, b.Top) - Math.Max(a.Bottom, b.Bottom);
                    Assert.False(
                        wide > 0.8 && high > 0.8,
                        $"\"{words[i].Text}\" and \"{words[j].Text}\" lie over each other on page {p + 1}."
                    );
                }
            }
        }
    }

    /// <summary>The smallest type on the paper, pt, of words that hold this many letters at least.</summary>
    public double SmallestType(double aboveBottomCm = 0)
    {
        double smallest = double.MaxValue;
        for (int p = 0; p < Pages.Count; p++)
        {
            foreach (Word word in Pages[p].Where(w => w.BoundingBox.Bottom > aboveBottomCm * PointsPerCm))
            {
                smallest = Math.Min(smallest, word.Letters.Min(l => l.PointSize));
            }
        }

        return smallest;
    }

    private static IEnumerable<string> Lines(IReadOnlyList<Word> words) => words.Select(w => w.Text);

    private static string Squeeze(string text) => Space().Replace(text.Replace('\u00A0', ' '), " ").Trim();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 5_000)]
    private static partial Regex Space();

    [GeneratedRegex(@"Total ground contacts: (?<n>\d+)", RegexOptions.CultureInvariant, 5_000)]
    private static partial Regex TotalLine();

    [GeneratedRegex(@"(?<sets>\d+) × (?<reps>\d+)", RegexOptions.CultureInvariant, 5_000)]
    private static partial Regex DoseText();
}
