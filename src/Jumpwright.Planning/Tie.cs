using System.Collections.Immutable;

namespace Jumpwright.Planning;

/// <summary>A row that ties an athlete's weeks together: what its literals add up to lies between two numbers.</summary>
/// <param name="Literals">The literals of menu entries (0: done at all, 1, 2, …: one more set).</param>
/// <param name="Factors">How much each adds.</param>
/// <param name="Low">The least sum; null: none.</param>
/// <param name="High">The greatest sum; null: none.</param>
/// <param name="Price">What a relaxation would give for one more of it; above 0 for the greatest sum, below 0 for the least.</param>
internal sealed record Tie(
    ImmutableArray<(string Session, string Exercise, int Literal)> Literals,
    ImmutableArray<long> Factors,
    long? Low,
    long? High,
    double Price
);
