using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Tests.Prescribing;
using Jumpwright.Tests.Safety;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Athletes;

/// <summary>Curves from what an athlete really jumped and lifted: single trials, one device and method each.</summary>
public class TestedTests
{
    private static History Loaded(History history, double loadKg, double heightM, int times = 3) =>
        Enumerable
            .Range(0, times)
            .Aggregate(
                history,
                (h, i) =>
                    TestedSquad.Jumped(
                        h,
                        JumpTask.LoadedJump,
                        null,
                        loadKg,
                        (MeasureNames.JumpHeight, heightM + (0.002 * i), Unit.Metre),
                        (
                            MeasureNames.PeakPropulsivePower,
                            4200 - (20 * Math.Abs(loadKg - 15)) + (30 * i),
                            new Unit("W")
                        )
                    )
            );

    private static History Lifted => Loaded(Loaded(Loaded(Patient.Well.Weighing(80), 0, 0.36), 20, 0.28), 40, 0.20);

    [Fact]
    public void LoadedJumps_GiveSpeedsHeightsAndPowersOfOneDevice()
    {
        History other = Lifted with
        {
            Trials =
            [
                .. Lifted.Trials,
                Lifted.Trials[^1] with
                {
                    Device = Device.MatOrGate,
                    Labels = Lifted.Trials[^1].Labels with { ExternalLoadKg = 60 },
                },
            ],
        };
        LoadedJumps jumps = LoadedJumps.Of(other, TestedSquad.Today)!;
        Assert.Equal(9, jumps.Heights.Length);
        Assert.Equal(40, jumps.HeaviestKg);
        Assert.Equal(Device.TwoForcePlates, jumps.Device);
        Assert.Equal(Math.Sqrt(2 * 9.81 * jumps.Heights[0].Value), jumps.Speeds[0].Value, 0.001);
        (double from, double to) = jumps.Aim(0.8, 0.9);
        LoadCurve curve = jumps.SpeedCurve(from, to, null).Require();
        Assert.InRange(curve.ToKg, curve.FromKg, 44);
        Assert.True(jumps.SpeedCurve(from, to, 5).TryGet(out LoadCurve? capped, out _) is false || capped!.ToKg <= 5);
        Assert.InRange(jumps.PowerCurve(null).Require().Value("best_load_kg").Value, 0, 44);
    }

    [Fact]
    public void LoadedJumps_CountermovementJumpsWithoutABar_AreNoPointOfTheCurve() =>
        Assert.Null(LoadedJumps.Of(new Story(Patient.Well).Counter(0.4).History, TestedSquad.Today));

    [Fact]
    public void HexBarPulls_LoadAndVelocityOfOneTrialNumber_PointToAMaximum()
    {
        History history = TestedSquad.Typed(
            Patient.Well,
            [("hex-bar-load", 60), ("hex-bar-velocity", 1.0)],
            [("hex-bar-load", 100), ("hex-bar-velocity", 0.6)],
            [("hex-bar-load", 120)]
        );
        Assert.Equal(
            [(60.0, 1.0), (100.0, 0.6)],
            HexBarPulls.Of(history, TestedSquad.Today).Select(l => (l.LoadKg, l.Value))
        );
        Measure maximum = HexBarPulls.LineOf(history, TestedSquad.Today).Require().Value("estimated_maximum_kg");
        Assert.Equal(128, maximum.Value, 0.5);
        Assert.True(maximum.StandardUncertainty > 5, "two lifts leave doubt");
        Assert.False(HexBarPulls.LineOf(Patient.Well, TestedSquad.Today).TryGet(out _, out Refusal? refusal));
        Assert.Contains("hex-bar-velocity", refusal!.Sentence, StringComparison.Ordinal);
    }

    private static History WithSpeeds(History history, Side side, params double[] speeds) =>
        TestedSquad.Typed(history, side, [.. speeds.Select(v => (IEnumerable<(string, double)>)[("run-up-speed", v)])]);

    private static History Approached(History history, params double[] heights) =>
        heights.Aggregate(
            history,
            (h, height) =>
                TestedSquad.Jumped(h, JumpTask.ApproachJump, null, null, (MeasureNames.JumpHeight, height, Unit.Metre))
        );

