using Jumpwright.Recordings;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>One measured effort.</summary>
internal sealed class TrialRow
{
    public required string MeasurementId { get; init; }

    public int Number { get; init; }

    public JumpTask Task { get; init; }

    public double? OnsetS { get; init; }

    public double? PeakDownwardVelocityS { get; init; }

    public double? BottomS { get; init; }

    public double? TakeOffS { get; init; }

    public double? TouchDownS { get; init; }

    public double? FirstTouchDownS { get; init; }

    public double? StableS { get; init; }

    public List<MeasureRow> Measures { get; init; } = [];

    public List<ContactRow> Contacts { get; init; } = [];

    public List<RemarkRow> Remarks { get; init; } = [];
}
