using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Storage.Folders;

/// <summary>One row of the manifest, trials.csv.</summary>
/// <param name="Line">Line in trials.csv, from 1.</param>
/// <param name="File">The recording, relative to the folder, with <c>/</c>.</param>
/// <param name="Labels">What the row says; it wins over the metadata in the file.</param>
/// <param name="Fault">Why the row can't be used; the recording is then refused with this sentence. Null: none.</param>
public sealed record ManifestRow(int Line, string File, RecordingLabels Labels, Refusal? Fault);
