using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>An athlete's ladder on a day, in the order of the catalogue.</summary>
public sealed record Ladder(string AthleteId, LocalDate AsOf, ImmutableArray<Rung> Rungs)
{
    /// <summary>
    /// Not null after illness or a long time off, until enough sessions were done: one stage lower, which the rungs show,
    /// at half the contacts, which the dose must see to.
    /// </summary>
    public RungReason? ComingBack { get; init; }

    /// <summary>From which boxes the log shows clean sessions; the dose asks.</summary>
    public TrainedDrops Drops { get; init; } = TrainedDrops.None;

    /// <summary>The rung of that exercise, or null.</summary>
    public Rung? Find(string exerciseId) =>
        Rungs.FirstOrDefault(r => string.Equals(r.ExerciseId, exerciseId, StringComparison.Ordinal));
}
