using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Quantities;
using Jumpwright.Trials;
using ScottPlot;

namespace Jumpwright.Paper.Plotting;

/// <summary>Force over time. Phases are shaded in turn and named; nothing is said by colour alone.</summary>
internal static class TracePlot
{
    private const double BeforeMovementS = 0.5;
    private const double OfLandingS = 0.9;
    private const double RoomForFallS = 0.24;
    private const double BottomPx = 114;
    private const double LineGapPx = 23;

    /// <summary>Longer than the dashes of any other line in the picture, so that they are dashes at 288 pt of paper too.</summary>
    private static readonly LinePattern LongDashes = new([14, 7], 0, "long dashes");

    /// <summary>How much of a curve's end is taken for the force it ends with, s.</summary>
    private const double EndS = 0.1;

    public static Plot Draw(MotionTrace trace, string title, SentenceWriter writer)
    {
        Plot plot = PlotSheet.Empty(title, (float)BottomPx, PlotSheet.Trace);
        (double from, double to) = Seen(trace);
        double[] seen =
        [
            .. Enumerable
                .Range(0, trace.TimeS.Length)
                .Where(i => trace.TimeS[i] >= from && trace.TimeS[i] <= to)
                .Select(i => trace.ForceN[i]),
        ];
        double peak = Math.Max(seen.Length == 0 ? 0 : seen.Max(), trace.WeightN ?? 0);
        double top = peak <= 0 ? 1 : peak / 0.63;
        double bottom = Math.Min(0, seen.Length == 0 ? 0 : seen.Min()) - (0.02 * top);
        plot.Axes.SetLimits(from, to, bottom, top);
        double secondsPerPx = (to - from) / PlotSheet.Trace.DataWidthPx;
        Shade(plot, trace, from, to);
        Lines(plot, trace, from, to);
        Names(plot, trace, from, to, top, secondsPerPx, writer);
        Axes(plot, trace, peak, from, to, writer);
        Ends(plot, trace, from, to, (top - bottom) / PlotSheet.Trace.DataHeightPx(BottomPx), writer);
        return plot;
    }

    /// <summary>
    /// Each leg's name at its curve's own end: where they stand before the jump, else where the picture ends. The higher one's stands above it,
    /// the lower one's below, never on each other.
    /// </summary>
    private static void Ends(
        Plot plot,
        MotionTrace trace,
        double from,
        double to,
        double newtonsPerPx,
        SentenceWriter writer
    )
    {
        if (trace.LeftN.IsEmpty || trace.RightN.IsEmpty)
        {
            return;
        }

        bool standing = trace.Phases is [var first, ..] && first.Name == Tracing.Weighing;
        double left = EndOf(trace.LeftN);
        double right = EndOf(trace.RightN);
        bool leftAbove = left >= right;
        Named($"left", left, leftAbove, PlotSheet.Accent);
        Named($"right", right, !leftAbove, PlotSheet.Ink);

        void Named(Sentence name, double force, bool above, Color color)
        {
            string word = writer.Write(name);
            var text = plot.Add.Text(
                Fonts.PaperFonts.Printable(standing ? " " + word : word + " "),
                standing ? from : to,
                force + ((above ? 1 : -1) * 6 * newtonsPerPx)
            );
            text.LabelAlignment = (standing, above) switch
            {
                (true, true) => Alignment.LowerLeft,
                (true, false) => Alignment.UpperLeft,
                (false, true) => Alignment.LowerRight,
                _ => Alignment.UpperRight,
            };
            text.LabelFontName = Fonts.PaperFonts.Family;
            text.LabelFontSize = PlotSheet.Type;
            text.LabelBold = true;
            text.LabelFontColor = color;
        }

        double EndOf(ImmutableArray<double> forceN)
        {
            (double a, double b) = standing ? (from, from + EndS) : (to - EndS, to);
            double[] end =
            [
                .. Enumerable
                    .Range(0, Math.Min(trace.TimeS.Length, forceN.Length))
                    .Where(i => trace.TimeS[i] >= a && trace.TimeS[i] <= b)
                    .Select(i => forceN[i]),
            ];
            return end.Length == 0 ? 0 : end.Average();
        }
    }

    /// <summary>What the picture shows, in a sentence or two.</summary>
    public static Sentence InWords(MotionTrace trace)
    {
        List<Sentence> said =
        [
            trace.Phases.IsEmpty
                ? Sentence.Of($"Force over time.")
                : Sentence.Of(
                    $"Force over time: {Sentence.Join(", ", trace.Phases.Select(p => Sentence.Of($"{PhaseWords.Of(p)} {p.FromS:0.00} to {p.ToS:0.00} s")))}."
                ),
        ];
        if (trace.WeightN is { } weight)
        {
            said.Add($"Body weight {weight:0} N.");
        }

        if (!trace.LeftN.IsEmpty)
        {
            said.Add($"Left leg in dashes, right leg in dots, both in a full line.");
        }

        return Sentence.Join(" ", said);
    }

