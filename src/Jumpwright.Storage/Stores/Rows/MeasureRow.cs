namespace Jumpwright.Storage.Stores.Rows;

/// <summary>One measure of a trial.</summary>
internal sealed class MeasureRow
{
    public required string MeasurementId { get; init; }

    public int TrialNumber { get; init; }

    public int Position { get; init; }

    public required string Name { get; init; }

    public double Value { get; init; }

    public required string Unit { get; init; }

    public double StandardUncertainty { get; init; }

    public required string Method { get; init; }
}
