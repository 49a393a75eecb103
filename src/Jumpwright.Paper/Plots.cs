using Jumpwright.Paper.Plotting;
using Jumpwright.Trials;

namespace Jumpwright.Paper;

/// <summary>
/// Pictures of a jump and of a trend. SVG is one element that can stand inside a page: text escaped, a title and a
/// description for screen readers, ids that no other picture has. The same input gives the same bytes.
/// </summary>
public static class Plots
{
    /// <summary>Force over time with its phases in words, body weight, take-off and touch-down.</summary>
    /// <param name="trace">What is drawn.</param>
    /// <param name="title">Drawn on top, for example the task, the day and the trial.</param>
    /// <param name="description">For screen readers; made from the trace when null.</param>
    public static string TraceSvg(MotionTrace trace, string title, string? description = null)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return InlineSvg.Of(
            TracePlot.Draw(trace, title),
            PlotSheet.Trace,
            title,
            description ?? TracePlot.InWords(trace)
        );
    }

    /// <summary>The same for paper.</summary>
    public static byte[] TracePng(MotionTrace trace, string title)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return PlotSheet.Trace.Png(TracePlot.Draw(trace, title));
    }

    /// <summary>Both, with the words that say the same.</summary>
    public static Picture Trace(MotionTrace trace, string title, string? caption = null)
    {
        ArgumentNullException.ThrowIfNull(trace);
        string words = caption ?? TracePlot.InWords(trace);
        return new Picture(() => TracePng(trace, title), () => TraceSvg(trace, title, words), words);
    }

    /// <summary>Values over days with ± bars. Give one method and device a picture: values of two are not joined.</summary>
    /// <param name="points">In any order; at least one.</param>
    /// <param name="label">Measure with method and device, drawn on top.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="description">For screen readers; made from the points when null.</param>
    public static string TrendSvg(
        IReadOnlyList<TrendPoint> points,
        string label,
        string unit,
        string? description = null
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        return InlineSvg.Of(
            TrendPlot.Draw(points, label, unit),
            PlotSheet.Trend,
            label,
            description ?? TrendPlot.InWords(points, unit)
        );
    }

    /// <summary>The same for paper.</summary>
    public static byte[] TrendPng(IReadOnlyList<TrendPoint> points, string label, string unit)
    {
        ArgumentNullException.ThrowIfNull(points);
        return PlotSheet.Trend.Png(TrendPlot.Draw(points, label, unit));
    }

    /// <summary>Both, with the words that say the same.</summary>
    public static Picture Trend(IReadOnlyList<TrendPoint> points, string label, string unit, string? caption = null)
    {
        ArgumentNullException.ThrowIfNull(points);
        string words = caption ?? TrendPlot.InWords(points, unit);
        return new Picture(() => TrendPng(points, label, unit), () => TrendSvg(points, label, unit, words), words);
    }
}
