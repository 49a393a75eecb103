using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Recordings.C3d;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Tests.Trials;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Recordings.C3d;

public class C3dTests
{
    private static readonly SimulatedRecording Jump = MakeJump();

    private static readonly RecordingLabels Asked = new("a01", Task: JumpTask.CountermovementJump);

    private static SimulatedRecording MakeJump()
    {
        var random = SeededRandom.For(5, 1);
        return Plates.Record(
            CountermovementJumps.Make(new CountermovementSettings { SwayN = 2 }, random),
            new PlateSettings
            {
                TwoPlates = true,
                NoiseN = 0.5,
                AsymmetryPct = 8,
            },
            random
        );
    }

    /// <summary>Two plates of type 2 under the simulated jump; each stores its upward force with the sign turned, as is usual.</summary>
    private static C3dWriter Two(double unitsPerNewton = 1) =>
        new()
        {
            Frames = Jump.Samples / 10,
            Channels =
            [
                .. Six(i => -Jump.LeftN[i] * unitsPerNewton, 1 / unitsPerNewton),
                .. Six(i => -Jump.RightN[i] * unitsPerNewton, 1 / unitsPerNewton),
            ],
            Plates = [new(2, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown), new(2, [7, 8, 9, 10, 11, 12], C3dWriter.ZDown)],
        };

    private static Channel[] Six(Func<int, double> vertical, double scale = 1, string unit = "N") =>
        [
            new(unit, scale, 0, _ => 3),
            new(unit, scale, 0, _ => -4),
            new(unit, scale, 0, vertical),
            new("Nmm", scale, 0, _ => 100),
            new("Nmm", scale, 0, _ => 200),
            new("Nmm", scale, 0, _ => 300),
        ];

    private static ForceRecording Read(C3dWriter file, RecordingLabels? labels = null) =>
        Assert.IsType<ForceRecording>(Recording.From(file.Write(), labels ?? Asked).Require());

    private static string Refused(byte[] bytes, RecordingLabels? labels = null) =>
        Recording.From(bytes, labels ?? Asked).TryGet(out _, out Refusal? refusal) ? "(read)" : refusal.Sentence;

