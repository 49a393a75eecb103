using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Storage.Folders;

/// <summary>A recording of a folder in the contract's order, or the reason why it can't be read.</summary>
/// <param name="File">Relative to the folder, with <c>/</c>.</param>
/// <param name="FullPath">Where it is; null exactly when <paramref name="Fault"/> is set.</param>
/// <param name="Labels">The manifest's labels; null when the manifest does not list it.</param>
/// <param name="Fault">Why it is refused before it is opened: listed and missing, or a manifest row that can't be read.</param>
public sealed record ListedRecording(string File, string? FullPath, RecordingLabels? Labels, Refusal? Fault);
