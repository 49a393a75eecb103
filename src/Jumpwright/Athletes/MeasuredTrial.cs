using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A measured trial and where it came from.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Date">Day of the recording.</param>
/// <param name="Trial">What was measured.</param>
/// <param name="Labels">What a person wrote about the recording.</param>
/// <param name="Device">What measured it.</param>
/// <param name="File">The recording's file, relative to the squad folder.</param>
/// <param name="Sha256">The recording's content, hexadecimal.</param>
public sealed record MeasuredTrial(
    string AthleteId,
    LocalDate Date,
    Trial Trial,
    RecordingLabels Labels,
    Device Device,
    string File,
    string Sha256
);
