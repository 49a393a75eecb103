namespace Jumpwright.Planning;

/// <summary>An item that is not begun today.</summary>
public sealed record FloorCut(string AthleteId, string ExerciseId, FloorCutReason Reason);
