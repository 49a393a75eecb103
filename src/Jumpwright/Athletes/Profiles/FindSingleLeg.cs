using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// Single leg: hop distances left and right. How two plates share the push of a jump off both legs may speak against an athlete, never
/// for one: what a leg does by itself is seen when it works by itself.
/// </summary>
internal static class FindSingleLeg
{
    internal static readonly Sentence Test = $"a single hop for distance, each leg, with a tape";
    private const double HopUncertaintyM = 0.05;

    private static readonly ImmutableArray<Source> Both =
    [
        ProfileLimits.HopSymmetry.Source,
        ProfileLimits.ImpulseAsymmetry.Source,
    ];

    internal static Finding In(Known known)
    {
        Seen? hops = Hops(known);
        Seen? push = Push(known);
        return (hops, push) switch
        {
            ({ } hopped, { } pushed) => Together(hopped, pushed),
            ({ } hopped, null) => OfHops(hopped),
            (null, { } pushed) => OffBothLegs(pushed, Untested(known)),
            _ => Untested(known),
        };
    }

    /// <summary>The hop is the quality's own test and speaks; the push speaks first only where it is the more careful of the two.</summary>
    private static Finding Together(Seen hops, Seen push)
    {
        Finding hopped = OfHops(hops);
        Finding pushed = Verdicts.From(
            Quality.SingleLeg,
            push.Limits,
            guardsHealth: true,
            push.Said,
            QualityTest.TwoPlateJumps,
            $"countermovement jumps on two plates",
            ProfileLimits.ImpulseAsymmetry,
            push.Evidence
        );
        (Finding first, Seen second) = Caution(pushed) > Caution(hopped) ? (pushed, hops) : (hopped, push);
        return first with
        {
            Sentence = $"{first.Sentence} {second.Said}",
            Evidence = [.. first.Evidence, .. second.Evidence],
            Thresholds = Both,
        };
    }

    private static Finding OfHops(Seen hops) =>
        Verdicts.From(
            Quality.SingleLeg,
            hops.Limits,
            guardsHealth: true,
            hops.Said,
            QualityTest.SingleHop,
            Test,
            ProfileLimits.HopSymmetry,
            hops.Evidence
        );

    private static Finding OffBothLegs(Seen push, Finding untested)
    {
        Sentence said = $"{push.Said} What each leg does by itself is not tested.";
        return Verdicts.OnlyAgainst(
            untested with
            {
                Sentence = untested.Evidence.IsEmpty ? said : Sentence.Of($"{untested.Sentence} {said}"),
                Evidence = [.. untested.Evidence, .. push.Evidence],
                GuardsHealth = true,
                Thresholds = Both,
            },
            push.Limits,
            ProfileLimits.ImpulseAsymmetry
        );
    }

    private static int Caution(Finding finding) =>
        finding.Verdict switch
        {
            FindingVerdict.Limits => 2,
            FindingVerdict.Unclear => 1,
            _ => 0,
        };

    private static Finding Untested(Known known)
    {
        Evidence? old = new[] { Side.Left, Side.Right }
            .Select(side => known.Screen("single-hop", side, "m", HopUncertaintyM))
            .FirstOrDefault(hop => hop is not null && !known.IsFresh(hop.Date));
        return old is null
            ? Verdicts.NotTested(Quality.SingleLeg, QualityTest.SingleHop, Test, ProfileLimits.HopSymmetry)
            : Verdicts.Stale(Quality.SingleLeg, known, QualityTest.SingleHop, Test, ProfileLimits.HopSymmetry, old);
    }

    private static Seen? Hops(Known known)
    {
        Evidence? left = known.Screen("single-hop", Side.Left, "m", HopUncertaintyM);
        Evidence? right = known.Screen("single-hop", Side.Right, "m", HopUncertaintyM);
        if (left is null || right is null || !known.IsFresh(left.Date) || !known.IsFresh(right.Date))
        {
            return null;
        }

        bool isLeft = left.Measure.Value <= right.Measure.Value;
        (Evidence shorter, Evidence longer) = isLeft ? (left, right) : (right, left);
        if (shorter.Measure.Value <= 0)
        {
            return null;
        }

        double index = Symmetry.LimbSymmetryIndexPct(shorter.Measure.Value, longer.Measure.Value);
        double doubt = Symmetry.RatioStandardUncertaintyPct(
            shorter.Measure.Value,
            shorter.Measure.StandardUncertainty,
            longer.Measure.Value,
            longer.Measure.StandardUncertainty
        );
        Sentence compared =
            left.Measure.Value == right.Measure.Value ? Sentence.Of($"both legs alike")
            : isLeft ? Sentence.Of($"the left reaches {Spoken.Percent(index, doubt)} of the other")
            : Sentence.Of($"the right reaches {Spoken.Percent(index, doubt)} of the other");
        Sentence days =
            left.Date == right.Date
                ? Sentence.Of($"{left.Date}")
                : Sentence.Of($"{left.Date} and {right.Date}, two days");
        return new Seen(
            $"Single hop: left {Spoken.Of(left.Measure)}, right {Spoken.Of(right.Measure)} on {days}; {compared} ({ProfileLimits.HopSymmetry.Value:0} % wished).",
            Likelihood.Below(index, doubt, ProfileLimits.HopSymmetry.Value),
            [left, right]
        );
    }

    private static Seen? Push(Known known)
    {
        if (SharedPush.In(known) is not { Evidence: var push } shared)
        {
            return null;
        }

        double value = push.Measure.Value;
        double doubt = push.Measure.StandardUncertainty;
        double limit = ProfileLimits.ImpulseAsymmetry.Value;
        Sentence amount = Doubted.Percent(Math.Abs(value), doubt);
        Sentence said = (Math.Abs(value) < 2 * doubt, value < 0) switch
        {
            (true, true) => $"Neither leg is shown to push more: the right by {amount}",
            (true, false) => $"Neither leg is shown to push more: the left by {amount}",
            (false, true) => $"The right leg pushes more: {amount}",
            _ => $"The left leg pushes more: {amount}",
        };
        return new Seen(
            $"{said} of the summed impulse on {push.Date}, in jumps off both legs (within {limit:0} % wished).",
            shared.OffLeft + shared.OffRight,
            [push]
        );
    }

    /// <summary>What was seen, in words; the probability that it limits them (0 to 1); what it rests on.</summary>
    private sealed record Seen(Sentence Said, double Limits, ImmutableArray<Evidence> Evidence);
}
