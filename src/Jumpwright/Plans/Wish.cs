namespace Jumpwright.Plans;

/// <summary>
/// What a coach asked for by name: this exercise at least so many times in the plan. It is kept, or the plan says with
/// what it collides; it never outranks a limit.
/// </summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="ExerciseId">Which exercise.</param>
/// <param name="SessionId">In this session; null: in any.</param>
/// <param name="TimesAtLeast">In how many sessions.</param>
/// <param name="SetsAtLeast">Sets in each of them; 0: whatever the dose allows.</param>
public sealed record Wish(
    string AthleteId,
    string ExerciseId,
    string? SessionId = null,
    int TimesAtLeast = 1,
    int SetsAtLeast = 0
)
{
    /// <summary>Its name in a collision.</summary>
    public string RequirementId => $"wish:{AthleteId}:{ExerciseId}:{SessionId ?? "any"}:{TimesAtLeast}:{SetsAtLeast}";
}
