using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// The reactive strength index hangs twice on the instant of take-off: taken late, the contact is too long and the flight too short. Its doubt is
/// checked by throwing dice over three instants instead of by the formula.
/// </summary>
public class ReboundIndexTests
{
    private const double EdgeU = 0.0007;
    private const double ContactS = 0.19;
    private const double FlightS = 0.52;

    [Fact]
    public void TheDoubtByFlightTime_IsTheSpreadOfManyReadings()
    {
        var random = SeededRandom.For(20270122, 1);
        double spread = Spread(() =>
        {
            double down = EdgeU * random.Normal();
            double up = ContactS + (EdgeU * random.Normal());
            double next = ContactS + FlightS + (EdgeU * random.Normal());
            return Hops.Of(up - down, next - up).ReactiveStrengthIndex;
        });
        double u = EdgeU * Math.Sqrt(2);
        double said = ReboundIndex.UncertaintyOf(Hops.Of(ContactS, FlightS), u, u);
        Assert.Equal(1, said / spread, 0.03);
        Assert.True(Apart(2 * u / FlightS) < 0.9 * said, "the shared instant matters, or the test would tell nothing");
    }

    /// <summary>By impulse the same: in flight the velocity falls by g for every second that the take-off is taken late.</summary>
    [Fact]
    public void TheDoubtByImpulse_IsTheSpreadOfManyReadings()
    {
        const double g = Gravity.MetresPerSecondSquared;
        const double velocityMS = 2.6;
        var random = SeededRandom.For(20270122, 2);
        double spread = Spread(() =>
        {
            double down = EdgeU * random.Normal();
            double up = EdgeU * random.Normal();
            return Flight.HeightFromVelocityM(velocityMS - (g * up)) / (ContactS + up - down);
        });
        double heightM = Flight.HeightFromVelocityM(velocityMS);
        var list = new MeasureList();
        ReboundIndex.Add(
            list,
            new Measure(MeasureNames.JumpHeight, heightM, Unit.Metre, velocityMS * EdgeU, "impulse-momentum"),
            ContactS,
            EdgeU * Math.Sqrt(2),
            EdgeU
        );
        Measure index = list.Find(MeasureNames.ReactiveStrengthIndex)!;
        Assert.Equal(heightM / ContactS, index.Value, 1e-12);
        Assert.Equal("impulse-momentum", index.Method);
        Assert.Equal(1, index.StandardUncertainty / spread, 0.03);
    }

    private static double Apart(double heightPart)
    {
        double contactPart = EdgeU * Math.Sqrt(2) / ContactS;
        return Hops.Of(ContactS, FlightS).ReactiveStrengthIndex
            * Math.Sqrt((heightPart * heightPart) + (contactPart * contactPart));
    }

    private static double Spread(Func<double> reading)
    {
        double[] readings = [.. Enumerable.Range(0, 20_000).Select(_ => reading())];
        double mean = readings.Average();
        return Math.Sqrt(readings.Average(r => (r - mean) * (r - mean)));
    }
}
