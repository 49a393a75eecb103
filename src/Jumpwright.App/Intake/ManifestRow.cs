using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.App.Intake;

/// <summary>One row of the manifest.</summary>
/// <param name="Line">Line in the manifest, from 1.</param>
/// <param name="File">As it names the recording, with <c>/</c>.</param>
/// <param name="Labels">Its labels; those it leaves empty are null.</param>
/// <param name="Refusal">Set when a label can't be read: a recording is not measured under a guessed label.</param>
internal sealed record ManifestRow(int Line, string File, RecordingLabels Labels, Refusal? Refusal);
