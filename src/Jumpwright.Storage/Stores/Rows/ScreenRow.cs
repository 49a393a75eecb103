using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A test typed by hand.</summary>
internal sealed class ScreenRow
{
    public int Position { get; init; }

    public required string AthleteId { get; init; }

    public LocalDate Date { get; init; }

    public required string Test { get; init; }

    public Side Side { get; init; }

    public double Value { get; init; }

    public required string Unit { get; init; }

    public int? TrialNumber { get; init; }

    public string? Assessor { get; init; }

    public string? Note { get; init; }
}
