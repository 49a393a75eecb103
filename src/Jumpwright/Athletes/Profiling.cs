using System.Collections.Immutable;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>The room's door: history in, what limits the athlete out.</summary>
public static class Profiling
{
    /// <summary>Probability from which a quality is called limiting, or one of performance not limiting.</summary>
    public static double Sure => ProfileLimits.Sure.Value;

    /// <summary>Probability from which a quality that guards health is called not limiting.</summary>
    public static double SureOfHealth => ProfileLimits.SureOfHealth.Value;

    /// <summary>The profile on that day; only what happened up to it counts, and only trusted measures.</summary>
    public static Profile Of(History history, LocalDate asOf)
    {
        ImmutableArray<Evidence> current = CurrentMeasures.Of(history, asOf);
        var known = new Known(history, asOf, current);
        SquatJumpShare? share = SquatJumpShare.In(known);
        Finding[] found =
        [
            FindLanding.In(known),
            FindSingleLeg.In(known),
            FindAnkleStiffness.In(known),
            FindPush.In(known, share),
            FindStretchShortening.In(known, share),
            FindReactiveStrength.In(known),
            FindRunUp.In(known),
        ];
        ImmutableArray<Finding> findings =
        [
            .. LeaningOff.In(known, found).OrderByDescending(Rank).ThenByDescending(f => f.Probability ?? 0),
        ];
        (Sentence said, NamedTest? test) = ProfileSummary.Of(known, findings);
        return new Profile(history.Athlete.Id, asOf, findings, said, current) { Test = test };
    }

    /// <summary>What guards health stands first, as a condition; then what limits, what is unclear, what is untested.</summary>
    private static int Rank(Finding finding) =>
        finding.Verdict switch
        {
            FindingVerdict.Limits when finding.Quality == Quality.Landing => 6,
            FindingVerdict.Limits when finding.Quality == Quality.SingleLeg => 5,
            FindingVerdict.Limits => 4,
            FindingVerdict.Unclear => 3,
            FindingVerdict.NotTested => 2,
            _ => 1,
        };
}
