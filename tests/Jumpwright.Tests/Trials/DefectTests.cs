using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Defects;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Good recordings spoiled on purpose: each is refused with one clear sentence, or repaired with a warning.</summary>
public class DefectTests
{
    private static readonly byte[] Good = MakeGood(two: true);
    private static readonly byte[] GoodOnePlate = MakeGood(two: false);

    private static byte[] MakeGood(bool two)
    {
        var random = SeededRandom.For(11, 1);
        SimulatedMotion motion = CountermovementJumps.Make(new CountermovementSettings { SwayN = 2 }, random);
        SimulatedRecording recording = Plates.Record(motion, new PlateSettings { TwoPlates = two }, random);
        return ForceCsv.Bytes(recording, new RecordingLabels(Task: JumpTask.CountermovementJump));
    }

    private static string? Refused(byte[] bytes) =>
        Recording.From(bytes).TryGet(out Recording? recording, out Refusal? refusal)
            ? Measuring.Of(recording).TryGet(out _, out refusal)
                ? null
                : refusal.Sentence
            : refusal.Sentence;

    public static TheoryData<string, string> Refusing =>
        new()
        {
            { "decimal-commas", "semicolons" },
            { "truncated", "cut off" },
            { "gap", "samples are missing" },
            { "repeated-times", "stands twice" },
            { "header-only", "header without data" },
            { "kilonewtons", "does not look like newtons" },
            { "upside-down", "negative" },
            { "saturated", "at its limit" },
            { "not-a-number", "not a number" },
            { "empty", "empty" },
        };

    [Fact]
    public void Good_Recordings_AreMeasured()
    {
        Assert.Null(Refused(Good));
        Assert.Null(Refused(GoodOnePlate));
    }

    [Theory]
    [MemberData(nameof(Refusing))]
    public void Spoiled_Recording_IsRefusedWithItsSentence(string id, string part)
    {
        foreach (byte[] good in new[] { Good, GoodOnePlate })
        {
            string? sentence = Refused(DefectList.Find(id).Spoil(good));
            Assert.NotNull(sentence);
            Assert.Contains(part, sentence, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Defects_OfTheSimulator_AreAllTriedHere()
    {
        string[] tried = [.. Refusing.Select(r => r.Data.Item1), "bom-crlf"];
        Assert.Equal(DefectList.All.Select(d => d.Id).Order(), tried.Order());
    }

    [Fact]
    public void ByteOrderMarkAndCrLf_AreRepairedAndMeasureTheSame()
    {
        Recording repaired = Recording.From(DefectList.Find("bom-crlf").Spoil(Good)).Require();
        Assert.Equal(2, repaired.Warnings.Length);
        double height = Measuring.Of(repaired).Require()[0].Value(MeasureNames.JumpHeight);
        Assert.Equal(Measuring.Of(Recording.From(Good).Require()).Require()[0].Value(MeasureNames.JumpHeight), height);
    }

    [Theory]
    [InlineData(1.2, 4000, "a single sample jumps away")]
    [InlineData(2.6, -1, "a single sample jumps away")]
    public void Spike_OfOneSample_IsRefusedWithItsSecond(double atS, double newtons, string part)
    {
        var force = (ForceRecording)Recording.From(GoodOnePlate).Require();
        double[] spoiled = force.TotalN.ToArray();
        int at = (int)(atS * force.RateHz);
        spoiled[at] = newtons < 0 ? -spoiled[at] : newtons;
        Assert.False(Measuring.Of(force with { TotalN = spoiled }).TryGet(out _, out Refusal? refusal));
        Assert.Contains(part, refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains($"{atS:0.000} s", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Dropout_InMidStance_IsRefused()
    {
        var force = (ForceRecording)Recording.From(GoodOnePlate).Require();
        double[] spoiled = force.TotalN.ToArray();
        spoiled.AsSpan(1500, 20).Clear();
        Assert.False(Measuring.Of(force with { TotalN = spoiled }).TryGet(out _, out Refusal? refusal));
        Assert.Contains("samples were lost", refusal.Sentence, StringComparison.Ordinal);
    }

    /// <summary>
    /// A hard rebound at 500 Hz: 0.14 s from touch-down to take-off, its force going with the power 0.8 of the time that is left, falls
    /// through its last half body weight within one sample.
    /// </summary>
    [Fact]
    public void HardShortContact_AtALowRate_IsNoDropout()
    {
        const double rate = 500;
        const double weight = 60 * Gravity.MetresPerSecondSquared;
        const double contactS = 0.14;
        const double fallMS = -3.0;
        const double leaveMS = 2.8;
        static double Shape(double s) => Math.Pow(s, 1.2) * Math.Pow(1 - s, 0.8);
        double area = Enumerable.Range(0, 20_000).Sum(k => Shape((k + 0.5) / 20_000)) / 20_000;
        double peak = ((60 * (leaveMS - fallMS)) + (weight * contactS)) / (area * contactS);
        const double down = 1.5019;
        const double up = down + contactS;
        const double landed = up + (2 * leaveMS / Gravity.MetresPerSecondSquared);
        double stop = ((60 * leaveMS) + (weight * 0.2)) * Math.PI / (2 * 0.4);
        double ForceN(double t)
        {
            double since = t - landed;
            double along = Math.PI * since / 0.4;
            return t < down || (t > up && since < 0) ? 0
                : t <= up ? peak * Shape((t - down) / contactS)
                : since < 0.4 ? (weight * (1 - Math.Cos(along)) / 2) + (stop * Math.Sin(along))
                : weight;
        }

        var random = SeededRandom.For(20261130, 1);
        double[] force = [.. Enumerable.Range(0, 2300).Select(i => ForceN(i / rate) + (3 * random.Normal()))];
        Trial trial = Measuring
            .Of(new ForceRecording(new RecordingLabels(Task: JumpTask.DropJump), [], 0, rate, force, default, default))
            .Require()[0];
        Assert.Equal(contactS, trial.Value(MeasureNames.ContactTime), 0.002);
    }

    [Fact]
    public void Recording_ThatEndsBeforeTheLanding_GivesHeightByImpulseAndNoFlightTime()
    {
        var force = (ForceRecording)Recording.From(GoodOnePlate).Require();
        Trial whole = Measuring.Of(force).Require()[0];
        int end = (int)((whole.Events.TakeOffS!.Value + 0.2) * force.RateHz);
        Trial cut = Assert.Single(Measuring.Of(force with { TotalN = force.TotalN[..end] }).Require());
        Assert.Null(cut.Find(MeasureNames.FlightTime));
        Assert.Equal(whole.Value(MeasureNames.JumpHeight), cut.Value(MeasureNames.JumpHeight), 0.02);
    }

    [Fact]
    public void Bytes_MutatedAtRandom_NeverThrow()
    {
        var random = new Random(3);
        for (int i = 0; i < 300; i++)
        {
            byte[] bytes = (byte[])GoodOnePlate.Clone();
            int changes = 1 + random.Next(20);
            for (int k = 0; k < changes; k++)
            {
                bytes[random.Next(i % 2 == 0 ? bytes.Length : 200)] = (byte)random.Next(256);
            }

            int from = random.Next(bytes.Length / 2);
            _ = Refused(
                i % 3 == 0 ? bytes[from..]
                : i % 3 == 1 ? bytes[..^from]
                : bytes
            );
        }
    }
}
