using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No contact taken on one leg.</summary>
public sealed record NoSingleLegLandings : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => facts.SingleLegLanding;
}
