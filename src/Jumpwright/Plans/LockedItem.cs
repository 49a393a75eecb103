using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Plans;

/// <summary>An item that must stay as it is.</summary>
public sealed record LockedItem(string SessionId, string AthleteId, string ExerciseId, int Sets);
