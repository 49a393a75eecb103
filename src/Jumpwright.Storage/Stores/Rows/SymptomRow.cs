using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>What an athlete felt.</summary>
internal sealed class SymptomRow
{
    public int Position { get; init; }

    public required string AthleteId { get; init; }

    public LocalDate Date { get; init; }

    public required string Site { get; init; }

    public Side Side { get; init; }

    public string? Tissue { get; init; }

    public string? NamedBy { get; init; }

    public required string Kind { get; init; }

    public string? When { get; init; }

    public double? Score { get; init; }

    public string? Note { get; init; }
}
