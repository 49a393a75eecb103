using Jumpwright.Quantities;
using Jumpwright.Recordings;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A measure and where it came from, so that every number can be traced.</summary>
/// <param name="Measure">Value and doubt.</param>
/// <param name="Date">Day of the recording, or of the last one pooled.</param>
/// <param name="File">File it came from, or the last one pooled.</param>
/// <param name="TrialNumber">Trial in that file.</param>
/// <param name="Device">What measured it.</param>
/// <param name="Task">What the athlete was asked to do; a contact time of hops is not one of drop jumps.</param>
/// <param name="Limb">Leg or legs it was done on; null when not said.</param>
public sealed record Evidence(
    Measure Measure,
    LocalDate Date,
    string File,
    int TrialNumber,
    Device? Device,
    JumpTask? Task = null,
    Limb? Limb = null
)
{
    /// <summary>The box of a drop jump, m, as labelled; null when not said.</summary>
    public double? BoxM { get; init; }

    /// <summary>The load of a loaded jump, kg, as labelled; null when not said.</summary>
    public double? LoadKg { get; init; }

    /// <summary>Trials that the mean is of.</summary>
    public int Trials { get; init; } = 1;

    /// <summary>How much it varies from trial to trial, one standard deviation, same unit; more trials lessen that part of its doubt.</summary>
    public double TrialSd { get; init; }
}
