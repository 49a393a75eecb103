using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No jumps and no loaded work at all until the named person has been asked.</summary>
/// <param name="WhomToAsk">For the card, for example "a clinician".</param>
public sealed record NothingPlanned(Sentence WhomToAsk) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => true;
}
