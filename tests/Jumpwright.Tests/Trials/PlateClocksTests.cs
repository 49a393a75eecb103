using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// Two plates on two amplifiers, or two radio links, may be some milliseconds apart. It shows in the edges: one plate is late at
/// take-off and at landing alike, by the same.
/// </summary>
public class PlateClocksTests
{
    /// <summary>The force of a plate, so many samples late from an instant on.</summary>
    private static double[] Late(ReadOnlyMemory<double> side, int samples, int from = 0)
    {
        double[] on = side.ToArray();
        return [.. on.Select((f, i) => i < from ? f : on[Math.Max(i - samples, 0)])];
    }

    private static Trial Measure(ForceRecording good, double[] right, JumpTask task)
    {
        double[] total = [.. good.LeftN.ToArray().Zip(right, (l, r) => l + r)];
        return Measuring.Of(good with { RightN = right, TotalN = total }, task).Require()[0];
    }

    private static ForceRecording Good(JumpTask task, int number) =>
        (ForceRecording)Recording.From(Population.Clean(task, 20270212, number).Bytes).Require();

    [Theory]
    [InlineData(JumpTask.CountermovementJump, 6)]
    [InlineData(JumpTask.SquatJump, 15)]
    [InlineData(JumpTask.DropJump, 30)]
    [InlineData(JumpTask.RepeatedHops, 25)]
    public void OnePlateLateAtTakeOffAndLandingAlike_IsAClock(JumpTask task, int milliseconds)
    {
        for (int i = 0; i < 8; i++)
        {
            ForceRecording good = Good(task, i);
            Trial trial = Measure(good, Late(good.RightN, milliseconds), task);
            string sentence = Assert.Single(
                trial.Warnings,
                w => w.Contains("their clocks differ", StringComparison.Ordinal)
            );
            Assert.Contains("the right plate is", sentence, StringComparison.Ordinal);
            Assert.All(
                trial.Measures.Where(m =>
                    m.Name
                        is MeasureNames.JumpHeight
                            or MeasureNames.JumpHeightFlightTime
                            or MeasureNames.FlightTime
                            or MeasureNames.ContactTime
                            or MeasureNames.TakeOffVelocity
                            or MeasureNames.AsymmetryLandingImpulse
                ),
                m => Assert.Contains(m.Name, trial.Doubtful)
            );
            Assert.DoesNotContain(MeasureNames.BodyWeight, trial.Doubtful);
        }
    }

    /// <summary>A foot that lands late, and left the ground with the other, is a person's.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    [InlineData(30)]
    public void OneFootLateAtLandingOnly_IsAPerson(int milliseconds)
    {
        for (int i = 0; i < 8; i++)
        {
            ForceRecording good = Good(JumpTask.CountermovementJump, i);
            Trial known = Measuring.Of(good, JumpTask.CountermovementJump).Require()[0];
            int flying = (int)((known.Events.TakeOffS!.Value + 0.1 - good.StartS) * good.RateHz);
            Trial trial = Measure(good, Late(good.RightN, milliseconds, flying), JumpTask.CountermovementJump);
            Assert.DoesNotContain(trial.Warnings, w => w.Contains("their clocks differ", StringComparison.Ordinal));
        }
    }
}
