using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators;

/// <summary>What a calculator stands on, shown on its page whether it gives a result or refuses.</summary>
/// <param name="Id">Kebab-case id of the calculator.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Formula">The formula as it is computed, in one or two lines.</param>
/// <param name="SourceIds">Ids in the bibliography; at least one.</param>
/// <param name="Dispute">What the literature quarrels about, or null.</param>
public sealed record Basis(
    string Id,
    string Title,
    Sentence Formula,
    ImmutableArray<string> SourceIds,
    Sentence? Dispute = null
)
{
    /// <summary>The sources themselves.</summary>
    /// <exception cref="KeyNotFoundException">An id is not in the bibliography.</exception>
    public IEnumerable<Source> Sources => SourceIds.Select(Bibliography.Get);
}
