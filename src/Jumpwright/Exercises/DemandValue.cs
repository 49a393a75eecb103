using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>What one contact asks of one leg's tissue, as a number: published for this exercise, or estimated as its file says.</summary>
/// <param name="Tissue">Which tissue; for bone the peak ground force on one leg stands in, which only orders exercises that are alike.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit"><c>body-weights</c> (tendon force, ground force) or <c>1</c> (loading index of the patellar tendon).</param>
/// <param name="SourceId">Where it comes from, or what it was estimated with.</param>
/// <param name="Estimated">False only where the source measured this exercise.</param>
/// <param name="AtDropM">The height stepped from that it holds for, m; null without a drop.</param>
public sealed record DemandValue(
    Tissue Tissue,
    double Value,
    string Unit,
    string SourceId,
    bool Estimated,
    double? AtDropM
)
{
    /// <summary>The unit of forces.</summary>
    public const string BodyWeights = "body-weights";
}
