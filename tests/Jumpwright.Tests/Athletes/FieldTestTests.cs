using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Tests.Athletes;

public class FieldTestTests
{
    private static ScreenResult Result(string test, double value, string unit, Side side = Side.Unknown) =>
        new("a01", new LocalDate(2027, 1, 2), test, side, value, unit, 1, "coach", null);

    [Fact]
    public void EveryTest_HasBoundsADoubtAndASourceThatResolves() =>
        Assert.All(
            FieldTest.All,
            t =>
            {
                Assert.True(t.Least < t.Most, t.Id);
                Assert.True(t.StandardUncertainty > 0 || t.Id == FieldTest.FlightFrames, t.Id);
                Assert.True(Bibliography.Standard.TryFind(t.Source, out _), t.Source);
                Assert.Equal(t, FieldTest.Find(t.Id));
            }
        );

    [Fact]
    public void FlightFrames_GiveFlightTimeWithTheDoubtOfTwoRoundings_AndItsHeight()
    {
        // Contracts §1: at least 1 / (√6 · frames a second); height g t² / 8.
        Measure[] both = [.. FieldTest.MeasuresOf(Result("flight-frames", 130, "frames@240"))];
        Assert.Equal(130 / 240.0, both[0].In(Unit.Second), 12);
        Assert.Equal(1 / (Math.Sqrt(6) * 240), both[0].StandardUncertainty, 12);
        Assert.Equal(Gravity.MetresPerSecondSquared * Math.Pow(130 / 240.0, 2) / 8, both[1].In(Unit.Metre), 12);
        Assert.Equal(
            Gravity.MetresPerSecondSquared * 130 / 240.0 / 4 / (Math.Sqrt(6) * 240),
            both[1].StandardUncertainty,
            12
        );
        Assert.NotNull(FieldTest.FramesFault(130, 30));
        Assert.Empty(FieldTest.MeasuresOf(Result("flight-frames", 130, "frames@30")));
    }

    [Theory]
    [InlineData("frames@240", 240.0)]
    [InlineData("FRAMES@119.88", 119.88)]
    [InlineData("frames@", null)]
    [InlineData("frames@5", null)]
    [InlineData("frames", null)]
    [InlineData("s", null)]
    public void FramesUnit_HoldsTheCaptureRate(string unit, double? rate) =>
        Assert.Equal(rate, FieldTest.FramesPerSecond(unit));

    [Fact]
    public void OtherTests_MeasureThemselves_OnlyInTheirOwnUnit()
    {
        Measure hop = Assert.Single(FieldTest.MeasuresOf(Result("single-hop", 1.42, "m", Side.Left)));
        Assert.Equal((1.42, 0.05), (hop.In(Unit.Metre), hop.StandardUncertainty));
        Assert.Empty(FieldTest.MeasuresOf(Result("single-hop", 142, "cm", Side.Left)));
        Assert.Empty(FieldTest.MeasuresOf(Result("handstand", 3, "s")));
    }
}
