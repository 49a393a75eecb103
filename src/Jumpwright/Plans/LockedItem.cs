namespace Jumpwright.Plans;

/// <summary>An item that must stay as it is: this exercise, in this session, with exactly these sets.</summary>
public sealed record LockedItem(string SessionId, string AthleteId, string ExerciseId, int Sets)
{
    /// <summary>Its name in a collision.</summary>
    public string RequirementId => $"lock:{SessionId}:{AthleteId}:{ExerciseId}";
}
