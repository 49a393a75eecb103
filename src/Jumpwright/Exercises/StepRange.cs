namespace Jumpwright.Exercises;

/// <summary>Usual number of run-up steps before the take-off.</summary>
public readonly record struct StepRange(int Min, int Max);
