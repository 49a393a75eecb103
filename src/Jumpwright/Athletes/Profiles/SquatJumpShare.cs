using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// The squat jump's height in % of the countermovement jump's: same measure, method, device and day, and only squat jumps
/// without an unwanted dip. Low means that the push from standing still lags; high means that the dip brings little.
/// </summary>
internal sealed record SquatJumpShare(
    double Pct,
    double StandardUncertaintyPct,
    Evidence SquatJump,
    Evidence Countermovement
)
{
    internal static readonly Sentence Test =
        $"squat jumps held two seconds at the bottom, and countermovement jumps, same day and device";

    internal static SquatJumpShare? In(Known known)
    {
        if (JumpPair.Latest(Clean(known.History), known.AsOf, JumpTask.SquatJump) is not { } pair)
        {
            return null;
        }

        (Evidence squat, Evidence counter) = pair;
        double share = 100 * squat.Measure.In(Unit.Metre) / counter.Measure.In(Unit.Metre);
        return new SquatJumpShare(
            share,
            share
                * Math.Sqrt(
                    Math.Pow(squat.Measure.StandardUncertainty / squat.Measure.Value, 2)
                        + Math.Pow(counter.Measure.StandardUncertainty / counter.Measure.Value, 2)
                ),
            squat,
            counter
        );
    }

    /// <summary>Not tested, and why where both were jumped and are still no pair.</summary>
    internal static Finding Untested(Known known, Quality quality, Coefficient threshold)
    {
        Finding untested = Verdicts.NotTested(quality, QualityTest.SquatAndCountermovementJumps, Test, threshold);
        return JumpPair.BothSeen(known, JumpTask.SquatJump)
            ? untested with
            {
                Sentence =
                    $"Not tested: no clean squat jump stands beside a countermovement jump of the same day, device and method.",
            }
            : untested;
    }

    internal Sentence Sentence =>
        $"Squat jump {Spoken.Of(SquatJump.Measure)}, countermovement jump {Spoken.Of(Countermovement.Measure)} ({new SaidMethod(Countermovement.Measure.Method)}, {Spoken.Device(Countermovement.Device)}, {Countermovement.Date}): {Spoken.Percent(Pct, StandardUncertaintyPct)} of it without a dip.";

    private static History Clean(History history) =>
        history with
        {
            Trials = [.. history.Trials.Where(t => t.Trial.Task != JumpTask.SquatJump || IsClean(t.Trial))],
        };

    private static bool IsClean(Trial trial) =>
        trial.Find(MeasureNames.UnwantedDip) is not { } dip || dip.Value <= ProfileLimits.UnwantedDip.Value;
}
