using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>Only these exercises.</summary>
public sealed record OnlyExercises(ImmutableHashSet<string> Ids) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => !Ids.Contains(facts.ExerciseId);
}
