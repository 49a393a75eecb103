using Jumpwright.Quantities;

namespace Jumpwright.Storage.Stores;

/// <summary>One thing that measuring again would change.</summary>
/// <param name="File">The recording.</param>
/// <param name="AthleteId">Whose.</param>
/// <param name="Trial">The trial; null when it concerns the whole recording.</param>
/// <param name="Before">The measure as it is stored; null when there is none.</param>
/// <param name="After">The measure as it would be; null when there would be none.</param>
/// <param name="Kind">What kind of change.</param>
/// <param name="Sentence">What changes, in words.</param>
public sealed record RemeasureChange(
    string File,
    string? AthleteId,
    int? Trial,
    Measure? Before,
    Measure? After,
    RemeasureKind Kind,
    string Sentence
)
{
    /// <summary>The change in standard uncertainties of the stored value; null where there is nothing to compare.</summary>
    public double? InStandardUncertainties =>
        Before is { StandardUncertainty: > 0 } before && After is { } after
            ? Math.Abs(after.Value - before.Value) / before.StandardUncertainty
            : null;
}
