using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Run-up: what an approach jump gains over the standing jump, same measure, method and device.</summary>
internal static class FindRunUp
{
    private static readonly Sentence Test = $"approach jumps and countermovement jumps on the same device, same day";

    internal static Finding In(Known known)
    {
        foreach (string height in new[] { MeasureNames.JumpHeight, MeasureNames.JumpHeightFlightTime })
        {
            foreach (Evidence approach in known.All(height, JumpTask.ApproachJump))
            {
                Evidence? standing = known
                    .All(height, JumpTask.CountermovementJump)
                    .FirstOrDefault(e => e.Device == approach.Device && e.Measure.Method == approach.Measure.Method);
                if (standing is null || standing.Measure.Value <= 0 || approach.Measure.Value <= 0)
                {
                    continue;
                }

                if (!known.IsFresh(approach.Date) || !known.IsFresh(standing.Date))
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

        return Verdicts.NotTested(
            Quality.RunUp,
            QualityTest.ApproachAndCountermovementJumps,
            Test,
            ProfileLimits.RunUpGain
        );
    }
}
