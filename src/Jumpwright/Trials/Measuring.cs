using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>The room's door: recording and task in, trials or a refusal out.</summary>
public static class Measuring
{
    /// <summary>Measures a recording as the task asks.</summary>
    /// <param name="recording">What the device wrote.</param>
    /// <param name="task">What was asked; null takes the recording's label.</param>
    /// <param name="options">Null takes the defaults.</param>
    /// <returns>At least one trial in order of time, or one sentence why there is none.</returns>
    public static Outcome<ImmutableArray<Trial>> Of(
        Recording recording,
        JumpTask? task = null,
        MeasuringOptions? options = null
    ) => throw new NotImplementedException();
}
