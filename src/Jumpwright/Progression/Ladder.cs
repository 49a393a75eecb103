using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>An athlete's ladder on a day, in the order of the catalogue.</summary>
public sealed record Ladder(string AthleteId, LocalDate AsOf, ImmutableArray<Rung> Rungs)
{
    /// <summary>The rung of that exercise, or null.</summary>
    public Rung? Find(string exerciseId) =>
        Rungs.FirstOrDefault(r => string.Equals(r.ExerciseId, exerciseId, StringComparison.Ordinal));
}
