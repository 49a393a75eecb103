using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>One filled session.</summary>
public sealed record PlannedSession(
    SessionSlot Slot,
    ImmutableArray<AthleteSession> Athletes,
    ImmutableArray<RotationEntry> Rotation
);
