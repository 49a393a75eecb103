using System.Collections.Immutable;
using Jumpwright.Mechanics;

namespace Jumpwright.Calculators.Landings;

/// <summary>
/// Least squares of logarithms over ω and ζ: a coarse grid, then a pattern search that halves its steps. Peaks alone hardly tell
/// spring from damper, so ζ is held loosely near 0.3 (house rule); what is predicted between the heights does not depend on it.
/// </summary>
internal static class SpringFit
{
    private const double DampingCentre = 0.3;
    private const double DampingSpread = 0.3;

    internal static SpringDamper Of(ImmutableArray<MeasuredLanding> landings, double weightN, double loadingWeight)
    {
        double Loss(double w, double z)
        {
            var model = new SpringDamper(w, z);
            double sum = Math.Pow((z - DampingCentre) / DampingSpread, 2) * 0.0025;
            foreach (MeasuredLanding landing in landings)
            {
                double speed = Flight.TouchDownSpeedMS(landing.DropM);
                sum += Math.Pow(Math.Log(landing.PeakForceN / weightN / model.PeakBw(speed)), 2);
                if (landing.LoadingRateNS is > 0)
                {
                    sum +=
                        loadingWeight
                        * Math.Pow(Math.Log(landing.LoadingRateNS.Value / weightN / model.LoadingBwS(speed)), 2);
                }
            }

            return sum;
        }

        (double W, double Z, double Loss) best = (20, 0.3, double.MaxValue);
        for (double w = 5; w <= 120; w *= 1.25)
        {
            for (double z = 0.02; z < 0.95; z += 0.1)
            {
                double loss = Loss(w, z);
                if (loss < best.Loss)
                {
                    best = (w, z, loss);
                }
            }
        }

        double ratio = 1.12;
        double step = 0.05;
        while (step > 1e-4)
        {
            (double W, double Z, double Loss) before = best;
            foreach (
                (double w, double z) in (ReadOnlySpan<(double, double)>)
                    [
                        (best.W * ratio, best.Z),
                        (best.W / ratio, best.Z),
                        (best.W, Math.Min(best.Z + step, 0.95)),
                        (best.W, Math.Max(best.Z - step, 0)),
                    ]
            )
            {
                double loss = Loss(w, z);
                if (loss < best.Loss)
                {
                    best = (w, z, loss);
                }
            }

            if (best.Loss >= before.Loss)
            {
                ratio = Math.Sqrt(ratio);
                step /= 2;
            }
        }

        return new SpringDamper(best.W, best.Z);
    }
}
