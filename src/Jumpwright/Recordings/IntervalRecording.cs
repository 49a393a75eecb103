using System.Collections.Immutable;

namespace Jumpwright.Recordings;

/// <summary>Contacts and flights, from a contact mat or light gate, or from the frames of a camera.</summary>
/// <param name="Labels">What a person wrote about it.</param>
/// <param name="Warnings">What was repaired or ignored.</param>
/// <param name="Intervals">In order of time.</param>
/// <param name="IntervalStandardUncertaintyS">Standard uncertainty of each interval from the device's resolution, s.</param>
/// <param name="FramesPerSecond">Capture rate of a camera; null for a mat or gate.</param>
/// <param name="StartS">Time of the first event on the recording's own clock, s; zero where it has none.</param>
public sealed record IntervalRecording(
    RecordingLabels Labels,
    ImmutableArray<string> Warnings,
    ImmutableArray<ContactFlight> Intervals,
    double IntervalStandardUncertaintyS,
    double? FramesPerSecond,
    double StartS
) : Recording(Labels, Warnings);
