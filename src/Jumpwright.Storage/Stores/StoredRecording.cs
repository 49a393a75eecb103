using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Storage.Stores;

/// <summary>A recording of the squad as the store holds it.</summary>
/// <param name="File">Relative to the squad folder, with <c>/</c>.</param>
/// <param name="Sha256">Its bytes; null when there were none to read.</param>
/// <param name="Labels">Labels in force.</param>
/// <param name="Device">What wrote it; null when it could not be read and its refusal did not tell.</param>
/// <param name="TrialCount">Measured trials; 0 when it was refused.</param>
/// <param name="Refusal">Why it was refused; null when it was measured.</param>
/// <param name="RefusedFor">The kind of that refusal; null when it was measured, or refused by a version that kept no kind.</param>
public sealed record StoredRecording(
    string File,
    string? Sha256,
    RecordingLabels Labels,
    Device? Device,
    int TrialCount,
    Refusal? Refusal,
    RefusedFor? RefusedFor = null
);
