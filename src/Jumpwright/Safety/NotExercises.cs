using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Safety;

/// <summary>Not these exercises.</summary>
public sealed record NotExercises(ImmutableHashSet<string> Ids) : RulingEffect
{
    public override bool Forbids(ExerciseFacts facts) => Ids.Contains(facts.ExerciseId);
}
