using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>What is known of one quality of one athlete, in words and with how sure it is.</summary>
/// <param name="Quality">Which.</param>
/// <param name="Verdict">What is known.</param>
/// <param name="Probability">Probability that the quality limits the athlete (0 to 1); null when not tested.</param>
/// <param name="Sentence">For the practitioner, with the numbers and their ±.</param>
/// <param name="NextTest">The cheapest test that would settle it; null when settled.</param>
/// <param name="Evidence">The measures it rests on.</param>
/// <param name="Source">Where the threshold comes from that decides.</param>
public sealed record Finding(
    Quality Quality,
    FindingVerdict Verdict,
    double? Probability,
    Sentence Sentence,
    Sentence? NextTest,
    ImmutableArray<Evidence> Evidence,
    Source Source
)
{
    /// <summary>Which test that is; null when settled. A test that nobody names is proposed to nobody.</summary>
    public QualityTest? Asks { get; init; }

    /// <summary>True where <see cref="NextTest"/> says why that test waits on the day, and not how it is done.</summary>
    public bool TestWaits { get; init; }

    /// <summary>It guards health, so it is called sound only when that is surer than performance asks for.</summary>
    public bool GuardsHealth { get; init; }

    /// <summary>Where all thresholds come from that it is judged by, tested or not, in one order whatever decides.</summary>
    public ImmutableArray<Source> Thresholds { get; init; } = [Source];

    /// <summary>
    /// How many trials on one day would settle it if the mean stays: what decides is the mean of the latest day. Null when settled, not
    /// tested, or settled by no number of them.
    /// </summary>
    public int? TrialsToSettle { get; init; }

    /// <summary>It lies so near what is wished that no number of trials that anybody would ask for settles it: none is proposed.</summary>
    public bool IsTooNear { get; init; }
}
