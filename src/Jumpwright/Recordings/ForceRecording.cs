using System.Collections.Immutable;

namespace Jumpwright.Recordings;

/// <summary>Vertical force of one or two plates, sampled uniformly. Up is positive; zero is the plate's own, not corrected.</summary>
/// <param name="Labels">What a person wrote about it.</param>
/// <param name="Warnings">What was repaired or ignored.</param>
/// <param name="StartS">Time of the first sample on the recording's own clock, s.</param>
/// <param name="RateHz">Sampling rate from a straight line fitted to all time stamps, Hz.</param>
/// <param name="TotalN">Total vertical force, N.</param>
/// <param name="LeftN">Left plate, N; empty with one plate.</param>
/// <param name="RightN">Right plate, N; empty with one plate.</param>
public sealed record ForceRecording(
    RecordingLabels Labels,
    ImmutableArray<string> Warnings,
    double StartS,
    double RateHz,
    ReadOnlyMemory<double> TotalN,
    ReadOnlyMemory<double> LeftN,
    ReadOnlyMemory<double> RightN
) : Recording(Labels, Warnings)
{
    public bool HasTwoPlates => !LeftN.IsEmpty && !RightN.IsEmpty;

    /// <summary>Nobody said which plate is the left foot's; an asymmetry then has no known sign.</summary>
    public bool SidesAssumed { get; init; }

    /// <summary>Time of a sample on the recording's own clock, s.</summary>
    public double TimeS(double sample) => StartS + (sample / RateHz);
}
