using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Reports;

/// <summary>A picture's data: a line with its 95 % band, single points, and a place that is marked.</summary>
/// <param name="Name">Kebab-case, for the file's name.</param>
/// <param name="Title">Drawn on top.</param>
/// <param name="XLabel">Below.</param>
/// <param name="YLabel">At the left.</param>
/// <param name="Line">Line and band, in order of x.</param>
/// <param name="Points">What was measured.</param>
/// <param name="Ticks">Named places of x, such as days; empty for numbers.</param>
/// <param name="Marked">A place that is marked by a broken line, or null.</param>
/// <param name="MarkedLabel">Its name.</param>
/// <param name="InWords">The same in words, for those who don't see it.</param>
public sealed record ReportPlot(
    string Name,
    Sentence Title,
    Sentence XLabel,
    Sentence YLabel,
    ImmutableArray<CurveSample> Line,
    ImmutableArray<(double X, double Y)> Points,
    ImmutableArray<(double X, Sentence Label)> Ticks,
    double? Marked,
    Sentence? MarkedLabel,
    Sentence InWords
)
{
    /// <summary>Far end of a marked range; null where one place is marked.</summary>
    public double? MarkedTo { get; init; }

    /// <summary>The same picture with its words written out, in whatever language that is.</summary>
    public ReportPlot Written(Func<Sentence, string> write)
    {
        Sentence Out(Sentence said) => Sentence.Plain(write(said));

        return this with
        {
            Title = Out(Title),
            XLabel = Out(XLabel),
            YLabel = Out(YLabel),
            Ticks = [.. Ticks.Select(t => (t.X, Out(t.Label)))],
            MarkedLabel = MarkedLabel is { } label ? Out(label) : null,
            InWords = Out(InWords),
        };
    }
}
