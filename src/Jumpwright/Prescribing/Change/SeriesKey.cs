using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Change;

/// <summary>
/// What may stand on one trend: one measure, task, limb, device and method, and for drop and loaded jumps one box or load. Anything
/// else is another test, never the same line.
/// </summary>
/// <param name="Measure">Name of the measure.</param>
/// <param name="Task">Task.</param>
/// <param name="Limb">Leg or legs.</param>
/// <param name="Device">Device.</param>
/// <param name="Method">Method.</param>
/// <param name="Condition">Box, m, or load, kg; null for other tasks.</param>
public sealed record SeriesKey(
    string Measure,
    JumpTask Task,
    Limb Limb,
    Device Device,
    string Method,
    double? Condition
);
