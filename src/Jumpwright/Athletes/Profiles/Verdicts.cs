using System.Collections.Immutable;
using Jumpwright.Calculators.Deciding;
using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Makes a finding from a probability: limits, sound, or honestly unclear.</summary>
internal static class Verdicts
{
    internal static Finding From(
        Quality quality,
        double limits,
        bool guardsHealth,
        Sentence what,
        QualityTest test,
        Sentence nextTest,
        Coefficient threshold,
        params ImmutableArray<Evidence> evidence
    )
    {
        double soundBelow = 1 - (guardsHealth ? ProfileLimits.SureOfHealth : ProfileLimits.Sure).Value;
        FindingVerdict verdict =
            limits >= ProfileLimits.Sure.Value ? FindingVerdict.Limits
            : limits <= soundBelow ? FindingVerdict.Sound
            : FindingVerdict.Unclear;
        Sentence said = verdict switch
        {
            FindingVerdict.Limits =>
                $"{what} That this holds them back is {Spoken.Chance(limits)} ({Probability.Said(limits)}).",
            FindingVerdict.Sound =>
                $"{what} That this holds them back is {Spoken.Chance(limits)} ({Probability.Said(limits)}).",
            _ => $"{what} Not settled: {Probability.Said(limits)} that it holds them back.",
        };
        (Sentence? next, int? more, bool tooNear) =
            verdict == FindingVerdict.Unclear ? Settling(limits, soundBelow, nextTest, evidence) : (null, null, false);
        return new Finding(quality, verdict, limits, said, next, evidence, threshold.Source)
        {
            TrialsToSettle = more,
            IsTooNear = tooNear,
            Asks = next is null ? null : test,
            GuardsHealth = guardsHealth,
        };
    }

    /// <summary>
    /// What would settle it: so many trials of each measure on one day, if the means stay; or, where the device alone leaves too much doubt,
    /// another day or device. Only the scatter from trial to trial shrinks with trials.
    /// </summary>
    private static (Sentence Next, int? Trials, bool TooNear) Settling(
        double limits,
        double soundBelow,
        Sentence test,
        ImmutableArray<Evidence> evidence
    )
    {
        // Where the doubts of two measures go into one ratio, each counts by its share of its own value.
        double all = evidence.Sum(e => Square(e.Measure.StandardUncertainty / e.Measure.Value));
        double byTrials = evidence.Sum(e => Square(e.TrialSd / e.Measure.Value) / e.Trials);
        if (!double.IsFinite(all) || all <= 0)
        {
            return (Sentence.Of($"More trials of {test}"), null, false);
        }

        int trials = evidence.Min(e => e.Trials);
        double share = Math.Clamp(byTrials / all, 0, 1);
        double wished = limits >= 0.5 ? ProfileLimits.Sure.Value : 1 - soundBelow;
        MoreTrials needed = TrialsNeeded
            .Of(
                new MoreTrialsInput(
                    MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, Math.Clamp(limits, 0.001, 0.999)),
                    0,
                    trials,
                    Math.Max(Math.Sqrt(share * trials), 1e-6),
                    Math.Sqrt(1 - share),
                    wished
                )
            )
            .Require();
        return needed.More switch
        {
            { } n and > 0 => (
                Sentence.Of(
                    $"{trials + n} trials on one day, {n} more than so far, if the mean stays where it is: {test}"
                ),
                trials + n,
                false
            ),
            _ when needed.Value("certainty_then").Value >= wished => (
                Sentence.Of($"{trials + 1} trials on one day, one more than so far: {test}"),
                trials + 1,
                false
            ),
            _ when share < 0.5 => (
                Sentence.Of(
                    $"Another day or another device, since more trials of the same would not settle it: {test}"
                ),
                null,
                false
            ),
            _ => (
                Sentence.Of(
                    $"More than {TrialsNeeded.Most} further trials ({test}): it lies too near what is wished, so decide on the careful side"
                ),
                null,
                true
            ),
        };
    }

    private static double Square(double x) => x * x;

    /// <summary>
    /// Evidence of something near the quality, which may close and never open: it says that the quality limits where it shows that surely,
    /// and leaves it not tested otherwise. Either way the quality's own test is asked for.
    /// </summary>
    /// <param name="untested">The finding without it: what it says, rests on and asks for.</param>
    /// <param name="limits">Probability that the quality limits, as that evidence has it (0 to 1).</param>
    /// <param name="threshold">What that evidence is judged by.</param>
    internal static Finding OnlyAgainst(Finding untested, double limits, Coefficient threshold) =>
        limits < ProfileLimits.Sure.Value
            ? untested
            : untested with
            {
                Verdict = FindingVerdict.Limits,
                Probability = limits,
                Sentence =
                    $"{untested.Sentence} That this holds them back is {Spoken.Chance(limits)} ({Probability.Said(limits)}).",
                Source = threshold.Source,
            };

    internal static Finding NotTested(Quality quality, QualityTest test, Sentence nextTest, Coefficient threshold) =>
        new(quality, FindingVerdict.NotTested, null, $"Not tested.", $"{nextTest:capital}", [], threshold.Source)
        {
            Asks = test,
        };

    internal static Finding Stale(
        Quality quality,
        Known known,
        QualityTest test,
        Sentence nextTest,
        Coefficient threshold,
        Evidence old
    ) =>
        new(
            quality,
            FindingVerdict.NotTested,
            null,
            $"Last tested {old.Date} ({Spoken.Of(old.Measure)}): older than {known.FreshDays} days, so it counts as not tested.",
            $"{nextTest:capital}",
            [old],
            threshold.Source
        )
        {
            Asks = test,
        };
}
