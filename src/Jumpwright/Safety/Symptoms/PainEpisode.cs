using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>Pain or stiffness at one place, as far as it still counts on the day.</summary>
/// <param name="Site">Place.</param>
/// <param name="Counting">Reports that no later zero has answered, oldest first.</param>
/// <param name="Recent">Every painful report of the window, answered or not; bone is judged by these too.</param>
/// <param name="Readings">The rules it is judged by.</param>
internal sealed record PainEpisode(
    BodySite Site,
    ImmutableArray<SymptomReport> Counting,
    ImmutableArray<SymptomReport> Recent,
    ImmutableArray<PainReading> Readings
)
{
    public IEnumerable<Tissue> TissuesUnder(PainRuleKind kind) =>
        Readings.Where(r => r.Kind == kind).Select(r => r.Tissue).Distinct();
}
