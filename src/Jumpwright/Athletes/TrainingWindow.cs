using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A weekly time in which the squad trains jumps.</summary>
/// <param name="Day">Day of the week.</param>
/// <param name="Start">Local start.</param>
/// <param name="Minutes">Length, min.</param>
public sealed record TrainingWindow(IsoDayOfWeek Day, LocalTime Start, int Minutes)
{
    /// <summary>What is jumped on; null when it is not said.</summary>
    public Surface? Surface { get; init; }
}
