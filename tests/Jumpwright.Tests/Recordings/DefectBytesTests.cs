using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Recordings;

/// <summary>
/// Defects that the simulator's own list does not hold, each over real bytes: refused with its sentence, or what is given is right
/// or named in doubt. (Decimal commas, cut-off files, gaps, repeated times, header alone, wrong unit or sign and saturation are
/// held by DefectTests.)
/// </summary>
public class DefectBytesTests
{
    private const double Rate = 1000;

    private static readonly SimulatedRecording Jump = MakeJump();

    private static SimulatedRecording MakeJump()
    {
        var random = SeededRandom.For(12, 1);
        return Plates.Record(
            CountermovementJumps.Make(new CountermovementSettings { SwayN = 2 }, random),
            new PlateSettings { TwoPlates = false },
            random
        );
    }

    private static byte[] Bytes(
        Func<int, double> time,
        Func<int, double> force,
        int samples,
        Func<int, double>? other = null
    )
    {
        var text = new StringBuilder("# task: countermovement-jump\n");
        text.Append(other is null ? "time_s,force_N\n" : "time_s,force_left_N,force_right_N\n");
        for (int i = 0; i < samples; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{time(i):0.0000},{force(i):0.00}");
            text.Append(other is null ? "\n" : string.Create(CultureInfo.InvariantCulture, $",{other(i):0.00}\n"));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static string Sentence(byte[] bytes) =>
        Recording.From(bytes).Then(r => Measuring.Of(r)).TryGet(out _, out Refusal? refusal)
            ? "(measured)"
            : refusal.Sentence;

    private static double Even(int i) => i / Rate;

    [Fact]
    public void IrregularTimes_AreRefusedWithTheLine() =>
        Assert.Contains(
            "the samples are not evenly spaced in time",
            Sentence(Bytes(i => Even(i) + (0.0003 * Math.Sin(i)), i => Jump.TotalN[i], Jump.Samples)),
            StringComparison.Ordinal
        );

    [Fact]
    public void SlowlyWanderingClock_IsRefused() =>
        Assert.Contains(
            "the samples are not evenly spaced in time",
            Sentence(Bytes(i => Even(i) * (1 + (i * 1e-7)), i => Jump.TotalN[i], Jump.Samples)),
            StringComparison.Ordinal
        );

    /// <summary>A computer's own clock: here and there a step is long enough for a lost sample, but none is lost.</summary>
    [Fact]
    public void JitteringClock_IsCalledUneven_NotMissingSamples() =>
        Assert.Contains(
            "the samples are not evenly spaced in time",
            Sentence(Bytes(i => Even(i) + (i % 10 == 5 ? 0.8 / Rate : 0), i => Jump.TotalN[i], Jump.Samples)),
            StringComparison.Ordinal
        );

    [Fact]
    public void EveryTimeTwice_IsRefused() =>
        Assert.Contains(
            "stands twice",
            Sentence(Bytes(i => Even(i / 2 * 2), i => Jump.TotalN[i], Jump.Samples)),
            StringComparison.Ordinal
        );

    [Fact]
    public void PlateNotZeroed_IsRefused() =>
        Assert.Contains(
            "zero the plate",
            Sentence(Bytes(Even, i => Jump.TotalN[i] + 420, Jump.Samples)),
            StringComparison.Ordinal
        );

    [Fact]
    public void TooShort_IsRefused() =>
        Assert.Contains("too short", Sentence(Bytes(Even, i => Jump.TotalN[i], 500)), StringComparison.Ordinal);

    [Theory]
    [InlineData(60, 0)]
    [InlineData(150, 0)]
    [InlineData(40, 25)]
    [InlineData(120, 60)]
    public void SomebodyLeaningOnTheOtherPlate_IsRefusedOrNamed_NeverSilentlyWrong(double steadyN, double movingN)
    {
        byte[] bytes = Bytes(
            Even,
            i => Jump.TotalN[i],
            Jump.Samples,
            i => steadyN + (movingN * Math.Sin(2 * Math.PI * 0.7 * i / Rate))
        );
        if (
            !Recording
                .From(bytes)
                .Then(r => Measuring.Of(r))
                .TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal)
        )
        {
            Assert.EndsWith(".", refusal.Sentence, StringComparison.Ordinal);
            return;
        }

        foreach (Trial trial in trials)
        {
            foreach (string name in new[] { MeasureNames.JumpHeight, MeasureNames.JumpHeightFlightTime })
            {
                Measure? height = trial.Find(name);
                Assert.True(
                    height is null
                        || trial.Doubtful.Contains(name)
                        || Math.Abs(height.Value - Jump.Truth.Find(name)!.Value) < 0.01,
                    $"{name} {height?.Value:0.000} silently, truth {Jump.Truth.Find(name):0.000}"
                );
            }
        }
    }
}
