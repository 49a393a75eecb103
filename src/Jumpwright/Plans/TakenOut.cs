namespace Jumpwright.Plans;

/// <summary>What an athlete does not do in a session.</summary>
/// <param name="SessionId">Which session.</param>
/// <param name="AthleteId">Whose.</param>
/// <param name="ExerciseId">Which exercise; null: they miss the whole session.</param>
public sealed record TakenOut(string SessionId, string AthleteId, string? ExerciseId);
