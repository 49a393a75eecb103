using NodaTime;

namespace Jumpwright.Progression;

/// <summary>One clean session of an exercise that steps from a box.</summary>
/// <param name="ExerciseId">Which.</param>
/// <param name="Date">The day.</param>
/// <param name="HeightM">The box, m; of several in one session the lowest.</param>
public sealed record TrainedDrop(string ExerciseId, LocalDate Date, double HeightM);
