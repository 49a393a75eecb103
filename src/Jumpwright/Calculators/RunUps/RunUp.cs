using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.RunUps;

/// <summary>The run-up: what it brings, at which speed, and off how many feet.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">For each take-off gain, best speed, best height, left on the table, as <c>two_feet_…</c> and <c>one_foot_…</c>.</param>
/// <param name="Sentence">In plain words.</param>
/// <param name="TwoFeet">Off two feet; null when not measured.</param>
/// <param name="OneFoot">Off one; null when not measured.</param>
/// <param name="ChanceOneServes">Probability that the best off one foot is higher than the best off two; null unless both were measured.</param>
public sealed record RunUp(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    RunUpCurve? TwoFeet,
    RunUpCurve? OneFoot,
    double? ChanceOneServes
) : Calculation(Basis, Values, Sentence)
{
    /// <summary>Off which feet the next jumps would sharpen it most; null when settled.</summary>
    public TakeOffFoot? NextFoot { get; init; }

    /// <summary>Their run-up speed, m/s, at most 110 % of the fastest measured off those feet; null when settled.</summary>
    public double? NextSpeedMS { get; init; }
}
