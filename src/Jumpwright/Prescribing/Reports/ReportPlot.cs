using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;

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
    string Title,
    string XLabel,
    string YLabel,
    ImmutableArray<CurveSample> Line,
    ImmutableArray<(double X, double Y)> Points,
    ImmutableArray<(double X, string Label)> Ticks,
    double? Marked,
    string? MarkedLabel,
    string InWords
)
{
    /// <summary>Far end of a marked range; null where one place is marked.</summary>
    public double? MarkedTo { get; init; }
}
