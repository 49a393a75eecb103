using Jumpwright.Paper.Plotting;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Paper;

/// <summary>
/// Pictures of a jump and of a trend. SVG is one element that can stand inside a page: text escaped, a title and a
/// description for screen readers, ids that no other picture has. The same input gives the same bytes. Words and numbers are the
/// writer's; English and metric where none is given.
/// </summary>
public static class Plots
{
    /// <summary>Force over time with its phases in words, body weight, take-off and touch-down.</summary>
    /// <param name="trace">What is drawn.</param>
    /// <param name="title">Drawn on top, for example the task, the day and the trial.</param>
    /// <param name="description">For screen readers; made from the trace when null.</param>
    /// <param name="writer">In which language.</param>
    public static string TraceSvg(
        MotionTrace trace,
        string title,
        string? description = null,
        SentenceWriter? writer = null
    )
    {
        ArgumentNullException.ThrowIfNull(trace);
        SentenceWriter by = writer ?? SentenceWriter.English;
        return InlineSvg.Of(
            TracePlot.Draw(trace, title, by),
            PlotSheet.Trace,
            title,
            description ?? by.Write(TracePlot.InWords(trace))
        );
    }

    /// <summary>The same for paper.</summary>
    public static byte[] TracePng(MotionTrace trace, string title, SentenceWriter? writer = null)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return PlotSheet.Trace.Png(TracePlot.Draw(trace, title, writer ?? SentenceWriter.English));
    }

    /// <summary>Both, with the words that say the same.</summary>
    public static Picture Trace(MotionTrace trace, string title, string? caption = null, SentenceWriter? writer = null)
    {
        ArgumentNullException.ThrowIfNull(trace);
        string words = caption ?? (writer ?? SentenceWriter.English).Write(TracePlot.InWords(trace));
        SentenceWriter by = writer ?? SentenceWriter.English;
        return new Picture(
            () => TracePng(trace, title, writer),
            () => PlotSheet.Trace.Jpeg(TracePlot.Draw(trace, title, by)),
            () => TraceSvg(trace, title, words, writer),
            words
        );
    }

    /// <summary>Values over days with ± bars. Give one method and device a picture: values of two are not joined.</summary>
    /// <param name="points">In any order; at least one.</param>
    /// <param name="label">Measure with method and device, drawn on top.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="description">For screen readers; made from the points when null.</param>
    /// <param name="writer">In which language.</param>
    public static string TrendSvg(
        IReadOnlyList<TrendPoint> points,
        string label,
        string unit,
        string? description = null,
        SentenceWriter? writer = null
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        SentenceWriter by = writer ?? SentenceWriter.English;
        return InlineSvg.Of(
            TrendPlot.Draw(points, label, unit, by),
            PlotSheet.Trend,
            label,
            description ?? by.Write(TrendPlot.InWords(points, unit))
        );
    }

    /// <summary>The same for paper.</summary>
    public static byte[] TrendPng(
        IReadOnlyList<TrendPoint> points,
        string label,
        string unit,
        SentenceWriter? writer = null
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        return PlotSheet.Trend.Png(TrendPlot.Draw(points, label, unit, writer ?? SentenceWriter.English));
    }

    /// <summary>Both, with the words that say the same.</summary>
    public static Picture Trend(
        IReadOnlyList<TrendPoint> points,
        string label,
        string unit,
        string? caption = null,
        SentenceWriter? writer = null
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        string words = caption ?? (writer ?? SentenceWriter.English).Write(TrendPlot.InWords(points, unit));
        return new Picture(
            () => TrendPng(points, label, unit, writer),
            () => PlotSheet.Trend.Jpeg(TrendPlot.Draw(points, label, unit, writer ?? SentenceWriter.English)),
            () => TrendSvg(points, label, unit, words, writer),
            words
        );
    }
}
