using NodaTime;

namespace Jumpwright.Recordings;

/// <summary>What a person wrote about a recording: metadata in the file, or a row of the manifest.</summary>
/// <param name="Athlete">Athlete id.</param>
/// <param name="Date">Day of the recording.</param>
/// <param name="Task">What was asked.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="ExternalLoadKg">Mass held or worn, kg.</param>
/// <param name="DropHeightM">Nominal height stepped from, m; never taken for the actual one.</param>
/// <param name="Limb">Which legs.</param>
/// <param name="Note">Free text.</param>
/// <param name="Plates">Which plates of a file with several; only a C3D file has a choice.</param>
/// <param name="FramesPerSecond">Capture rate of the camera whose frames were counted, frames a second.</param>
public sealed record RecordingLabels(
    string? Athlete = null,
    LocalDate? Date = null,
    JumpTask? Task = null,
    double? BodyMassKg = null,
    double? ExternalLoadKg = null,
    double? DropHeightM = null,
    Limb? Limb = null,
    string? Note = null,
    PlateChoice? Plates = null,
    double? FramesPerSecond = null
)
{
    /// <summary>No camera that jumps are filmed with takes fewer frames a second.</summary>
    public const double LeastFramesPerSecond = 20;

    /// <summary>And none takes more.</summary>
    public const double MostFramesPerSecond = 5000;

    public static readonly RecordingLabels None = new();

    /// <summary>These labels, with every value that <paramref name="winner"/> has put in their place.</summary>
    public RecordingLabels OverlaidBy(RecordingLabels winner) =>
        new(
            winner.Athlete ?? Athlete,
            winner.Date ?? Date,
            winner.Task ?? Task,
            winner.BodyMassKg ?? BodyMassKg,
            winner.ExternalLoadKg ?? ExternalLoadKg,
            winner.DropHeightM ?? DropHeightM,
            winner.Limb ?? Limb,
            winner.Note ?? Note,
            winner.Plates ?? Plates,
            winner.FramesPerSecond ?? FramesPerSecond
        );
}
