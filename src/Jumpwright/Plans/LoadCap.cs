using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>
/// An at-most limit on what an athlete's items of some sessions add up to: contacts, or contacts times the demand tier of
/// one tissue.
/// </summary>
/// <param name="LimitId">Which limit it is: weekly-load, weekly-growth or tissue-load-after-symptom.</param>
/// <param name="SessionIds">The sessions it counts.</param>
/// <param name="Tissue">The tissue; null: plain contacts.</param>
/// <param name="AtMost">In contacts, or contacts × tier.</param>
/// <param name="Because">Where the number comes from, in one sentence.</param>
public sealed record LoadCap(
    string LimitId,
    ImmutableArray<string> SessionIds,
    Tissue? Tissue,
    int AtMost,
    Sentence Because
)
{
    /// <summary>Its name among an athlete's caps.</summary>
    public string Subject =>
        $"{Tissue?.ToString().ToLowerInvariant() ?? "contacts"}:{SessionIds.FirstOrDefault() ?? "none"}";
}
