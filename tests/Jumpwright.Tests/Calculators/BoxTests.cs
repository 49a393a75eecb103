using CsCheck;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Calculators;

public class BoxTests
{
    private static readonly BoxLandingInput Jumper = new(1.80, 75, 0.40, 0.015);

    [Fact]
    public void Ceiling_LiesBelowRisePlusHalfSquat_ByClearanceAndTwoDoubts()
    {
        BoxLanding result = BoxLandings.Of(Jumper).Require();
        LegLinks links = LegLinks.Of(1.80, null, BodySegments.DempsterWinter);
        double fall = links.StandingCentreM - links.Squat(90).CentreM;
        double u = result.Value("box_ceiling_m").StandardUncertainty;
        Assert.Equal(0.40 + fall - 0.10 - (2 * u), result.CeilingM, 9);
        Assert.InRange(result.ProposedM!.Value, result.CeilingM - 0.1501, result.CeilingM - 0.0999);
    }

    /// <summary>Literature 13: raising the feet does not raise the centre of mass.</summary>
    [Fact]
    public void RealRise_WhateverTheBox_IsTheJumps() =>
        Gen.Double[0.1, 0.6]
            .Sample(box =>
                BoxLandings.Of(Jumper with { BoxHeightM = box }).Require().Value("real_rise_m").Value == 0.40
            );

    [Fact]
    public void Landing_HigherBox_BendsKneesMoreAndTakesMoreOfTheDemand() =>
        Gen.Select(Gen.Double[0.05, 0.60], Gen.Double[0.05, 0.60])
            .Sample(
                (a, b) =>
                {
                    BoxLanding low = BoxLandings.Of(Jumper with { BoxHeightM = Math.Min(a, b) }).Require();
                    BoxLanding high = BoxLandings.Of(Jumper with { BoxHeightM = Math.Max(a, b) }).Require();
                    return high.Posture!.KneeDeg >= low.Posture!.KneeDeg - 1e-6
                        && high.Value("demand_removed_pct").Value >= low.Value("demand_removed_pct").Value - 1e-6;
                }
            );

    [Fact]
    public void Landing_AtTheCeilingPlusDoubts_IsAHalfSquat()
    {
        BoxLanding free = BoxLandings.Of(Jumper).Require();
        double edge = free.CeilingM + (2 * free.Value("box_ceiling_m").StandardUncertainty);
        BoxLanding there = BoxLandings.Of(Jumper with { BoxHeightM = edge }).Require();
        Assert.Equal(90, there.Posture!.KneeDeg, 3);
    }

    [Fact]
    public void Box_AboveSixtyCentimetres_AsksForAPaddedEdge()
    {
        BoxLandingInput high = Jumper with { JumpHeightM = 0.6 };
        Assert.True(BoxLandings.Of(high with { BoxHeightM = 0.65 }).Require().PaddedEdge);
        Assert.False(BoxLandings.Of(high with { BoxHeightM = 0.60 }).Require().PaddedEdge);
    }

    [Fact]
    public void Box_OutOfReach_IsRefusedWithWhatIsPossible()
    {
        Assert.False(BoxLandings.Of(Jumper with { BoxHeightM = 1.3 }).TryGet(out _, out Refusal? refusal));
        Assert.Contains("take at most", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void SmallJump_NoBox_ProposesAMat() =>
        Assert.Null(BoxLandings.Of(Jumper with { JumpHeightM = 0.05 }).Require().ProposedM);

    [Fact]
    public void Squat_AnyDepth_IsBalancedAndFallsWithTheKnee() =>
        Gen.Double[5, 120]
            .Sample(knee =>
            {
                LegLinks links = LegLinks.Of(1.75, null, BodySegments.DempsterWinter);
                return links.Squat(knee).CentreM < links.Squat(knee - 5).CentreM
                    && Math.Abs(links.KneeDegAt(links.Squat(knee).CentreM)!.Value - knee) < 1e-6
                    && (knee > 100 || links.Squat(knee).Balanced);
            });

    [Theory]
    [InlineData(HighStart.Seat)]
    [InlineData(HighStart.FootOnBox)]
    public void HighStart_AtTheHeightForNinety_HipsAreAtNinety(HighStart start)
    {
        HighStartPosture free = HighStarts.Of(new HighStartInput(start, 1.80, 75)).Require();
        HighStartPosture there = HighStarts
            .Of(new HighStartInput(start, 1.80, 75, free.Value("start_height_for_90_m").Value))
            .Require();
        Assert.Equal(90, there.Value("start_hip_deg").Value, 6);
        Assert.True(there.HipsNear90);
    }

    /// <summary>At 90° a dip to the same hips would fall by a thigh's length, by the links of Winter 0.245 of stature.</summary>
    [Theory]
    [InlineData(HighStart.Seat, 0.0342)]
    [InlineData(HighStart.FootOnBox, 0)]
    public void HighStart_TakesAwayTheBrakingOfADipToTheSameHips(HighStart start, double shankLean)
    {
        HighStartPosture free = HighStarts.Of(new HighStartInput(start, 1.80, 75)).Require();
        HighStartPosture there = HighStarts
            .Of(new HighStartInput(start, 1.80, 75, free.Value("start_height_for_90_m").Value))
            .Require();
        double fall = (0.245 * 1.80) + (0.246 * 1.80 * shankLean);
        Assert.Equal(75 * 9.81 * fall, there.Value("dip_energy_removed_J").Value, 1.0);
        Assert.Contains("takes away all of that", there.Sentence, StringComparison.Ordinal);
        Assert.Contains("nothing of the landing", there.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Seat_TooHigh_HipsAreMoreOpen()
    {
        HighStartPosture high = HighStarts.Of(new HighStartInput(HighStart.Seat, 1.80, 75, 0.60)).Require();
        Assert.True(high.Value("start_hip_deg").Value < 80);
        Assert.False(high.HipsNear90);
    }

    [Fact]
    public void Seat_ThatDoesNotFitTheBody_IsRefused() =>
        Assert.False(HighStarts.Of(new HighStartInput(HighStart.Seat, 1.50, 50, 0.95)).TryGet(out _, out _));
}
