namespace Jumpwright.Storage.Stores.Rows;

/// <summary>One contact of a series of hops.</summary>
internal sealed class ContactRow
{
    public required string MeasurementId { get; init; }

    public int TrialNumber { get; init; }

    public int Position { get; init; }

    public double ContactS { get; init; }

    public double FlightS { get; init; }

    public double ReactiveStrengthIndex { get; init; }
}
