using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>What two bands ask of a jump, and whether the set-up holds.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">
/// Tensions of both bands together (<c>band_tension_apex_N</c>, <c>band_tension_standing_N</c>, <c>band_tension_bottom_N</c>),
/// <c>band_work_push_J</c>, <c>band_work_apex_J</c>, <c>weight_added_standing_pct</c>.
/// </param>
/// <param name="Sentence">In plain words.</param>
/// <param name="Checks">Each condition; one that is not met or not known makes the set-up not safe.</param>
/// <param name="LeftCurve">Length–tension curve of the left band.</param>
/// <param name="RightCurve">Of the right.</param>
/// <param name="ApexLengthM">Length of the longer band at the apex, m.</param>
public sealed record BandJump(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    ImmutableArray<Check> Checks,
    BandCurve LeftCurve,
    BandCurve RightCurve,
    double ApexLengthM
) : Calculation(Basis, Values, Sentence)
{
    /// <summary>True only when every condition is met.</summary>
    public bool Holds => Checks.All(c => c.State == CheckState.Met);
}