    public static TheoryData<string, bool> Formats
    {
        get
        {
            var all = new TheoryData<string, bool>();
            foreach (string order in Enum.GetNames<Order>())
            {
                all.Add(order, true);
                all.Add(order, false);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Written_InEveryByteOrderAndStorage_MeasuresAsTheSimulatorMadeIt(string order, bool floating)
    {
        C3dWriter file = Two(unitsPerNewton: 10) with { Order = Enum.Parse<Order>(order), Floating = floating };
        ForceRecording read = Read(file);
        Assert.Equal(1000, read.RateHz, 6);
        Assert.True(read.HasTwoPlates);
        for (int i = 0; i < read.TotalN.Length; i++)
        {
            Assert.Equal(Jump.LeftN[i], read.LeftN.Span[i], 0.051);
            Assert.Equal(Jump.RightN[i], read.RightN.Span[i], 0.051);
        }

        Trial trial = Assert.Single(Measuring.Of(read).Require());
        Assert.Equal(Jump.Truth.Find(MeasureNames.JumpHeight)!.Value, trial.Value(MeasureNames.JumpHeight), 0.003);
        Assert.Equal(8, trial.Value(MeasureNames.AsymmetryPropulsiveImpulse), 0.5);
        Assert.Equal("a01", read.Labels.Athlete);
    }

    [Fact]
    public void TwoPlates_WhoseFeetNobodyNamed_LeaveTheAsymmetryInDoubtAndSayHowToNameThem()
    {
        C3dWriter file = Two(10);
        ForceRecording assumed = Read(file);
        Assert.Contains(assumed.Warnings, w => w.Contains("write 1+2", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.AsymmetryPropulsiveImpulse, Measuring.Of(assumed).Require()[0].Doubtful);

        ForceRecording named = Read(file, Asked with { Plates = PlateChoice.Parse("2+1") });
        Assert.Empty(named.Warnings);
        Trial trial = Measuring.Of(named).Require()[0];
        Assert.DoesNotContain(MeasureNames.AsymmetryPropulsiveImpulse, trial.Doubtful);
        Assert.Equal(-8, trial.Value(MeasureNames.AsymmetryPropulsiveImpulse), 0.5);
    }

    [Fact]
    public void VerticalForce_TakesItsSign_FromThePlatesCorners()
    {
        C3dWriter down = One(i => -Total(i), C3dWriter.ZDown);
        C3dWriter up = One(Total, C3dWriter.ZUp);
        Assert.Equal(Read(down).TotalN.ToArray(), Read(up).TotalN.ToArray());

        // The same stored signal on a plate that lies the other way is a pull: it is not guessed to be a push.
        ForceRecording wrong = Read(One(Total, C3dWriter.ZDown));
        Assert.Equal(-Total(200), wrong.TotalN.Span[200], 0.06);
        Assert.False(Measuring.Of(wrong).TryGet(out _, out Refusal? refusal));
        Assert.Contains("negative", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void VerticalForce_InARoomWhoseYAxisPointsUp_IsFoundByThePlatesNormal()
    {
        double[] yUp = [0, 0, 0, 500, 0, 0, 500, 0, 400, 0, 0, 400];
        Assert.Equal(Total(200), Read(One(i => -Total(i), yUp) with { YScreen = null }).TotalN.Span[200], 0.06);
        Assert.Equal(Total(200), Read(One(Total, yUp) with { YScreen = "-Y" }).TotalN.Span[200], 0.06);
    }

    [Fact]
    public void TypeThree_AddsItsFourVerticalSensors()
    {
        double[] share = [0.1, 0.2, 0.3, 0.4];
        C3dWriter file = Whole() with
        {
            Floating = true,
            Channels =
            [
                .. Enumerable.Range(0, 4).Select(k => new Channel("N", 1, 0, _ => 5 * k)),
                .. share.Select(part => new Channel("N", -1, 0, i => part * Total(i))),
            ],
            Plates = [new(3, [1, 2, 3, 4, 5, 6, 7, 8], C3dWriter.ZDown)],
        };
        Assert.Equal(Total(333), Read(file).TotalN.Span[333], 0.01);
    }

    [Fact]
    public void TypeFour_GoesThroughItsMatrix_WhichIsKeptByColumns()
    {
        var matrix = new double[36];
        matrix[2 + (6 * 2)] = 200; // vertical force of the vertical channel, N/V
        matrix[2 + (6 * 0)] = 10; // and of the first, crosstalk
        matrix[0 + (6 * 2)] = 77; // belongs to another force
        C3dWriter file = Whole() with
        {
            Floating = true,
            Channels = [.. Six(i => -Total(i) / 200, unit: "V")],
            Plates = [new(4, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown, matrix)],
        };
        Assert.Equal(Total(333) - (10 * 3), Read(file).TotalN.Span[333], 0.01);
    }

    [Fact]
    public void TypeOne_TakesItsThirdChannel()
    {
        C3dWriter file = Whole() with
        {
            Channels = [.. Six(i => -Total(i) * 10, 0.1)],
            Plates = [new(1, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown)],
        };
        Assert.Equal(Total(333), Read(file).TotalN.Span[333], 0.06);
    }

    [Fact]
    public void StoredSamples_AreLessTheirOffset_TimesScaleAndGeneralScale()
    {
        C3dWriter file = One(_ => 0, C3dWriter.ZDown) with
        {
            Channels = [.. Six(_ => 0)[..2], new("N", -0.25, 2048, i => 2048 + (Total(i) * 8)), .. Six(_ => 0)[3..]],
            GenScale = 0.5,
        };
        Assert.Equal(Total(200), Read(file).TotalN.Span[200], 0.07);
    }

    [Fact]
    public void UnsignedSamples_ReachTwiceAsHigh_OnlyWhereTheFormatSaysSo()
    {
        double most = Enumerable.Range(0, Jump.Samples).Max(Total);
        double scale = most / 60_000;
        int at = Enumerable.Range(0, Jump.Samples / 10 * 10).MaxBy(Total);
        Channel vertical = new("N", -scale, 0, i => Math.Max(Total(i), 0) / scale);
        C3dWriter file = One(_ => 0, C3dWriter.ZDown) with
        {
            Channels = [.. Six(_ => 0)[..2], vertical, .. Six(_ => 0)[3..]],
        };
        Assert.Equal(most, Read(file with { Format = "UNSIGNED" }).TotalN.Span[at], scale);
        Assert.Equal(most - (65536 * scale), Read(file with { Format = "SIGNED" }).TotalN.Span[at], scale);
    }

    [Theory]
    [InlineData("kN", 1000)]
    [InlineData("lbf", 4.4482216152605)]
    [InlineData("nt", 1)]
    [InlineData("Newtons", 1)]
    public void Units_OfForce_AreTurnedIntoNewtons(string unit, double newtons)
    {
        C3dWriter file = Whole() with { Floating = true, Channels = [.. Six(i => -Total(i) / newtons, unit: unit)] };
        Assert.Equal(Total(200), Read(file).TotalN.Span[200], 0.01);
    }

    [Fact]
    public void Baseline_OfFramesInWhichThePlateIsEmpty_IsTakenOffAndSaid()
    {
        // The plate reads 40 N when empty; the jumper is in the air during frames 300 to 310 or so.
        int air = (int)(Jump.Truth.Events.TakeOffS!.Value * 100) + 10;
        C3dWriter file = One(i => -(Total(i) + 40), C3dWriter.ZDown) with { Zero = [air, air + 10] };
        ForceRecording read = Read(file);
        Assert.Equal(Total(200), read.TotalN.Span[200], 1.0);
        Assert.Contains("were taken off plate 1", Assert.Single(read.Warnings), StringComparison.Ordinal);
        Assert.Equal(
            Jump.Truth.Find(MeasureNames.JumpHeight)!.Value,
            Measuring.Of(read).Require()[0].Value(MeasureNames.JumpHeight),
            0.003
        );
    }

    [Fact]
    public void Baseline_OfFramesInWhichSomebodyStands_IsNotTakenOff()
    {
        ForceRecording read = Read(One(i => -Total(i), C3dWriter.ZDown) with { Zero = [1, 10] });
        Assert.Equal(Total(200), read.TotalN.Span[200], 0.06);
        Assert.Contains("nothing was taken off", Assert.Single(read.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void Clock_StartsAtTheFirstFramesTime() =>
        Assert.Equal(2.5, Read(One(i => -Total(i), C3dWriter.ZDown) with { FirstFrame = 251 }).StartS, 9);

    [Fact]
    public void ThreePlates_OfWhichTwoCarryLoad_AreChosenAndSaidHowToChooseOthers()
    {
        C3dWriter two = Two(10);
        C3dWriter file = two with
        {
            Channels = [.. Six(_ => -20, 0.1), .. two.Channels],
            Plates =
            [
                new(2, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown),
                new(2, [7, 8, 9, 10, 11, 12], C3dWriter.ZDown),
                new(2, [13, 14, 15, 16, 17, 18], C3dWriter.ZDown),
            ],
        };
        ForceRecording read = Read(file);
        Assert.Equal(Jump.LeftN[200], read.LeftN.Span[200], 0.06);
        Assert.Equal(Jump.RightN[200], read.RightN.Span[200], 0.06);
        Assert.Contains("Of 3 force plates plates 2 and 3 carry load", read.Warnings[0], StringComparison.Ordinal);
        Assert.Contains("column plates of trials.csv", read.Warnings[0], StringComparison.Ordinal);

        ForceRecording chosen = Read(file, Asked with { Plates = new PlateChoice(3) });
        Assert.False(chosen.HasTwoPlates);
        Assert.Equal(Jump.RightN[200], chosen.TotalN.Span[200], 0.06);

        C3dWriter three = file with { Channels = [.. Six(i => -Jump.RightN[i] * 10, 0.1), .. two.Channels] };
        Assert.Contains(
            "1, 2, 3 carry load: write in the column plates",
            Refused(three.Write()),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "has 3",
            Refused(file.Write(), Asked with { Plates = new PlateChoice(4) }),
            StringComparison.Ordinal
        );
    }

    public static TheoryData<string, string> Broken =>
        new()
        {
            { "no force plate", "names no force plate" },
            { "no analog", "holds no analog samples" },
            { "type 5", "is of type 5; types 1 to 4 are read" },
            { "volts", "is in 'V', no unit of force" },
            { "no units", "is in '', no unit of force" },
            { "no corners", "do not tell which way is up" },
            { "flat corners", "do not tell which way is up" },
            { "leaning plate", "do not tell which way is up" },
            { "no matrix", "gives no FORCE_PLATFORM:CAL_MATRIX for force plate 1" },
            { "no scale", "gives no ANALOG:SCALE for force plate 1" },
            { "channel 9", "takes its force from channel 9, but there are channels 1 to 6" },
            { "zero rate", "a rate of 0 frames" },
            { "slow", "holds 50 analog samples a second: 200 to 2000 are needed" },
            { "rates disagree", "ANALOG:RATE 500" },
            { "cut off", "ends in frame" },
            { "header alone", "ends after 100 bytes, within its header" },
            { "header without data", "a header without data" },
            { "frames without end", "ends in frame" },
            { "points without end", "POINT:USED" },
            { "parameters outside", "lead out of the file" },
            { "parameter too large", "can't be read, so the file is damaged" },
            { "data outside", "samples would begin outside the file" },
            { "processor", "names processor 200" },
            { "huge force", "more than any plate measures" },
            { "not a number", "more than any plate measures" },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Broken_File_IsRefusedWithItsSentence(string what, string part) =>
        Assert.Contains(part, Refused(Break(what)), StringComparison.Ordinal);

    private static byte[] Break(string what)
    {
        C3dWriter good = One(i => -Total(i), C3dWriter.ZDown);
        byte[] bytes = good.Write();
        switch (what)
        {
            case "no force plate":
                return (good with { Plates = [] }).Write();
            case "no analog":
                return (good with { Channels = [] }).Write();
            case "type 5":
                return (good with { Plates = [good.Plates[0] with { Type = 5 }] }).Write();
            case "volts":
                return (good with { Channels = Six(i => -Total(i), unit: "V") }).Write();
            case "no units":
                return (good with { Without = ["ANALOG:UNITS"] }).Write();
            case "no corners":
                return (good with { Without = ["FORCE_PLATFORM:CORNERS"] }).Write();
            case "flat corners":
                return (good with { Plates = [good.Plates[0] with { Corners = new double[12] }] }).Write();
            case "leaning plate":
                double[] lean = [500, 0, 0, 0, 0, 0, 0, 500, 60, 500, 500, 60];
                return (good with { Plates = [good.Plates[0] with { Corners = lean }] }).Write();
            case "no matrix":
                return (good with { Plates = [good.Plates[0] with { Type = 4 }] }).Write();
            case "no scale":
                return (good with { Without = ["ANALOG:SCALE"] }).Write();
            case "channel 9":
                return (good with { Plates = [good.Plates[0] with { Channels = [1, 2, 9, 4, 5, 6] }] }).Write();
            case "zero rate":
                return (good with { FrameRate = 0, AnalogRate = 0 }).Write();
            case "slow":
                return (good with { FrameRate = 5 }).Write();
            case "rates disagree":
                return (good with { AnalogRate = 500 }).Write();
            case "cut off":
                return bytes[..(bytes.Length / 2)];
            case "header alone":
                return bytes[..100];
            case "header without data":
                return (good with { Frames = 0 }).Write();
            case "frames without end":
                return (good with { FramesSaid = 65534 }).Write();
            case "points without end":
                bytes[2] = bytes[3] = 0xFF;
                return bytes;
            case "parameters outside":
                bytes[0] = 0xFF;
                return bytes[..2048];
            case "parameter too large":
                // POINT:USED stands first: its count of dimensions.
                bytes[512 + 4 + 2 + 4 + 3] = 7;
                bytes.AsSpan(512 + 4 + 2 + 4 + 4, 7).Fill(255);
                return bytes;
            case "data outside":
                bytes[16] = bytes[17] = 0xFF;
                return bytes;
            case "processor":
                bytes[515] = 200;
                return bytes;
            case "huge force":
                return One(i => i == 500 ? 1e6 : 0, C3dWriter.ZDown, floating: true).Write();
            default:
                return One(i => i == 500 ? double.NaN : 0, C3dWriter.ZDown, floating: true).Write();
        }
    }

    [Fact]
    public void Text_WhoseSecondLetterIsP_IsNoC3d() =>
        Assert.Contains("not those of a recording", Refused("xPress,y\n1,2\n"u8.ToArray()), StringComparison.Ordinal);

    [Fact]
    public void Bytes_MutatedAtRandom_NeverThrow()
    {
        byte[] good = One(i => -Total(i), C3dWriter.ZDown).Write();
        var random = new Random(7);
        for (int i = 0; i < 2000; i++)
        {
            byte[] bytes = (byte[])good.Clone();
            for (int k = random.Next(1, 8); k > 0; k--)
            {
                bytes[random.Next(i % 4 == 0 ? bytes.Length : 1400)] = (byte)random.Next(256);
            }

            _ = Refused(i % 3 == 0 ? bytes[..random.Next(bytes.Length)] : bytes);
        }
    }

    private static double Total(int i) => Jump.LeftN[i] + Jump.RightN[i];

    private static C3dWriter Whole() =>
        new() { Frames = Jump.Samples / 10, Plates = [new(2, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown)] };

    /// <summary>One plate of type 2 whose vertical channel stores that; whole numbers are tenths of a newton.</summary>
    private static C3dWriter One(Func<int, double> stored, double[] corners, bool floating = false) =>
        Whole() with
        {
            Floating = floating,
            Channels = floating ? Six(stored) : Six(i => stored(i) * 10, 0.1),
            Plates = [new(2, [1, 2, 3, 4, 5, 6], corners)],
        };
}
