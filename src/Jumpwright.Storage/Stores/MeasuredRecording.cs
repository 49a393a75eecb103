using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Storage.Stores;

/// <summary>What measuring made of a recording.</summary>
/// <param name="Labels">The file's labels overlaid by the manifest's; the manifest's alone if the file could not be read.</param>
/// <param name="Device">What wrote it; null if it could not be read and its refusal does not tell.</param>
/// <param name="Trials">Its trials, or the sentence with which it is refused.</param>
public sealed record MeasuredRecording(RecordingLabels Labels, Device? Device, Outcome<ImmutableArray<Trial>> Trials)
{
    /// <summary>
    /// Measures with the core: <see cref="Recording"/>, then <see cref="Measuring.Of"/>. What reading repaired or ignored
    /// stands with each trial's own warnings.
    /// </summary>
    public static MeasuredRecording ByCore(ReadOnlyMemory<byte> bytes, RecordingLabels? manifest) =>
        Of(Recording.From(bytes.Span, manifest), manifest);

    /// <summary>The same of a file that is read piece by piece.</summary>
    public static MeasuredRecording ByCore(ReadAt read, long length, RecordingLabels? manifest) =>
        Of(Recording.From(read, length, manifest), manifest);

    private static MeasuredRecording Of(Outcome<Recording> read, RecordingLabels? manifest)
    {
        if (!read.TryGet(out Recording? recording, out Refusal? refusal))
        {
            // Frames whose rate nobody wrote are a camera's all the same; the store keeps that, and not only the refusal's words.
            Device? device = refusal.Kind()?.IsOfFrames() == true ? Athletes.Device.Camera : null;
            return new MeasuredRecording(manifest ?? RecordingLabels.None, device, refusal);
        }

        Outcome<ImmutableArray<Trial>> trials = Measuring
            .Of(recording)
            .Then<ImmutableArray<Trial>>(measured => measured.Select(WithWarnings).ToImmutableArray());
        return new MeasuredRecording(recording.Labels, DeviceOf(recording), trials);

        Trial WithWarnings(Trial trial) =>
            trial with
            {
                Warnings = [.. recording.Warnings.Union(trial.Warnings, StringComparer.Ordinal)],
            };
    }

    private static Device? DeviceOf(Recording recording) =>
        recording switch
        {
            ForceRecording { HasTwoPlates: true } => Athletes.Device.TwoForcePlates,
            ForceRecording => Athletes.Device.ForcePlate,
            IntervalRecording { FramesPerSecond: not null } => Athletes.Device.Camera,
            IntervalRecording => Athletes.Device.MatOrGate,
            _ => null,
        };
}
