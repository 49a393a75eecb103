using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>What a plan made anew has otherwise, and why.</summary>
/// <param name="SessionId">Session.</param>
/// <param name="AthleteId">Athlete.</param>
/// <param name="ExerciseId">Exercise.</param>
/// <param name="SetsBefore">Sets it had; 0: it was not there.</param>
/// <param name="SetsNow">Sets it has; 0: it is gone.</param>
/// <param name="Because">Why, in one sentence.</param>
public sealed record PlanChange(
    string SessionId,
    string AthleteId,
    string ExerciseId,
    int SetsBefore,
    int SetsNow,
    Sentence Because
);
