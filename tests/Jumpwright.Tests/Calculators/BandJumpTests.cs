using Jumpwright.Calculators;
using Jumpwright.Calculators.Bands;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Calculators;

public class BandJumpTests
{
    private static readonly BandSide Sound = new(
        0.9,
        [new(1.0, 18), new(1.2, 55), new(1.5, 110), new(2.0, 210)],
        null,
        AnchorKind.FlatSided,
        60,
        0.3,
        0.05,
        null,
        WearChecked: true
    );

    private static readonly BandJumpInput Jump = new(Sound, Sound, 0.95, 0.30, 0.35, 0.02, 75);

    [Fact]
    public void Bands_HeavyFlatAnchors_EveryConditionIsMet()
    {
        BandJump result = BandJumps.Of(Jump).Require();
        Assert.True(result.Holds, string.Join("\n", result.Checks.Select(c => $"{c.State} {c.Sentence}")));
        Assert.True(result.Value("band_tension_apex_N").Value > result.Value("band_tension_standing_N").Value);
        Assert.True(result.Value("band_tension_standing_N").Value > result.Value("band_tension_bottom_N").Value);
        Assert.All(result.Values, v => Assert.True(v.StandardUncertainty > 0 || v.Value == 0, v.Name));
    }

    /// <summary>The band is longest at the apex: an anchor that is heavy enough for standing is not for the apex.</summary>
    [Fact]
    public void Anchor_EnoughForStandingNotForTheApex_IsNotSafe()
    {
        BandSide light = Sound with { AnchorMassKg = 22 };
        BandJump standing = BandJumps
            .Of(Jump with { Left = light, Right = light, JumpHeightM = 0.02, JumpHeightSdM = 0 })
            .Require();
        BandJump high = BandJumps.Of(Jump with { Left = light, Right = light, JumpHeightM = 0.5 }).Require();
        Assert.Equal(CheckState.Met, standing.Checks.Single(c => c.Id == "left-anchor-lifts").State);
        Assert.Equal(CheckState.NotMet, high.Checks.Single(c => c.Id == "left-anchor-lifts").State);
        Assert.Contains("Not safe", high.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(AnchorKind.Round, CheckState.NotMet)]
    [InlineData(AnchorKind.Unknown, CheckState.NotKnown)]
    [InlineData(AnchorKind.TwoCrossed, CheckState.Met)]
    public void Anchor_Kind_RoundOrUnknownIsNotSafe(AnchorKind kind, CheckState expected)
    {
        BandJump result = BandJumps.Of(Jump with { Left = Sound with { Anchor = kind } }).Require();
        Assert.Equal(expected, result.Checks.Single(c => c.Id == "left-anchor-kind").State);
        Assert.Equal(expected == CheckState.Met, result.Holds);
    }

    [Fact]
    public void Anchor_FarToTheSide_SlidesBeforeItLifts()
    {
        BandSide aside = Sound with { AnchorDistanceM = 1.1, AnchorMassKg = 60 };
        BandJump result = BandJumps.Of(Jump with { Left = aside, Right = aside }).Require();
        Assert.Equal(CheckState.Met, result.Checks.Single(c => c.Id == "left-anchor-lifts").State);
        Assert.Equal(CheckState.NotMet, result.Checks.Single(c => c.Id == "left-anchor-slides").State);
    }

    [Fact]
    public void Stretch_PastTheGreatestMeasured_IsNotSafe()
    {
        BandSide little = Sound with { Readings = [new(1.0, 18), new(1.1, 37), new(1.2, 55)] };
        BandJump result = BandJumps.Of(Jump with { Left = little, Right = little }).Require();
        Assert.Equal(CheckState.NotMet, result.Checks.Single(c => c.Id == "right-stretch").State);
    }

    [Fact]
    public void Band_NominalOnly_IsMarkedWiderAndItsStretchUnknown()
    {
        BandSide nominal = Sound with { Readings = [], NominalStiffnessNM = 185 };
        BandJump result = BandJumps.Of(Jump with { Left = nominal, Right = nominal }).Require();
        BandJump measured = BandJumps.Of(Jump).Require();
        Assert.Equal("nominal", result.Value("band_tension_apex_N").Method);
        Assert.True(
            result.Value("band_tension_apex_N").StandardUncertainty
                > 3 * measured.Value("band_tension_apex_N").StandardUncertainty
        );
        Assert.False(result.Holds);
        Assert.NotNull(result.NextTest);
        Assert.True(
            BandJumps
                .Of(
                    Jump with
                    {
                        Left = nominal with { GreatestStretchStatedM = 1.5 },
                        Right = nominal with { GreatestStretchStatedM = 1.5, AnchorMassKg = 60 },
                    }
                )
                .Require()
                .Checks.Where(c => c.Id.EndsWith("stretch", StringComparison.Ordinal))
                .All(c => c.State == CheckState.Met)
        );
    }

    [Fact]
    public void LeftAndRight_MoreThanTenPercentApart_IsNotSafe()
    {
        BandSide stronger = Sound with
        {
            Readings = [.. Sound.Readings.Select(r => r with { ForceN = 1.15 * r.ForceN })],
        };
        Assert.Equal(
            CheckState.NotMet,
            BandJumps.Of(Jump with { Right = stronger }).Require().Checks.Single(c => c.Id == "left-right").State
        );
    }

    /// <summary>Whoever said "no" is told "not met", and is not taken for somebody who said nothing.</summary>
    [Theory]
    [InlineData(false, CheckState.NotMet, "the left band was not looked over")]
    [InlineData(null, CheckState.NotKnown, "nobody said whether the left band was looked over")]
    public void Wear_NotLookedOver_IsNotSafe(bool? looked, CheckState state, string says)
    {
        BandJump jump = BandJumps.Of(Jump with { Left = Sound with { WearChecked = looked } }).Require();
        Assert.False(jump.Holds);
        Check wear = jump.Checks.Single(c => c.Id == "left-wear");
        Assert.Equal(state, wear.State);
        Assert.StartsWith(says, wear.Sentence.ToString(), StringComparison.Ordinal);
    }

    /// <summary>"Met" stands before a sentence of an anchor that stays, never before one of an anchor that lifts or slides.</summary>
    [Theory]
    [InlineData(50, "stays", "lift")]
    [InlineData(5, "may", "stays")]
    public void Anchor_IsSaidToStayOrNotTo(double massKg, string says, string never)
    {
        BandJump jump = BandJumps.Of(Jump with { Left = Sound with { AnchorMassKg = massKg } }).Require();
        Check[] checks = [.. jump.Checks.Where(c => c.Id is "left-anchor-lifts" or "left-anchor-slides")];
        Assert.Equal(2, checks.Length);
        Assert.All(checks, c => Assert.Equal(says == "stays" ? CheckState.Met : CheckState.NotMet, c.State));
        Assert.All(checks, c => Assert.Contains(says, c.Sentence.ToString(), StringComparison.Ordinal));
        Assert.All(checks, c => Assert.DoesNotContain(never, c.Sentence.ToString(), StringComparison.Ordinal));
    }

    /// <summary>The extra work is the elastic energy: the same as force over path, step by step.</summary>
    [Fact]
    public void Work_IsVerticalPullOverThePath()
    {
        BandJump result = BandJumps.Of(Jump).Require();
        double sum = 0;
        const int n = 20000;
        double from = 0.95 - 0.30;
        double to = 0.95 + 0.15;
        for (int i = 0; i < n; i++)
        {
            double z = from + ((to - from) * (i + 0.5) / n) - 0.05;
            double length = Math.Sqrt((z * z) + 0.09);
            sum += 2 * result.LeftCurve.TensionN(length) * z / length * (to - from) / n;
        }

        Assert.Equal(sum, result.Value("band_work_push_J").Value, 2);
    }

    [Theory]
    [InlineData(3.5, 75, "Jump height")]
    [InlineData(0.35, 5000, "Body mass")]
    [InlineData(double.NaN, 75, "Jump height")]
    public void Input_OutOfRange_RefusesWithASentence(double heightM, double massKg, string says)
    {
        Outcome<BandJump> outcome = BandJumps.Of(Jump with { JumpHeightM = heightM, BodyMassKg = massKg });
        Assert.False(outcome.TryGet(out _, out Refusal? refusal));
        Assert.Contains(says, refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Band_NeitherReadNorStated_Refuses()
    {
        Assert.False(
            BandJumps.Of(Jump with { Left = Sound with { Readings = [] } }).TryGet(out _, out Refusal? refusal)
        );
        Assert.Contains("colour is no force", refusal.Sentence, StringComparison.Ordinal);
    }
}
