using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;
using NodaTime.Text;
using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>
/// Stations on ruled lines of time: a thick line from start to end, and under it what, when and who. Entries whose words
/// would touch stand on lines of their own.
/// </summary>
internal sealed class TimeLine(
    CoachSheet sheet,
    double width,
    TextStyle body,
    TextStyle strong,
    TextStyle name,
    PaperWords words
)
{
    private const double Label = 92;
    private const double LeastText = 100;
    private const double Apart = 8;
    private const double Every = 5;

    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    private static readonly XPen Bar = new(XColors.Black, 3);

    private double Minutes =>
        Math.Max(1, Math.Max(sheet.Minutes, sheet.Stations.Select(s => s.EndMin).DefaultIfEmpty(1).Max()));

    private double At(double minute) => Label + ((width - Label) * Math.Clamp(minute / Minutes, 0, 1));

    /// <summary>Clock times over the lines.</summary>
    public Row Axis() =>
        new(
            body.LineHeight + 3,
            (g, x, y) =>
            {
                double free = 0;
                for (double minute = 0; minute <= Minutes + 1e-9; minute += Every)
                {
                    string text = ClockAt(minute);
                    double left = Math.Min(At(minute), width - body.Width(text));
                    if (left < free)
                    {
                        continue;
                    }

                    body.Draw(g, text, x + left, y + body.Ascent);
                    free = left + body.Width(text) + 6;
                }

                g.DrawLine(Ink.BlackLine, x, y + body.LineHeight + 1, x + width, y + body.LineHeight + 1);
            }
        );

    public IEnumerable<Block> Stations()
    {
        foreach (
            IGrouping<Sentence, CoachStation> station in sheet
                .Stations.GroupBy(s => s.Station)
                .OrderBy(g => g.Min(s => s.StartMin))
                .ThenBy(g => g.Key.ToString(), StringComparer.Ordinal)
        )
        {
            yield return StationBlock(
                words.Say(station.Key),
                [.. station.OrderBy(s => s.StartMin).ThenBy(s => s.EndMin)]
            );
        }
    }

    private Block StationBlock(string station, IReadOnlyList<CoachStation> entries)
    {
        var lanes = new List<(double Free, List<Entry> Entries)>();
        foreach (CoachStation entry in entries)
        {
            Entry laid = Lay(entry);
            int lane = lanes.FindIndex(l => l.Free <= laid.Left + 0.01 && l.Free <= laid.TextLeft + 0.01);
            if (lane < 0)
            {
                lanes.Add((0, []));
                lane = lanes.Count - 1;
            }

            lanes[lane].Entries.Add(laid);
            lanes[lane] = (Math.Max(laid.Right, laid.TextRight + Apart), lanes[lane].Entries);
        }

        Row[] label = [.. Rows.Text(0, Label - Apart, new Run(station, name))];
        var rows = new List<Row>();
        for (int i = 0; i < lanes.Count; i++)
        {
            Row lane = Lane(lanes[i].Entries);
            rows.Add(i == 0 ? Rows.Beside(label, [lane]) : lane);
        }

        rows.Add(Rows.Rule(Ink.ThinRule, width, 1, 2));
        return new Block([.. rows.Select(Gridded)]) { HeadWithin = [.. label.Select(Gridded)] };
    }

    private Entry Lay(CoachStation entry)
    {
        double left = At(entry.StartMin);
        double right = Math.Max(left + 2, At(entry.EndMin));
        double textWidth = Math.Min(Math.Max(right - left - Apart, LeastText), width - Label);
        double textLeft = Math.Max(Label, Math.Min(left, width - textWidth));
        Row[] said =
        [
            .. Rows.Text(
                textLeft,
                textWidth,
                new Run(words.Say(entry.Exercise), strong),
                new Run(ForAll(entry) is { } all ? words.Say(all) + ";" : "", body),
                new Run(
                    words.Say(
                        entry.EasyUntilMin is { } easy
                            ? Sentence.Of(
                                $"{ClockAt(entry.StartMin)} to {ClockAt(entry.EndMin)}, easy until {ClockAt(easy)}"
                            )
                            : Sentence.Of($"{ClockAt(entry.StartMin)} to {ClockAt(entry.EndMin)}")
                    ),
                    body
                )
            ),
            .. Rows.Text(textLeft, textWidth, new Run(string.Join(", ", Who(entry)), body)),
        ];
        return new Entry(left, right, textLeft, textLeft + textWidth, said);
    }

    /// <summary>What is set up alike for all of a turn; null where nothing is, or not alike.</summary>
    private static Sentence? ForAll(CoachStation entry) =>
        entry.Settings is [{ } first, ..] && entry.Settings.All(s => first.Equals(s)) ? first : null;

    /// <summary>Names, each with what is set up for that one where it is not alike for all.</summary>
    private IEnumerable<string> Who(CoachStation entry) =>
        ForAll(entry) is not null || entry.Settings.All(s => s is null)
            ? entry.AthleteNames
            : entry.AthleteNames.Zip(entry.Settings, (who, set) => set is null ? who : $"{who} ({words.Say(set)})");

    private static Row Lane(IReadOnlyList<Entry> entries) =>
        new(
            9 + entries.Max(e => e.Words.Sum(r => r.Height)),
            (g, x, y) =>
            {
                foreach (Entry entry in entries)
                {
                    g.DrawLine(Bar, x + entry.Left, y + 4, x + entry.Right, y + 4);
                    g.DrawLine(Ink.BlackLine, x + entry.Left, y + 1, x + entry.Left, y + 7);
                    g.DrawLine(Ink.BlackLine, x + entry.Right, y + 1, x + entry.Right, y + 7);
                    Rows.Stack(g, entry.Words, x, y + 8);
                }
            }
        );

    private Row Gridded(Row row) =>
        row.Over(
            (g, x, y) =>
            {
                for (double minute = 0; minute <= Minutes + 1e-9; minute += Every)
                {
                    g.DrawLine(Ink.FaintRule, x + At(minute), y, x + At(minute), y + row.Height);
                }
            }
        );

    /// <summary>Clock time to the nearest minute.</summary>
    private string ClockAt(double minute) =>
        Clock.Format(sheet.Start.PlusMinutes((long)Math.Round(minute, MidpointRounding.AwayFromZero)));

    private sealed record Entry(double Left, double Right, double TextLeft, double TextRight, IReadOnlyList<Row> Words);
}