    private static (double From, double To) Seen(MotionTrace trace)
    {
        if (trace.TimeS.IsEmpty)
        {
            return (0, 1);
        }

        double from = trace.TimeS[0];
        double to = trace.TimeS[^1];
        if (trace.Phases is [var first, ..] && first.Name == Tracing.Weighing)
        {
            from = Math.Max(from, first.ToS - BeforeMovementS);
        }

        // A fall is often recorded from its last instant only; there has to be room for its name.
        if (trace.Phases.FirstOrDefault(p => p.Name == Tracing.Fall) is { } fall)
        {
            from = Math.Min(from, fall.ToS - RoomForFallS);
        }

        if (trace.Phases is [.., var last] && last.Name == Tracing.Landing)
        {
            to = Math.Min(to, last.FromS + OfLandingS);
        }

        return to > from ? (from, to) : (from, from + 1);
    }

    /// <summary>The phases, a fall from the picture's edge on.</summary>
    private static IEnumerable<Phase> Widened(MotionTrace trace, double from) =>
        trace.Phases.Select(p => p.Name == Tracing.Fall ? p with { FromS = Math.Min(p.FromS, from) } : p);

    private static void Shade(Plot plot, MotionTrace trace, double from, double to)
    {
        bool dark = false;
        foreach (Phase phase in Widened(trace, from).Where(p => p.ToS > from && p.FromS < to))
        {
            var span = plot.Add.HorizontalSpan(Math.Max(phase.FromS, from), Math.Min(phase.ToS, to));
            span.FillStyle.Color = dark ? PlotSheet.Accent.WithAlpha(0.14) : PlotSheet.Accent.WithAlpha(0.04);
            span.LineStyle.Width = 0;
            dark = !dark;
        }
    }

    private static void Lines(Plot plot, MotionTrace trace, double from, double to)
    {
        if (trace.WeightN is { } weight)
        {
            var line = plot.Add.HorizontalLine(weight);
            line.LineColor = PlotSheet.Ink;
            line.LineWidth = 1.5f;
            line.LinePattern = LinePattern.DenselyDashed;
        }

        if (!trace.LeftN.IsEmpty && !trace.RightN.IsEmpty)
        {
            // Told apart without colour: long dashes against dots, and each named at its end.
            Curve(plot, trace.TimeS, trace.LeftN, from, to, LongDashes, PlotSheet.Accent, 3f);
            Curve(plot, trace.TimeS, trace.RightN, from, to, LinePattern.Dotted, PlotSheet.Ink, 3.4f);
        }

        Curve(plot, trace.TimeS, trace.ForceN, from, to, LinePattern.Solid, PlotSheet.Ink, 2.6f);
        foreach (Phase flight in trace.Phases.Where(p => p.Name == Tracing.Flight))
        {
            Mark(plot, flight.FromS, from, to);
            Mark(plot, flight.ToS, from, to);
        }

        foreach (Phase fall in trace.Phases.Where(p => p.Name == Tracing.Fall))
        {
            Mark(plot, fall.ToS, from, to);
        }
    }

    private static void Mark(Plot plot, double atS, double from, double to)
    {
        if (atS < from || atS > to)
        {
            return;
        }

        var line = plot.Add.VerticalLine(atS);
        line.LineColor = PlotSheet.Accent;
        line.LineWidth = 2;
    }

    private static void Curve(
        Plot plot,
        IReadOnlyList<double> timeS,
        IReadOnlyList<double> forceN,
        double from,
        double to,
        LinePattern pattern,
        Color color,
        float width
    )
    {
        (double[] x, double[] y) = Thinned(timeS, forceN, from, to);
        var curve = plot.Add.ScatterLine(x, y);
        curve.LinePattern = pattern;
        curve.LineWidth = width;
        curve.Color = color;
        curve.MarkerSize = 0;
    }

    /// <summary>Lowest and highest of each column of the picture, so that no peak is lost and the file stays small.</summary>
    private static (double[] X, double[] Y) Thinned(
        IReadOnlyList<double> timeS,
        IReadOnlyList<double> forceN,
        double from,
        double to
    )
    {
        int first = 0;
        while (first < timeS.Count && timeS[first] < from)
        {
            first++;
        }

        int end = first;
        while (end < Math.Min(timeS.Count, forceN.Count) && timeS[end] <= to)
        {
            end++;
        }

        const int Columns = 265;
        int step = Math.Max(1, (end - first) / Columns);
        var x = new List<double>();
        var y = new List<double>();
        for (int i = first; i < end; i += step)
        {
            int low = i;
            int high = i;
            for (int j = i; j < Math.Min(i + step, end); j++)
            {
                low = forceN[j] < forceN[low] ? j : low;
                high = forceN[j] > forceN[high] ? j : high;
            }

            foreach (int k in low == high ? [low] : new[] { Math.Min(low, high), Math.Max(low, high) })
            {
                x.Add(timeS[k]);
                y.Add(forceN[k]);
            }
        }

        return ([.. x], [.. y]);
    }