    [Fact]
    public void ApproachJumps_RecordedAndTimed_ArePairedInOrder_AndComparedWithTheSameKindOfStandingJump()
    {
        History standing = TestedSquad.Jumped(
            Patient.Well,
            JumpTask.CountermovementJump,
            null,
            null,
            (MeasureNames.JumpHeight, 0.36, Unit.Metre)
        );
        History history = WithSpeeds(Approached(standing, 0.40, 0.44, 0.43), Side.Both, 2.5, 3.0, 3.5);
        ApproachJumps jumps = ApproachJumps.Of(history, TestedSquad.Today).Require();
        Assert.Equal([(2.5, 0.40), (3.0, 0.44), (3.5, 0.43)], jumps.Trials.Select(t => (t.SpeedMS, t.HeightM)));
        Assert.Equal(0.36, jumps.Standing.Value, 9);
        RunUp run = jumps.Curve().Require();
        Assert.Equal(0.4233 - 0.36, run.TwoFeet!.GainM, 0.001);
        Assert.Null(run.OneFoot);
        Assert.NotNull(run.NextTest);

        Assert.Contains("paired by their order", Assert.Single(jumps.Remarks), StringComparison.Ordinal);

        // A speed too few: nobody knows whose it is, so none is used.
        Assert.False(
            ApproachJumps
                .Of(WithSpeeds(Approached(standing, 0.40, 0.44, 0.43), Side.Both, 2.5, 3.0), TestedSquad.Today)
                .TryGet(out _, out Refusal? refusal)
        );
        Assert.Contains("3 jumps recorded and 2 speeds written", refusal!.Sentence, StringComparison.Ordinal);
    }

    private static History Noted(History history, params string?[] notes) =>
        history with
        {
            Screens =
            [
                .. history.Screens.Select(s =>
                    s.Test == ApproachJumps.SpeedTest ? s with { Note = notes[s.TrialNumber!.Value - 1] } : s
                ),
            ],
        };

    private static readonly History Standing = TestedSquad.Jumped(
        Patient.Well,
        JumpTask.CountermovementJump,
        null,
        null,
        (MeasureNames.JumpHeight, 0.36, Unit.Metre)
    );

    /// <summary>Where the speed names its recording, its place in the list says nothing any more.</summary>
    [Fact]
    public void ApproachJumps_WhoseSpeedsNameTheirRecordings_ArePairedByName()
    {
        History history = WithSpeeds(Approached(Standing, 0.40, 0.44, 0.43), Side.Both, 2.5, 3.0, 3.5);
        ApproachJumps jumps = ApproachJumps
            .Of(Noted(history, "003.csv, second lane", "001.csv", "the recording is 002.csv."), TestedSquad.Today)
            .Require();
        Assert.Equal([(2.5, 0.43), (3.0, 0.40), (3.5, 0.44)], jumps.Trials.Select(t => (t.SpeedMS, t.HeightM)));
        Assert.Empty(jumps.Remarks);
    }

