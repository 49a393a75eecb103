using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>One filled session.</summary>
public sealed record PlannedSession(
    SessionSlot Slot,
    ImmutableArray<AthleteSession> Athletes,
    ImmutableArray<RotationEntry> Rotation
)
{
    /// <summary>What an athlete does of an exercise here; null where nothing is planned of it for them.</summary>
    public PlannedItem? ItemOf(string athleteId, string exerciseId) =>
        Athletes
            .FirstOrDefault(a => a.AthleteId == athleteId)
            ?.Items.FirstOrDefault(i => i.Dose.ExerciseId == exerciseId);
}
