using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>What was really done (completed.csv).</summary>
public sealed record CompletedItem(
    string AthleteId,
    LocalDate Date,
    string SessionId,
    string ExerciseId,
    int Sets,
    int Reps,
    int Contacts,
    int? LandingFaults,
    double? PainDuring,
    double? PainNextMorning,
    double? EffortRpe,
    double? DropHeightM,
    string? Note
)
{
    /// <summary>Which set this row is, from 1; null when the row is a whole exercise.</summary>
    public int? Set { get; init; }

    /// <summary>Jump height measured in that set, m; null when it was not.</summary>
    public double? HeightM { get; init; }

    /// <summary>Contact time measured in that set, s; null when it was not.</summary>
    public double? ContactTimeS { get; init; }

    /// <summary>Whether it hurt in a place where it had not hurt before.</summary>
    public bool PainSiteNew { get; init; }

    /// <summary>How many of its contacts were trials of a proposed test; 0 where nobody logged it on the floor.</summary>
    public int ContactsInTests { get; init; }

    /// <summary>Minutes of the whole session, for session-RPE load; null when not said.</summary>
    public double? SessionMinutes { get; init; }
}
