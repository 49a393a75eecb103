namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A warning of a trial, or the name of a measure that must not be decided from.</summary>
internal sealed class RemarkRow
{
    public required string MeasurementId { get; init; }

    public int TrialNumber { get; init; }

    public RemarkKind Kind { get; init; }

    public int Position { get; init; }

    public required string Text { get; init; }
}
