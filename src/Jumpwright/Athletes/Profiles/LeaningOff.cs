using Jumpwright.Quantities;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// Jumps and landings on both legs that lean off an operated leg speak for the other one: what they show to be sound counts as not tested, and each
/// leg's own test is asked for. What they show to limit stays (<c>common practice</c>: unknown closes).
/// </summary>
internal static class LeaningOff
{
    /// <summary>The findings as they count for whoever was operated.</summary>
    internal static IEnumerable<Finding> In(Known known, IEnumerable<Finding> findings) =>
        Lean(known) is { } lean ? findings.Select(f => Under(lean, f)) : findings;

    private static Finding Under(Sentence lean, Finding finding) =>
        finding is { Verdict: FindingVerdict.Sound, Quality: not Quality.SingleLeg }
            ? finding with
            {
                Verdict = FindingVerdict.NotTested,
                Probability = null,
                Sentence =
                    $"{finding.Sentence} {lean} What is done on both legs says nothing for that leg, so it counts as not tested.",
                NextTest = $"{FindSingleLeg.Test:capital}",
                Asks = QualityTest.SingleHop,
            }
            : finding;

    private static Sentence? Lean(Known known)
    {
        if (known.History.Athlete.Operation is not { } operation || SharedPush.In(known) is not { } push)
        {
            return null;
        }

        double off = operation.Side switch
        {
            Side.Left => push.OffLeft,
            Side.Right => push.OffRight,
            _ => push.OffLeft + push.OffRight,
        };
        if (off <= 1 - ProfileLimits.SureOfHealth.Value)
        {
            return null;
        }

        double value = push.Evidence.Measure.Value;
        if ((operation.Side is Side.Left && value >= 0) || (operation.Side is Side.Right && value <= 0))
        {
            return $"But whether the jumps of {push.Evidence.Date} leaned off the operated leg can't be told from them.";
        }

        Sentence amount = Doubted.Percent(Math.Abs(value), push.Evidence.Measure.StandardUncertainty);
        return value < 0
            ? Sentence.Of(
                $"But on {push.Evidence.Date} the jumps leaned off the left leg after the operation: the right pushed {amount} more."
            )
            : Sentence.Of(
                $"But on {push.Evidence.Date} the jumps leaned off the right leg after the operation: the left pushed {amount} more."
            );
    }
}
