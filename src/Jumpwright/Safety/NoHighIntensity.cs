using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No high-intensity work.</summary>
public sealed record NoHighIntensity : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.HighIntensity;
}
