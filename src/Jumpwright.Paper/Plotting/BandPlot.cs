using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Reports;
using ScottPlot;

namespace Jumpwright.Paper.Plotting;

/// <summary>A line with its band, the measured points, and one marked place; reads the same without colour.</summary>
internal static class BandPlot
{
    public static Plot Draw(ReportPlot data, string language)
    {
        if (data.Line.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A curve needs at least one place.", nameof(data));
        }

        Plot plot = PlotSheet.Empty(data.Title, 76, PlotSheet.Trend);
        double[] x = [.. data.Line.Select(s => s.X)];
        if (x.Length > 1)
        {
            var band = plot.Add.FillY(x, [.. data.Line.Select(s => s.Low)], [.. data.Line.Select(s => s.High)]);
            band.FillColor = PlotSheet.Rule.WithAlpha(0.45);
            band.LineColor = PlotSheet.Rule;
            band.LineWidth = 1;
            band.MarkerStyle = MarkerStyle.None;
            var line = plot.Add.ScatterLine(x, [.. data.Line.Select(s => s.Mean)]);
            line.Color = PlotSheet.Accent;
            line.LineWidth = 2.5f;
            line.MarkerSize = 0;
        }

        if (!data.Points.IsDefaultOrEmpty)
        {
            double[] xs = [.. data.Points.Select(p => p.X)];
            double[] ys = [.. data.Points.Select(p => p.Y)];
            var dots = plot.Add.ScatterPoints(xs, ys);
            dots.Color = PlotSheet.Ink;
            dots.MarkerSize = 9;
        }

        double low = data.Line.Min(s => s.Low);
        double high = data.Line.Max(s => s.High);
        if (!data.Points.IsDefaultOrEmpty)
        {
            low = Math.Min(low, data.Points.Min(p => p.Y));
            high = Math.Max(high, data.Points.Max(p => p.Y));
        }

        double room = Math.Max(high - low, Math.Max(Math.Abs(high) * 0.02, 1e-9));
        double span = Math.Max(x[^1] - x[0], 1e-6);
        double top = high + (0.28 * room);
        plot.Axes.SetLimits(x[0] - (0.05 * span), x[^1] + (0.05 * span), low - (0.08 * room), top);
        if (data.Marked is { } marked)
        {
            if (data.MarkedTo is { } end && end > marked)
            {
                var range = plot.Add.HorizontalSpan(marked, end);
                range.FillStyle.Color = PlotSheet.Accent.WithAlpha(0.14);
                range.LineStyle.Width = 0;
                var far = plot.Add.VerticalLine(end);
                far.Color = PlotSheet.Ink;
                far.LineWidth = 1.5f;
                far.LinePattern = LinePattern.Dashed;
            }

            var mark = plot.Add.VerticalLine(marked);
            mark.Color = PlotSheet.Ink;
            mark.LineWidth = 1.5f;
            mark.LinePattern = LinePattern.Dashed;
            bool right = marked > x[0] + (span / 2);
            var text = plot.Add.Text(
                Fonts.PaperFonts.Printable((right ? data.MarkedLabel + " " : " " + data.MarkedLabel) ?? ""),
                marked,
                top - (0.03 * room)
            );
            text.LabelFontName = Fonts.PaperFonts.Family;
            text.LabelFontSize = PlotSheet.Type;
            text.LabelBold = true;
            text.LabelFontColor = PlotSheet.Ink;
            text.LabelAlignment = right ? Alignment.UpperRight : Alignment.UpperLeft;
        }

        if (!data.Ticks.IsDefaultOrEmpty)
        {
            var ticks = new ScottPlot.TickGenerators.NumericManual();
            foreach ((double place, string name) in data.Ticks)
            {
                ticks.AddMajor(place, name);
            }

            plot.Axes.Bottom.TickGenerator = ticks;
        }

        TracePlot.Label(plot.Axes.Left.Label, Fonts.PaperFonts.Printable(data.YLabel));
        TracePlot.Label(plot.Axes.Bottom.Label, Fonts.PaperFonts.Printable(data.XLabel));
        return PlotSheet.Spoken(plot, language);
    }

    public static byte[] Png(ReportPlot data, string language) => PlotSheet.Trend.Png(Draw(data, language));

    public static byte[] Jpeg(ReportPlot data, string language) => PlotSheet.Trend.Jpeg(Draw(data, language));

    public static string Svg(ReportPlot data, string language) =>
        InlineSvg.Of(Draw(data, language), PlotSheet.Trend, data.Title, data.InWords);
}
