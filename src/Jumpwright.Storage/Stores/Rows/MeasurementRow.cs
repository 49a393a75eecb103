using Jumpwright.Athletes;
using Jumpwright.Recordings;
using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>What one version made of one content under one set of labels: derived, and rebuilt from the raw bytes at any time.</summary>
internal sealed class MeasurementRow
{
    /// <summary>From content, manifest labels and version (<see cref="MeasurementIds"/>).</summary>
    public required string Id { get; init; }

    public required string Sha256 { get; init; }

    public required string Version { get; init; }

    /// <summary>The manifest's labels as one line; empty when the manifest does not list the recording.</summary>
    public required string Manifest { get; init; }

    public string? AthleteId { get; init; }

    public LocalDate? Date { get; init; }

    public JumpTask? Task { get; init; }

    public double? BodyMassKg { get; init; }

    public double? ExternalLoadKg { get; init; }

    public double? DropHeightM { get; init; }

    public Limb? Limb { get; init; }

    public string? Note { get; init; }

    /// <summary>Null when the bytes could not be read as a recording.</summary>
    public Device? Device { get; init; }

    /// <summary>The sentence with which it was refused; null when it was measured.</summary>
    public string? Refusal { get; init; }

    /// <summary>The kind of that refusal; null as well where a version that kept none wrote it.</summary>
    public RefusedFor? RefusedFor { get; init; }

    public List<TrialRow> Trials { get; init; } = [];
}
