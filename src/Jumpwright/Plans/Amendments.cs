using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>
/// What a person asked of a plan by hand. It never opens anything: a lock on what is not open is a collision, and a session
/// that moves keeps every rule of its new day.
/// </summary>
public sealed record Amendments
{
    public static Amendments None { get; } = new();

    /// <summary>Items that must stand as they are. What is no longer in the plan's sessions is passed over.</summary>
    public ImmutableArray<LockedItem> Locks { get; init; } = [];

    /// <summary>What is taken out.</summary>
    public ImmutableArray<TakenOut> Out { get; init; } = [];

    /// <summary>Sessions that were moved, in the order in which it was asked.</summary>
    public ImmutableArray<MovedSession> Moved { get; init; } = [];

    /// <summary>Whether that exercise is taken out of that athlete's session.</summary>
    public bool Leaves(string sessionId, string athleteId, string exerciseId) =>
        Out.Any(o =>
            o.SessionId == sessionId && o.AthleteId == athleteId && (o.ExerciseId is null || o.ExerciseId == exerciseId)
        );
}
