using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Run-up: what an approach jump gains over the standing jump, same measure, method, device and day.</summary>
internal static class FindRunUp
{
    private static readonly Sentence Test = $"approach jumps and countermovement jumps on the same device, same day";

    internal static Finding In(Known known)
    {
        if (JumpPair.Latest(known.History, known.AsOf, JumpTask.ApproachJump) is not { } pair)
        {
            Finding untested = Verdicts.NotTested(
                Quality.RunUp,
                QualityTest.ApproachAndCountermovementJumps,
                Test,
                ProfileLimits.RunUpGain
            );
            return JumpPair.BothSeen(known, JumpTask.ApproachJump)
                ? untested with
                {
                    Sentence =
                        $"Not tested: no run-up jump stands beside a countermovement jump of the same day, device and method.",
                }
                : untested;
        }

        (Evidence approach, Evidence standing) = pair;
        if (!known.IsFresh(approach.Date))
        {
            return Verdicts.Stale(
                Quality.RunUp,
                known,
                QualityTest.ApproachAndCountermovementJumps,
                Test,
                ProfileLimits.RunUpGain,
                approach
            );
        }

        double ratio = approach.Measure.Value / standing.Measure.Value;
        double gain = 100 * (ratio - 1);
        double doubt =
            100
            * ratio
            * Math.Sqrt(
                Math.Pow(approach.Measure.StandardUncertainty / approach.Measure.Value, 2)
                    + Math.Pow(standing.Measure.StandardUncertainty / standing.Measure.Value, 2)
            );
        return Verdicts.From(
            Quality.RunUp,
            Likelihood.Below(gain, doubt, ProfileLimits.RunUpGain.Value),
            guardsHealth: false,
            $"Run-up jump {Spoken.Of(approach.Measure)}, standing {Spoken.Of(standing.Measure)} ({new SaidMethod(approach.Measure.Method)}, {approach.Date}): the run-up brings {Spoken.Percent(gain, doubt)} (at least {ProfileLimits.RunUpGain.Value:0} % wished).",
            QualityTest.ApproachAndCountermovementJumps,
            Test,
            ProfileLimits.RunUpGain,
            approach,
            standing
        );
    }
}
