using CsCheck;
using Jumpwright.Mechanics;
using Jumpwright.Statistics;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Mechanics;

/// <summary>The rows of the reference table on force–velocity, load–velocity and body segments; each names its source.</summary>
public class ProfileCheckValueTests
{
    [Theory]
    [InlineData("T27a")]
    [InlineData("T27b")]
    [InlineData("N8a")]
    public void OptimalSlope_ClosedFormAndSearch(string id)
    {
        CheckValueTable.Assert(
            id,
            r => ForceVelocityLine.OptimalSlope(r.Number("max_power_W_kg"), r.Number("push_off_m"))
        );
        CheckValueTable.Assert(
            id,
            r => ForceVelocityLine.OptimalSlopeBySearch(r.Number("max_power_W_kg"), r.Number("push_off_m"))
        );
    }

    [Fact]
    public void OptimalSlope_HeightThere() =>
        CheckValueTable.Assert(
            "N8b",
            r =>
            {
                double p = r.Number("max_power_W_kg");
                double h = r.Number("push_off_m");
                return Flight.HeightFromVelocityM(
                    ForceVelocityLine.TakeOffMS(p, ForceVelocityLine.OptimalSlope(p, h), h)
                );
            }
        );

    [Fact]
    public void Line_HeightNowAndAtTheOptimum()
    {
        static ForceVelocityLine Line(CheckValue r) => new(r.Number("F0_N_kg"), r.Number("v0_m_s"));
        CheckValueTable.Assert("N9a", r => Flight.HeightFromVelocityM(Line(r).TakeOffMS(r.Number("push_off_m"))));
        CheckValueTable.Assert(
            "N9b",
            r =>
            {
                double optimal = ForceVelocityLine.OptimalSlope(Line(r).PowerWKg, r.Number("push_off_m"));
                return Flight.HeightFromVelocityM(
                    ForceVelocityLine.TakeOffMS(Line(r).PowerWKg, optimal, r.Number("push_off_m"))
                );
            }
        );
        CheckValueTable.Assert(
            "N9c",
            r => 100 * Line(r).Slope / ForceVelocityLine.OptimalSlope(Line(r).PowerWKg, r.Number("push_off_m"))
        );
    }

    /// <summary>Literature 5.4, energy self-test: (F0 (1 − v̄/v0) − g) h = ½ v², both sides 3.48943.</summary>
    [Fact]
    public void Line_EnergyOfThePush_BothSidesAgree()
    {
        var line = new ForceVelocityLine(30, 3.6);
        double v = line.TakeOffMS(0.38);
        double left = ((line.ForceNKg * (1 - (v / 2 / line.VelocityMS))) - 9.81) * 0.38;
        Assert.Equal(3.48943, left, 5);
        Assert.Equal(left, v * v / 2, 9);
    }

    [Fact]
    public void Line_TooWeakToLiftTheBody_DoesNotLeaveTheGround() =>
        Assert.Equal(0, new ForceVelocityLine(9, 2).TakeOffMS(0.4));

    [Fact]
    public void OptimalSlope_AnyPowerAndDistance_NoOtherSlopeJumpsHigher() =>
        Gen.Select(Gen.Double[12, 45], Gen.Double[0.2, 0.6], Gen.Double[-60, -2])
            .Sample(
                (p, h, other) =>
                {
                    double best = ForceVelocityLine.TakeOffMS(p, ForceVelocityLine.OptimalSlope(p, h), h);
                    return best >= ForceVelocityLine.TakeOffMS(p, other, h) - 1e-9;
                }
            );

    [Theory]
    [InlineData("T30a")]
    [InlineData("T30b")]
    [InlineData("N10")]
    public void LoadVelocityLine_AtTheVelocityOfTheMaximum(string id) =>
        CheckValueTable.Assert(
            id,
            r =>
                StraightLine
                    .Fit(r.Numbers("loads_kg"), r.Numbers("velocities_m_s"))
                    .Require()
                    .Solve(r.Number("v_min_m_s"))
        );

    [Fact]
    public void SegmentMasses_SumToTheBody()
    {
        CheckValueTable.Assert("T40c", _ => BodySegments.MassSum(BodySegments.DeLevaWomen));
        CheckValueTable.Assert("T40d", _ => BodySegments.MassSum(BodySegments.DeLevaMen));
        Assert.Equal(1, BodySegments.MassSum(BodySegments.DempsterWinter), 9);
    }

    [Fact]
    public void SegmentLengths_FromStature()
    {
        static LegLinks Links(CheckValue r) => LegLinks.Of(r.Number("stature_m"), null, BodySegments.DempsterWinter);
        CheckValueTable.Assert("N19a", r => Links(r).ThighM);
        CheckValueTable.Assert("N19b", r => Links(r).ShankM);
        CheckValueTable.Assert("N19c", r => Links(r).FootM);
        CheckValueTable.Assert("N19d", r => Links(r).HipM);
    }
}