    /// <summary>Fewer speeds than jumps are no hindrance once each says whose it is; those that do not are left out, and it is said.</summary>
    [Fact]
    public void ApproachJumps_SomeOfWhoseSpeedsNameTheirRecording_UseOnlyThose()
    {
        History history = WithSpeeds(Approached(Standing, 0.40, 0.44, 0.43), Side.Both, 2.5, 3.0);
        ApproachJumps jumps = ApproachJumps.Of(Noted(history, "003.csv", null), TestedSquad.Today).Require();
        Assert.Equal([(2.5, 0.43)], jumps.Trials.Select(t => (t.SpeedMS, t.HeightM)));
        Assert.Contains("1 of 2 speeds name", Assert.Single(jumps.Remarks), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("003.csv", "003.csv", "two speeds name 003.csv")]
    [InlineData("009.csv", "002.csv", "names 009.csv, which is none of them")]
    [InlineData("001.csv 002.csv", "003.csv", "names 2 jumps")]
    public void ApproachJumps_WhoseNotesContradict_AreRefusedWithTheSentence(string first, string second, string says)
    {
        History history = WithSpeeds(Approached(Standing, 0.40, 0.44, 0.43), Side.Both, 2.5, 3.0);
        Assert.False(
            ApproachJumps.Of(Noted(history, first, second), TestedSquad.Today).TryGet(out _, out Refusal? refusal)
        );
        Assert.Contains(says, refusal!.Sentence, StringComparison.Ordinal);
    }

    /// <summary>The recording's own note may say which trial it is.</summary>
    [Fact]
    public void ApproachJumps_WhoseRecordingsSayTheirTrial_ArePairedByIt()
    {
        History history = WithSpeeds(Approached(Standing, 0.40, 0.44), Side.Both, 2.5, 3.0);
        history = history with
        {
            Trials =
            [
                .. history.Trials.Select(t =>
                    t with
                    {
                        Labels = t.Labels with { Note = t.File == "001.csv" ? "Trial 2" : "windy, trial 1" },
                    }
                ),
            ],
        };
        ApproachJumps jumps = ApproachJumps.Of(history, TestedSquad.Today).Require();
        Assert.Equal([(2.5, 0.44), (3.0, 0.40)], jumps.Trials.Select(t => (t.SpeedMS, t.HeightM)));
        Assert.Empty(jumps.Remarks);
    }

    [Fact]
    public void ApproachJumps_ByReach_KeepTheTwoTakeOffsAndTheTwoFeetApart()
    {
        History history = TestedSquad.Typed(Patient.Well, [("standing-reach", 2.20), ("best-touch", 2.55)]);
        foreach (
            (Side side, double more, int n) in ((Side, double, int)[])
                [(Side.Both, 0.4, 4), (Side.Left, 0.45, 4), (Side.Right, 0.3, 3)]
        )
        {
            history = TestedSquad.Typed(
                history,
                side,
                [
                    .. Enumerable
                        .Range(0, n)
                        .Select(i =>
                            (IEnumerable<(string, double)>)
                                [("run-up-speed", 2.5 + (0.4 * i)), ("run-up-touch", 2.20 + more + (0.01 * i))]
                        ),
                ]
            );
        }

        ApproachJumps jumps = ApproachJumps.Of(history, TestedSquad.Today).Require();
        Assert.Equal(Side.Left, jumps.OneFoot);
        Assert.Equal(4, jumps.Trials.Count(t => t.TakeOff == TakeOffFoot.OneFoot));
        RunUp run = jumps.Curve().Require();
        Assert.True(run.ChanceOneServes > 0.5);
        Assert.Equal(0.35, jumps.Standing.Value, 9);
    }

    [Fact]
    public void SquatJumpLoads_ThreeLoadsAndATape_GiveTheProfile_AndSayWhatIsMissing()
    {
        History history = Patient.Well.Weighing(75);
        foreach ((double load, double height) in ((double, double)[])[(0, 0.36), (20, 0.28), (40, 0.215), (60, 0.165)])
        {
            history = TestedSquad.Jumped(
                history,
                JumpTask.SquatJump,
                null,
                load,
                (MeasureNames.JumpHeight, height, Unit.Metre)
            );
        }

        Assert.False(SquatJumpLoads.ProfileOf(history, TestedSquad.Today).TryGet(out _, out Refusal? refusal));
        Assert.Contains("push-off", refusal!.Sentence, StringComparison.Ordinal);
        history = TestedSquad.Typed(history, [("push-off-distance", 0.40)]);
        ForceVelocityProfile profile = SquatJumpLoads.ProfileOf(history, TestedSquad.Today).Require();
        Assert.Contains("Lindberg", profile.Basis.Dispute, StringComparison.Ordinal);

        // One that dips is no squat jump.
        History dipped = TestedSquad.Jumped(
            history,
            JumpTask.SquatJump,
            null,
            60,
            (MeasureNames.JumpHeight, 0.30, Unit.Metre),
            (MeasureNames.UnwantedDip, 25, Unit.Percent)
        );
        Assert.Equal(
            profile.Values[0].Value,
            SquatJumpLoads.ProfileOf(dipped, TestedSquad.Today).Require().Values[0].Value,
            9
        );
    }
}
