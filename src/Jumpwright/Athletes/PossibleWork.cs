using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>
/// Work that was begun, and of which nobody said how much was done: a set that pain broke off and nobody counted. Whatever limits or asks
/// for recovery takes it as done in full; whatever opens anything takes it as not done.
/// </summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Date">The session's day.</param>
/// <param name="SessionId">Session; empty when none was named.</param>
/// <param name="ExerciseId">Exercise.</param>
/// <param name="Contacts">Ground contacts beyond those logged that it may have had, as planned; 0 where not even the plan is known.</param>
/// <param name="DropHeightM">Height stepped from, m; null without a drop.</param>
public sealed record PossibleWork(
    string AthleteId,
    LocalDate Date,
    string SessionId,
    string ExerciseId,
    int Contacts,
    double? DropHeightM
);
