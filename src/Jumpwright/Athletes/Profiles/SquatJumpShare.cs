using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// The squat jump's height in % of the countermovement jump's: same measure, same method, same device, and only squat jumps
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
        History clean = known.History with
        {
            Trials = [.. known.History.Trials.Where(t => t.Trial.Task != JumpTask.SquatJump || IsClean(t.Trial))],
        };
        var comparable = new Known(clean, known.AsOf, CurrentMeasures.Of(clean, known.AsOf));
        foreach (string height in new[] { MeasureNames.JumpHeight, MeasureNames.JumpHeightFlightTime })
        {
            foreach (Evidence squat in comparable.All(height, JumpTask.SquatJump))
            {
                Evidence? counter = comparable
                    .All(height, JumpTask.CountermovementJump)
                    .FirstOrDefault(e => e.Device == squat.Device && e.Measure.Method == squat.Measure.Method);
                if (counter is null || counter.Measure.Value <= 0 || squat.Measure.Value <= 0)
                {
                    continue;
                }

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
        }

        return null;
    }

    internal Sentence Sentence =>
        $"Squat jump {Spoken.Of(SquatJump.Measure)}, countermovement jump {Spoken.Of(Countermovement.Measure)} ({new SaidMethod(Countermovement.Measure.Method)}, {Spoken.Device(Countermovement.Device)}, {Countermovement.Date}): {Spoken.Percent(Pct, StandardUncertaintyPct)} of it without a dip.";

    private static bool IsClean(Trial trial) =>
        trial.Find(MeasureNames.UnwantedDip) is not { } dip || dip.Value <= ProfileLimits.UnwantedDip.Value;
}
