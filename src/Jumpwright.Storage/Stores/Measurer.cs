using Jumpwright.Recordings;

namespace Jumpwright.Storage.Stores;

/// <summary>Measures one recording. It must be pure: the same bytes and labels give the same result.</summary>
/// <param name="bytes">The whole file.</param>
/// <param name="manifest">The manifest's labels; null when the manifest does not list it.</param>
public delegate MeasuredRecording Measurer(ReadOnlyMemory<byte> bytes, RecordingLabels? manifest);
