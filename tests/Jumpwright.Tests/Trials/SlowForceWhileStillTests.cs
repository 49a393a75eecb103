using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A plate's zero may wander by a newton within seconds. Through a squat that is held it then adds up as if the athlete had begun to
/// rise long before the push, although nobody who holds still at the start of the hold is moving at its end.
/// </summary>
public class SlowForceWhileStillTests
{
    private const double WanderN = 1.2;
    private const double WanderHz = 0.18;

    private static List<(double ErrorM, bool Doubtful)> Heights(JumpTask task, Func<SeededRandom, SimulatedMotion> make)
    {
        var found = new List<(double, bool)>();
        for (ulong i = 0; i < 40; i++)
        {
            var random = SeededRandom.For(20261130, i);
            SimulatedMotion motion = make(random);
            SimulatedRecording recording = Plates.Record(motion, new PlateSettings { TwoPlates = false }, random);
            double phase = random.Uniform(0, 2 * Math.PI);
            double turn = 2 * Math.PI * WanderHz / recording.Settings.RateHz;
            double[] force = [.. recording.TotalN.Select((f, k) => f + (WanderN * Math.Sin(phase + (turn * k))))];
            Trial trial = Measuring
                .Of(
                    new ForceRecording(
                        new RecordingLabels(Task: task),
                        [],
                        0,
                        recording.Settings.RateHz,
                        force,
                        Array.Empty<double>(),
                        Array.Empty<double>()
                    )
                )
                .Require()[0];
            found.Add(
                (
                    trial.Value(MeasureNames.JumpHeight) - recording.Truth.Find(MeasureNames.JumpHeight)!.Value,
                    trial.Doubtful.Contains(MeasureNames.JumpHeight)
                )
            );
        }

        return found;
    }

    [Fact]
    public void ASquatHeldOnAPlateThatWanders_IsMeasuredFromTheEndOfTheHold()
    {
        List<(double ErrorM, bool Doubtful)> heights = Heights(
            JumpTask.SquatJump,
            random =>
                SquatJumps.Make(
                    new SquatJumpSettings
                    {
                        BodyMassKg = random.Uniform(45, 110),
                        TakeOffVelocityMS = random.Uniform(2, 2.8),
                        HoldS = random.Uniform(2.2, 3),
                        SwayN = 1,
                    },
                    random
                )
        );
        double spread = Math.Sqrt(heights.Average(h => h.ErrorM * h.ErrorM));
        Assert.True(spread < 0.0025, $"root mean square of the errors {spread:0.00000} m");
        Assert.DoesNotContain(heights, h => !h.Doubtful && Math.Abs(h.ErrorM) > 0.01);
    }
}
