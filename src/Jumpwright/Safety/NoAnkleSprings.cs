namespace Jumpwright.Safety;

/// <summary>No hops, bounces or other work of the ankle-stiffness stage, however low its tier: the ankle itself is the spring there.</summary>
public sealed record NoAnkleSprings : RulingEffect
{
    /// <summary>The stage as <see cref="ExerciseFacts.Stage"/> spells it.</summary>
    public const string Stage = "AnkleStiffness";

    public override bool Forbids(ExerciseFacts facts) => string.Equals(facts.Stage, Stage, StringComparison.Ordinal);
}
