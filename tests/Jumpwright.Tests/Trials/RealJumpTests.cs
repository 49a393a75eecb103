using Jumpwright.Tests.CheckValues;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Recordings of real people; what is known of each stands in the README of its folder.</summary>
public class RealJumpTests
{
    [Fact]
    public void OnePlateJump_OfBmclab_AgreesWithTwoIndependentReadings()
    {
        // Duarte and Watanabe, BMClab/BMC, CC BY 4.0; check values X1a to X1d.
        Trial trial = Assert.Single(Recorded.Trials("one-plate-jump/jump1.csv"));
        Assert.InRange(trial.Value(MeasureNames.BodyWeight), 692.6 * 0.995, 692.6 * 1.005);
        Assert.InRange(trial.Value(MeasureNames.FlightTime), 0.5511 - 0.005, 0.5511 + 0.005);
        Assert.InRange(trial.Value(MeasureNames.JumpHeightFlightTime), 0.3724 - 0.008, 0.3724 + 0.008);
        Assert.InRange(trial.Value(MeasureNames.JumpHeight), 0.356 - 0.008, 0.356 + 0.008);
        CheckValueTable.Assert("X1a", _ => trial.Value(MeasureNames.FlightTime));
        CheckValueTable.Assert("X1b", _ => trial.Value(MeasureNames.JumpHeightFlightTime));
        CheckValueTable.Assert("X1c", _ => trial.Value(MeasureNames.JumpHeight));
        CheckValueTable.Assert("X1d", _ => trial.Value(MeasureNames.BodyWeight));
        Assert.Equal("impulse-momentum", trial.Find(MeasureNames.JumpHeight)!.Method);
        Assert.Equal("flight-time", trial.Find(MeasureNames.JumpHeightFlightTime)!.Method);
        // Two seconds after the landing the force swings out to the very edge of 5 % of the weight once more. What was kept of the force ends at 51 N
        // before the flight and begins at 258 N after it, so that the take-off, and the velocity there, are not known to the last millisecond.
        Assert.Equal([MeasureNames.JumpHeight, MeasureNames.TimeToStabilisation], trial.Doubtful);
        Assert.InRange(trial.Find(MeasureNames.JumpHeight)!.StandardUncertainty, 0.003, 0.0045);
        Assert.Equal(2, trial.Warnings.Length);
    }

    [Fact]
    public void SquatJumps_OfRestlessPeople_GiveTimesOnlyAndSaySo()
    {
        // T010 of andrewlba/ACL_squat_jump, MIT: never a quiet second; second jump take-off to touch-down 0.317 s.
        Trial trial = Assert.Single(Recorded.Trials("two-plate-squat-jumps/T010-2.csv"));
        Assert.Null(trial.Find(MeasureNames.BodyWeight));
        Assert.Null(trial.Find(MeasureNames.JumpHeight));
        Assert.InRange(trial.Value(MeasureNames.FlightTime), 0.317 - 0.008, 0.317 + 0.008);
        Assert.Contains(trial.Warnings, w => w.Contains("never stands still", StringComparison.Ordinal));
    }

    [Fact]
    public void SquatJump_OfSomebodyWhoStoodStill_IsWeighed()
    {
        // T012-1: our second reading says 637.9 N, flight 0.201 s, impulse height 0.0555 m.
        Trial trial = Assert.Single(Recorded.Trials("two-plate-squat-jumps/T012-1.csv"));
        Assert.InRange(trial.Value(MeasureNames.BodyWeight), 637.9 * 0.995, 637.9 * 1.005);
        Assert.InRange(trial.Value(MeasureNames.FlightTime), 0.201 - 0.008, 0.201 + 0.008);
        Assert.InRange(trial.Value(MeasureNames.JumpHeight), 0.0555 - 0.01, 0.0555 + 0.01);
        Assert.True(trial.Value(MeasureNames.UnwantedDip) > 10);
    }
}
