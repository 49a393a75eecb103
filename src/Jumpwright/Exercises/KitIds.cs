using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>Kit that exercises may ask for, as a squad's kit list names it.</summary>
public static class KitIds
{
    /// <summary>All kit ids.</summary>
    public static ImmutableArray<string> All { get; } =
    ["plyo-box", "drop-box", "seat", "bench", "band", "heavy-dumbbell", "kettlebell", "hex-bar", "run-up-lane"];
}
