using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Simulation;

/// <summary>Two feet that take a landing unevenly, by a share that is known.</summary>
public class LandingAsymmetryTests
{
    [Theory]
    [InlineData(0.58)]
    [InlineData(0.50)]
    [InlineData(0.41)]
    public void TheSideThatTakesMore_IsNamed_WithinTwoUncertainties(double leftShare)
    {
        var random = new SeededRandom(11);
        SimulatedMotion motion = CountermovementJumps.Make(
            new CountermovementSettings(),
            random,
            JumpTask.CountermovementJump
        );
        SimulatedRecording recorded = Plates.Record(
            motion,
            new PlateSettings
            {
                LandingLeftShare = leftShare,
                OffsetN = 6,
                RightOffsetN = -9,
            },
            random
        );
        double truth = recorded.Truth.Find(MeasureNames.AsymmetryLandingImpulse)!.Value;
        Assert.Equal(100 * ((2 * leftShare) - 1), truth, 0.5);

        Trial trial = Recording
            .From(ForceCsv.Bytes(recorded))
            .Then(r => Measuring.Of(r, JumpTask.CountermovementJump))
            .TryGet(out var trials, out _)
            ? trials[0]
            : throw new InvalidOperationException("Not measured.");
        var measured = trial.Measures.Single(m => m.Name == MeasureNames.AsymmetryLandingImpulse);
        Assert.InRange(Math.Abs(measured.Value - truth), 0, 2 * measured.StandardUncertainty);
        Assert.DoesNotContain(MeasureNames.AsymmetryLandingImpulse, trial.Doubtful);
    }
}
