using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Dosing;

/// <summary>What a contact asks of one leg: published where it was measured, scaled with mass and drop, bounds of the tier elsewhere.</summary>
public class GroundForceTests
{
    [Fact]
    public void CountermovementJump_LandsAsWallaceMeasured_OnOneLegOfSomebodyOf70Kg()
    {
        // Wallace et al. 2010: 3.34 body weights on both feet; half of it is 1.67 · 70 kg · 9.81 m/s² = 1147 N.
        GroundForce force = GroundForce.Of(Exercise("countermovement-jump"), 70);
        Assert.True(force.Measured);
        Assert.Equal("wallace-2010", force.SourceId);
        Assert.Equal(1147, (force.LeastN + force.MostN!.Value) / 2, 0.5);
        // Technique moves a load by a quarter either way.
        Assert.Equal(0.5, (force.MostN.Value - force.LeastN) / (force.MostN.Value + force.LeastN) * 2, 9);
    }

    [Fact]
    public void TwiceTheMass_IsTwiceTheForce() =>
        Assert.All(
            Catalogue.Standard.Exercises,
            e =>
            {
                GroundForce one = GroundForce.Of(e, 60);
                GroundForce two = GroundForce.Of(e, 120);
                Assert.Equal(2 * one.LeastN, two.LeastN, 6);
                Assert.Equal(2 * one.MostN, two.MostN);
                Assert.Equal(one.BodyWeights, two.BodyWeights);
            }
        );

    [Fact]
    public void DropLanding_FromAnotherHeight_GrowsWithTheSpeedAtContact_AndIsNoLongerMeasured()
    {
        Exercise drop = Exercise("drop-landing");
        Assert.True(GroundForce.Of(drop, 70, 0.60).Measured);
        GroundForce lower = GroundForce.Of(drop, 70, 0.30);
        Assert.False(lower.Measured);
        // v = √(2gh): half the drop is 0.707 of the speed, and of what exceeds half a body weight standing on each leg.
        Assert.Equal(0.5 + ((2.15 - 0.5) * Math.Sqrt(0.5)), lower.BodyWeights!.Value, 9);
        // An independent row: Wallace's 0.30 m gave 2.78 body weights on both feet in the depth jump's impact, 1.39 a leg; the law is
        // of the right size, not exact.
        Assert.InRange(lower.BodyWeights.Value, 1.39, 2.15);
    }

    [Fact]
    public void NoNumber_TheBoundsOfTheTierStand()
    {
        Exercise bounding = Exercise("bounding");
        Assert.DoesNotContain(bounding.DemandValues, v => v.Tissue == Tissue.Bone);
        GroundForce force = GroundForce.Of(bounding, 70);
        Assert.Equal(2.75 * 70 * 9.81, force.LeastN, 6);
        Assert.Null(force.MostN);
        Assert.False(force.Measured);
    }

    [Fact]
    public void DropImpact_AtTheKnownDrop_IsTheKnownForce_AndNeverFallsWithHeight()
    {
        Assert.Equal(2.15, DropImpact.AtDropBodyWeights(2.15, 0.6, 0.6), 12);
        double before = 0;
        for (double h = 0.05; h < 1.2; h += 0.05)
        {
            double now = DropImpact.AtDropBodyWeights(2.15, 0.6, h);
            Assert.True(now > before);
            before = now;
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => DropImpact.AtDropBodyWeights(2, 0.6, 0));
    }

    private static Exercise Exercise(string id) => Catalogue.Standard.Find(id)!;
}
