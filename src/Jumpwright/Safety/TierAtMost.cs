using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No contact that asks more of a tissue than this tier.</summary>
public sealed record TierAtMost(Tissue Tissue, int Tier) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.TierByTissue.GetValueOrDefault(Tissue, 3) > Tier;
}