    /// <summary>Phases' names and the marks' names, upright above the curve; neighbours are kept apart.</summary>
    private static void Names(
        Plot plot,
        MotionTrace trace,
        double from,
        double to,
        double top,
        double secondsPerPx,
        SentenceWriter writer
    )
    {
        var names = new List<(double At, Sentence Name, bool Mark)>();
        foreach (Phase phase in Widened(trace, from).Where(p => p.ToS > from && p.FromS < to))
        {
            double a = Math.Max(phase.FromS, from);
            double b = Math.Min(phase.ToS, to);
            names.Add(((a + b) / 2, PhaseWords.Of(phase), false));
            if (phase.Name == Tracing.Flight)
            {
                names.Add((a + (13 * secondsPerPx), PhaseWords.TakeOff, true));
                names.Add((b - (13 * secondsPerPx), PhaseWords.TouchDown, true));
            }
            else if (phase.Name == Tracing.Fall)
            {
                names.Add((b - (13 * secondsPerPx), PhaseWords.TouchDown, true));
            }
        }

        double next = double.NegativeInfinity;
        foreach ((double at, Sentence name, bool mark) in names.OrderBy(n => n.At))
        {
            double x = Math.Max(at, next);
            if (x > to - (8 * secondsPerPx))
            {
                break;
            }

            var text = plot.Add.Text(Fonts.PaperFonts.Printable(writer.Write(name)), x, top * 0.985);
            text.LabelRotation = -90;
            text.LabelAlignment = Alignment.MiddleRight;
            text.LabelFontName = Fonts.PaperFonts.Family;
            text.LabelFontSize = PlotSheet.Type;
            text.LabelBold = mark;
            text.LabelFontColor = mark ? PlotSheet.Accent : PlotSheet.Ink;
            next = x + (LineGapPx * secondsPerPx);
        }
    }

    private static void Axes(Plot plot, MotionTrace trace, double peak, double from, double to, SentenceWriter writer)
    {
        double step = Step(peak);
        var ticks = new ScottPlot.TickGenerators.NumericManual();
        for (double at = 0; at <= peak * 1.02; at += step)
        {
            ticks.AddMajor(at, Numerals.Write(at, "0", writer.Language));
        }

        plot.Axes.Left.TickGenerator = ticks;
        Sentence[] below = [$"Time (s)", .. Key(trace)];
        Label(plot.Axes.Bottom.Label, string.Join('\n', below.Select(writer.Write)));
        plot.Axes.Bottom.TickGenerator = Seconds(from, to, writer);
        plot.Grid.XAxisStyle.IsVisible = false;
        Label(plot.Axes.Left.Label, writer.Write($"Force (N)"));
    }

    /// <summary>Which line is which, in words.</summary>
    private static IEnumerable<Sentence> Key(MotionTrace trace)
    {
        if (!trace.LeftN.IsEmpty && !trace.RightN.IsEmpty)
        {
            yield return $"full line: both legs, dashes: left, dots: right";
        }

        if (trace.WeightN is not null)
        {
            yield return $"fine dashes: body weight";
        }
    }

    private static ScottPlot.TickGenerators.NumericManual Seconds(double from, double to, SentenceWriter writer)
    {
        double step = (to - from) switch
        {
            < 0.9 => 0.1,
            < 1.8 => 0.2,
            < 4.5 => 0.5,
            < 9 => 1,
            _ => Math.Ceiling((to - from) / 8),
        };
        var ticks = new ScottPlot.TickGenerators.NumericManual();
        for (double k = Math.Ceiling(from / step); k * step <= to; k++)
        {
            ticks.AddMajor(k * step, Numerals.Write(k * step, "0.0", writer.Language));
        }

        return ticks;
    }

    internal static void Label(LabelStyle label, string text)
    {
        label.Text = text;
        label.FontSize = PlotSheet.Type;
        label.Bold = false;
        label.ForeColor = PlotSheet.Ink;
    }

    private static double Step(double peak)
    {
        double step = 100;
        while (peak / step > 5)
        {
            step *= step switch
            {
                100 or 1000 or 10000 => 2,
                200 or 2000 or 20000 => 2.5,
                _ => 2,
            };
        }

        return step;
    }
}
