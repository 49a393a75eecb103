namespace Jumpwright.Quantities;

/// <summary>A number that formulas or limits use. It cannot exist without its source.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="Value">Finite.</param>
/// <param name="Unit">Unit of value and uncertainty.</param>
/// <param name="StandardUncertainty">Null where the source gives none.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Dispute">What the literature quarrels about, if it does.</param>
public sealed record Coefficient(
    string Id,
    double Value,
    Unit Unit,
    double? StandardUncertainty,
    Source Source,
    string? Dispute = null
)
{
    public Source Source { get; } = Source ?? throw new ArgumentNullException(nameof(Source), Id + " has no source.");
}
