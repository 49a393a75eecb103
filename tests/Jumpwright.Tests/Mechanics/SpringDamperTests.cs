using CsCheck;
using Jumpwright.Mechanics;

namespace Jumpwright.Tests.Mechanics;

public class SpringDamperTests
{
    /// <summary>No damper: m v²/2 + m g z = k z²/2 at the lowest point, so the peak is 1 + √(1 + (v ω / g)²) body weights.</summary>
    [Fact]
    public void Peak_WithoutDamper_ComesFromEnergyAlone() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.5, 4])
            .Sample(
                (w, v) =>
                {
                    double expected = 1 + Math.Sqrt(1 + Math.Pow(v * w / 9.81, 2));
                    return Math.Abs(new SpringDamper(w, 0).PeakBw(v) - expected) < 1e-3 * expected;
                }
            );

    [Fact]
    public void Force_ClosedForm_AgreesWithStepByStepIntegration()
    {
        var model = new SpringDamper(22, 0.35);
        double z = 0;
        double v = 2.4;
        const double dt = 1e-6;
        for (int i = 0; i < 60_000; i++)
        {
            double a = 9.81 - (22.0 * 22 * z) - (2 * 0.35 * 22 * v);
            v += a * dt;
            z += v * dt;
        }

        Assert.Equal(((22.0 * 22 * z) + (2 * 0.35 * 22 * v)) / 9.81, model.ForceBw(2.4, 0.06), 3);
    }

    [Fact]
    public void Loading_StifferSpring_RisesSteeper() =>
        Assert.True(new SpringDamper(40, 0.1).LoadingBwS(2) > new SpringDamper(20, 0.1).LoadingBwS(2));
}
