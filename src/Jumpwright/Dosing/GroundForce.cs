using Jumpwright.Exercises;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>Peak ground force of one contact on one leg of an athlete, as far as the catalogue knows it.</summary>
/// <param name="LeastN">Lower end, N.</param>
/// <param name="MostN">Upper end, N; null where the tier has none.</param>
/// <param name="BodyWeights">The number behind it, body weights; null where only the tier's bounds are known.</param>
/// <param name="Measured">True only where the source measured this exercise, at this drop.</param>
/// <param name="SourceId">Where the number comes from; the catalogue's own bounds otherwise.</param>
public sealed record GroundForce(double LeastN, double? MostN, double? BodyWeights, bool Measured, string SourceId)
{
    /// <summary>Share by which technique moves a load either way (scissor-kick-2022: a quarter).</summary>
    public const double Technique = 0.25;

    /// <summary>What a contact of the exercise asks of one leg of somebody of that mass.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="bodyMassKg">Body mass, kg.</param>
    /// <param name="dropM">The drop it is done from, m; null takes the one that the catalogue's number holds for.</param>
    public static GroundForce Of(Exercise exercise, double bodyMassKg, double? dropM = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        double weightN = bodyMassKg * Gravity.MetresPerSecondSquared;
        if (exercise.DemandValues.FirstOrDefault(v => v.Tissue == Tissue.Bone) is not { } known)
        {
            (double least, double? most) = DemandTiers.GroundForce(exercise.Demand[Tissue.Bone]);
            return new(least * weightN, most * weightN, null, false, "house-rule");
        }

        bool scaled = known.AtDropM is { } at && dropM is { } asked && Math.Abs(asked - at) > 1e-9;
        double bodyWeights = scaled
            ? DropImpact.AtDropBodyWeights(known.Value, known.AtDropM!.Value, dropM!.Value)
            : known.Value;
        return new(
            (1 - Technique) * bodyWeights * weightN,
            (1 + Technique) * bodyWeights * weightN,
            bodyWeights,
            !known.Estimated && !scaled,
            known.SourceId
        );
    }
}
