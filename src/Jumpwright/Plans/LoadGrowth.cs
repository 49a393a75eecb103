using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>
/// How much more a tissue may be asked for in one week than in the week before, as planned: 100 × later is at most
/// (100 + percent) × earlier + 100 × step. Counted in contacts × tier.
/// </summary>
/// <param name="Tissue">Which tissue.</param>
/// <param name="Earlier">Sessions of the week before.</param>
/// <param name="Later">Sessions of the week.</param>
/// <param name="Percent">Growth allowed.</param>
/// <param name="Step">What may be added in any case, contacts × tier.</param>
public sealed record LoadGrowth(
    Tissue Tissue,
    ImmutableArray<string> Earlier,
    ImmutableArray<string> Later,
    int Percent,
    int Step
)
{
    /// <summary>Its name among an athlete's growths.</summary>
    public string Subject => $"{Tissue.ToString().ToLowerInvariant()}:{Later.FirstOrDefault() ?? "none"}";
}
