using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.App.Intake;

/// <summary>A recording that a folder lists or holds, before it was opened.</summary>
/// <param name="File">Relative to the path that was asked for, with <c>/</c>.</param>
/// <param name="FullPath">Where it lies.</param>
/// <param name="Labels">Labels of the manifest; null when the manifest does not list it.</param>
/// <param name="Refusal">Set when it can't even be opened: listed but missing, or a row that can't be read.</param>
internal sealed record RecordingEntry(
    string File,
    string FullPath,
    RecordingLabels? Labels = null,
    Refusal? Refusal = null
);
