using System.Globalization;
using Jumpwright.Quantities;
using NodaTime;
using ScottPlot;

namespace Jumpwright.Paper.Plotting;

/// <summary>Values over days, each with its ± bar; the last one is written out.</summary>
internal static class TrendPlot
{
    public static Plot Draw(IReadOnlyList<TrendPoint> points, string label, string unit, SentenceWriter writer)
    {
        if (points.Count == 0)
        {
            throw new ArgumentException("A trend needs at least one value.", nameof(points));
        }

        Plot plot = PlotSheet.Empty(label, 76, PlotSheet.Trend);
        TrendPoint[] inOrder = [.. points.OrderBy(p => p.Date)];
        LocalDate start = inOrder[0].Date;
        double[] x = [.. inOrder.Select(p => (double)Period.DaysBetween(start, p.Date))];
        double[] y = [.. inOrder.Select(p => p.Value)];
        double[] u = [.. inOrder.Select(p => Math.Abs(p.U))];
        double low = inOrder.Min(p => p.Value - Math.Abs(p.U));
        double high = inOrder.Max(p => p.Value + Math.Abs(p.U));
        double room = Math.Max(high - low, Math.Max(Math.Abs(high) * 0.02, 1e-9));
        double span = Math.Max(x[^1], 7);
        double middle = x[^1] / 2;
        plot.Axes.SetLimits(middle - (span * 0.62), middle + (span * 0.62), low - (0.25 * room), high + (0.5 * room));

        (double Day, double Mean)[] days = DayMeans(inOrder);
        if (days.Length > 1)
        {
            var line = plot.Add.ScatterLine(days.Select(d => d.Day).ToArray(), days.Select(d => d.Mean).ToArray());
            line.Color = PlotSheet.Accent;
            line.LineWidth = 1.5f;
            line.MarkerSize = 0;
        }

        var bars = plot.Add.ErrorBar(x, y, u);
        bars.Color = PlotSheet.Ink;
        bars.LineWidth = 2;
        bars.CapSize = 7;
        var dots = plot.Add.ScatterPoints(x, y);
        dots.Color = PlotSheet.Ink;
        dots.MarkerSize = 12;
        TrendPoint last = inOrder[^1];
        string said = writer.Write($"{Number(last.Value, last.U)} ± {Number(last.U, last.U)} {unit}");
        var text = plot.Add.Text(
            Fonts.PaperFonts.Printable(said),
            x[^1],
            // Above whatever stands under the words.
            inOrder.Where((_, i) => x[^1] - x[i] <= 0.45 * span).Max(p => p.Value + Math.Abs(p.U)) + (0.06 * room)
        );
        text.LabelFontName = Fonts.PaperFonts.Family;
        text.LabelFontSize = PlotSheet.Type;
        text.LabelBold = true;
        text.LabelFontColor = PlotSheet.Ink;
        text.LabelAlignment = inOrder.Length > 1 ? Alignment.LowerRight : Alignment.LowerCenter;
        plot.Axes.Bottom.TickGenerator = Days(inOrder, x, span, writer);
        TracePlot.Label(plot.Axes.Left.Label, Fonts.PaperFonts.Printable(unit));
        TracePlot.Label(plot.Axes.Bottom.Label, writer.Write($"Day (bars: ±)"));
        return PlotSheet.Spoken(plot, writer.Language);
    }

    /// <summary>
    /// What the line joins: each day by its mean, in days from the first. Between two values of one day nothing went on, so no line
    /// joins them.
    /// </summary>
    internal static (double Day, double Mean)[] DayMeans(IReadOnlyList<TrendPoint> points) =>
        [
            .. points
                .GroupBy(p => p.Date)
                .OrderBy(g => g.Key)
                .Select(g => ((double)Period.DaysBetween(points.Min(p => p.Date), g.Key), g.Average(p => p.Value))),
        ];

    /// <summary>Every value in words.</summary>
    public static Sentence InWords(IReadOnlyList<TrendPoint> points, string unit)
    {
        if (points.Count == 0)
        {
            return $"No values.";
        }

        Sentence values = Sentence.Join(
            "; ",
            points
                .OrderBy(p => p.Date)
                .Select(p => Sentence.Of($"{p.Date}: {Number(p.Value, p.U)} ± {Number(p.U, p.U)} {unit}"))
        );
        return $"{values}.";
    }

    /// <summary>Days of the points as far as they stand apart; the year on the first and wherever it changes.</summary>
    private static ScottPlot.TickGenerators.NumericManual Days(
        TrendPoint[] points,
        double[] x,
        double span,
        SentenceWriter writer
    )
    {
        var ticks = new ScottPlot.TickGenerators.NumericManual();
        double pxPerDay = PlotSheet.Trend.DataWidthPx / (span * 1.24);
        double free = double.NegativeInfinity;
        int year = int.MinValue;
        for (int i = 0; i < points.Length; i++)
        {
            LocalDate day = points[i].Date;
            string name = writer.Write(day.Year == year ? Sentence.Of($"{day:d MMM}") : Sentence.Of($"{day}"));
            double half = PlotSheet.WidthOf(name, PlotSheet.Type) / 2;
            if ((x[i] * pxPerDay) - half < free)
            {
                continue;
            }

            ticks.AddMajor(x[i], name);
            free = (x[i] * pxPerDay) + half + 12;
            year = day.Year;
        }

        return ticks;
    }

    /// <summary>As exactly as its doubt lets it, as everywhere.</summary>
    private static SaidNumber Number(double value, double u) =>
        new(
            value.ToString(
                "F" + Digits.Of(u, value).ToString(CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture
            )
        );
}
