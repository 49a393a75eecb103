using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// Jumps and landings on both legs that lean off an operated leg speak for the other one: what they show to be sound counts as not tested, and each
/// leg's own test is asked for. What they show to limit stays (<c>common practice</c>: unknown closes).
/// </summary>
internal static class LeaningOff
{
    private static readonly Sentence Test = $"a single hop for distance, each leg, with a tape";

    /// <summary>The finding as it counts for whoever was operated.</summary>
    internal static Finding In(Known known, Finding finding) =>
        finding is { Verdict: FindingVerdict.Sound, Quality: not Quality.SingleLeg } && Lean(known) is { } lean
            ? finding with
            {
                Verdict = FindingVerdict.NotTested,
                Probability = null,
                Sentence =
                    $"{finding.Sentence} {lean} What is done on both legs says nothing for that leg, so it counts as not tested.",
                NextTest = $"{Test:capital}",
                Asks = QualityTest.SingleHop,
            }
            : finding;

    private static Sentence? Lean(Known known)
    {
        if (
            known.History.Athlete.Operation is not { } operation
            || known.Find(MeasureNames.AsymmetryPropulsiveImpulse, JumpTask.CountermovementJump) is not { } push
            || !known.IsFresh(push.Date)
        )
        {
            return null;
        }

        double value = push.Measure.Value;
        double doubt = push.Measure.StandardUncertainty;
        double limit = ProfileLimits.ImpulseAsymmetry.Value;
        // Positive: the left leg pushes more.
        double offLeft = Likelihood.Below(value, doubt, -limit);
        double offRight = Likelihood.Above(value, doubt, limit);
        double off = operation.Side switch
        {
            Side.Left => offLeft,
            Side.Right => offRight,
            _ => offLeft + offRight,
        };
        if (off <= 1 - ProfileLimits.SureOfHealth.Value)
        {
            return null;
        }

        Sentence amount = Doubted.Percent(Math.Abs(value), doubt);
        return value < 0
            ? Sentence.Of(
                $"But on {push.Date} the jumps leaned off the left leg after the operation: the right pushed {amount} more."
            )
            : Sentence.Of(
                $"But on {push.Date} the jumps leaned off the right leg after the operation: the left pushed {amount} more."
            );
    }
}
