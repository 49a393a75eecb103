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
);
