using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Single leg: hop distances left and right; with two plates also the share of the push in a jump off both legs.</summary>
internal static class FindSingleLeg
{
    private static readonly Sentence Test = $"a single hop for distance, each leg, with a tape";
    private const double HopUncertaintyM = 0.05;

    internal static Finding In(Known known)
    {
        Finding? hops = Hops(known);
        Finding? push = Push(known);
        if (hops is not null && push is not null)
        {
            // The one that is surer to hold them back speaks; the other's sentence stands behind it.
            (Finding first, Finding second) = hops.Probability >= push.Probability ? (hops, push) : (push, hops);
            return first with
            {
                Sentence = $"{first.Sentence} {second.Sentence}",
                Evidence = [.. first.Evidence, .. second.Evidence],
                Thresholds = [hops.Source, push.Source],
            };
        }

        return hops
            ?? push
            ?? (
                known.Screen("single-hop", Side.Left, "m", HopUncertaintyM) is { } old && !known.IsFresh(old.Date)
                    ? Verdicts.Stale(
                        Quality.SingleLeg,
                        known,
                        QualityTest.SingleHop,
                        Test,
                        ProfileLimits.HopSymmetry,
                        old
                    )
                    : Verdicts.NotTested(Quality.SingleLeg, QualityTest.SingleHop, Test, ProfileLimits.HopSymmetry)
            );
    }

    private static Finding? Hops(Known known)
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
        return Verdicts.From(
            Quality.SingleLeg,
            Likelihood.Below(index, doubt, ProfileLimits.HopSymmetry.Value),
            guardsHealth: true,
            $"Single hop: left {Spoken.Of(left.Measure)}, right {Spoken.Of(right.Measure)} on {shorter.Date}; {compared} ({ProfileLimits.HopSymmetry.Value:0} % wished).",
            QualityTest.SingleHop,
            Test,
            ProfileLimits.HopSymmetry,
            left,
            right
        );
    }

    private static Finding? Push(Known known)
    {
        Evidence? push = known.Find(MeasureNames.AsymmetryPropulsiveImpulse, JumpTask.CountermovementJump);
        if (push is null || !known.IsFresh(push.Date))
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
        return Verdicts.From(
            Quality.SingleLeg,
            Likelihood.Above(value, doubt, limit) + Likelihood.Below(value, doubt, -limit),
            guardsHealth: true,
            $"{said} of the summed impulse on {push.Date} (within {limit:0} % wished).",
            QualityTest.TwoPlateJumps,
            $"countermovement jumps on two plates",
            ProfileLimits.ImpulseAsymmetry,
            push
        );
    }
}
