using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>No run-ups, skips or rehearsals of them, however low their tier: who runs in on a sore ankle brakes and springs on it.</summary>
public sealed record NoRunUps : RulingEffect
{
    /// <summary>The stage as <see cref="ExerciseFacts.Stage"/> spells it.</summary>
    public const string Stage = "RunUp";

    public override bool Forbids(ExerciseFacts facts) => string.Equals(facts.Stage, Stage, StringComparison.Ordinal);
}
