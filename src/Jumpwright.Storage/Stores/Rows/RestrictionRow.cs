using System.Collections.Immutable;
using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>What a clinician allows, and what stands for rows that nobody can read.</summary>
internal sealed class RestrictionRow
{
    public int Position { get; init; }

    public required string AthleteId { get; init; }

    public LocalDate From { get; init; }

    public LocalDate? Until { get; init; }

    public string? Site { get; init; }

    public Side Side { get; init; }

    public ImmutableArray<string> Allowed { get; init; }

    public ImmutableArray<string> Forbidden { get; init; }

    public string? Limit { get; init; }

    public string? SetBy { get; init; }

    public string? Role { get; init; }

    public string? Note { get; init; }
}
