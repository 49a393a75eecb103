using System.Collections.Immutable;

namespace Jumpwright.Progression;

/// <summary>One exercise of one athlete's ladder.</summary>
public sealed record Rung(string ExerciseId, RungState State, ImmutableArray<RungReason> Reasons);
