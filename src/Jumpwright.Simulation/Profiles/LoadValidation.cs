using System.Collections.Immutable;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Profiles;

/// <summary>
/// Whether the load asked for next tells more than one drawn at random from all that would be allowed: for light jumps with a bar and
/// for heavy pulls, on athletes whose lines of velocity over load are known and bent a little, which the program's are not.
/// </summary>
public static class LoadValidation
{
    private const double BarKg = 15;
    private const double PlatesKg = 2.5;
    private const int PullsOfATest = 2;

    /// <summary>All athletes, judged.</summary>
    /// <param name="athletes">How many.</param>
    /// <param name="seed">Of the chance.</param>
    public static LoadReport Run(int athletes, ulong seed = 20270104)
    {
        var jumps = new One[athletes];
        var pulls = new One[athletes];
        Parallel.For(
            0,
            athletes,
            i =>
            {
                jumps[i] = Jumped(SeededRandom.For(seed ^ 0xB1, (ulong)i + 1));
                pulls[i] = Pulled(SeededRandom.For(seed ^ 0xB2, (ulong)i + 1));
            }
        );
        One[] loaded = [.. jumps.Where(j => j.Asked)];
        One[] heavy = [.. pulls.Where(p => p.Asked)];
        return new LoadReport(
            athletes,
            jumps.Concat(pulls).Count(o => o.Above),
            loaded.Length / (double)athletes,
            loaded.Average(o => o.DoubtSuggested) / loaded.Average(o => o.DoubtRandom),
            RootMeanSquare(loaded.Select(o => o.MissSuggested)) / RootMeanSquare(loaded.Select(o => o.MissRandom)),
            heavy.Length / (double)athletes,
            heavy.Average(o => o.DoubtSuggested) / heavy.Average(o => o.DoubtRandom),
            RootMeanSquare(heavy.Select(o => o.MissSuggested)) / RootMeanSquare(heavy.Select(o => o.MissRandom)),
            heavy.Count(o => Math.Abs(o.MissSuggested) <= 2 * o.DoubtSuggested) / (double)heavy.Length
        );
    }

    /// <summary>Two jumps without a bar, two with one of 15 to 40 kg; then three more with the load asked for, or with a random one.</summary>
    private static One Jumped(SeededRandom random)
    {
        double mass = random.Uniform(60, 110);
        double fastest = random.Uniform(2.1, 2.9);
        double slope = random.Uniform(0.010, 0.020);
        double bend = random.Uniform(-0.00008, 0.00008);
        double noise = random.Uniform(0.02, 0.05);
        double VelocityAt(double kg) => fastest - (slope * kg) + (bend * kg * kg);
        double heaviest = BarKg + (PlatesKg * random.Below(11));
        List<LoadedJump> done = [];
        Add(done, 0, 2);
        Add(done, heaviest, 2);
        double most = Math.Min(heaviest * Bounds.Share.Value / 100, random.Uniform(0.2, 0.4) * mass);
        double aim = done.Where(j => j.LoadKg <= 0).Average(j => j.Value);
        if (Curve(done) is not { NextLoadKg: { } asked } || most < BarKg)
        {
            return default;
        }

        double drawn = BarKg + (PlatesKg * random.Below((int)Math.Floor((most - BarKg + 1e-9) / PlatesKg) + 1));
        (double doubtA, double missA)? suggested = After(asked);
        (double doubtB, double missB)? other = After(drawn);
        return suggested is { } a && other is { } b
            ? new One(true, asked > most + 1e-9, a.doubtA, b.doubtB, a.missA, b.missB)
            : default;

        void Add(List<LoadedJump> to, double kg, int trials)
        {
            for (int t = 0; t < trials; t++)
            {
                to.Add(new LoadedJump(kg, Math.Max(0.5, VelocityAt(kg) * (1 + (noise * random.Normal())))));
            }
        }

        LoadCurve? Curve(List<LoadedJump> jumps) =>
            LoadCurves
                .Of(
                    new LoadCurveInput(LoadMeasure.Velocity, mass, [.. jumps], 0.8 * aim, 0.9 * aim)
                    {
                        LeastTestKg = BarKg,
                        MostTestKg = most,
                    }
                )
                .TryGet(out LoadCurve? curve, out _)
                ? curve
                : null;

        // The miss is that of the lighter end of the range, which is what is trained with.
        (double, double)? After(double kg)
        {
            List<LoadedJump> more = [.. done];
            Add(more, kg, CurveNumbers.TrialsOfATest);
            return Curve(more) is { } curve
                ? (curve.Values.Max(v => v.StandardUncertainty), curve.FromKg - LoadAt(0.9 * aim))
                : null;
        }

        double LoadAt(double velocity)
        {
            double low = 0;
            double high = 120;
            for (int i = 0; i < 50; i++)
            {
                double middle = (low + high) / 2;
                (low, high) = VelocityAt(middle) > velocity ? (middle, high) : (low, middle);
            }

            return low;
        }
    }

    /// <summary>Two pulls each at about 40 and 60 % of the true maximum; then two more with the load asked for, or with a random one.</summary>
    private static One Pulled(SeededRandom random)
    {
        double maximum = random.Uniform(100, 220);
        double atMaximum = Math.Clamp(0.32 + (0.06 * random.Normal()), 0.18, 0.46);
        double unloaded = random.Uniform(1.2, 1.6);
        double bend = random.Uniform(-0.08, 0.08);
        double noise = random.Uniform(0.02, 0.06);
        double VelocityAt(double kg)
        {
            double x = kg / maximum;
            return unloaded + ((atMaximum - unloaded) * x) + (bend * x * (1 - x));
        }

        List<LoadedJump> done = [];
        double light = Down(0.40 * maximum);
        double heaviest = Down(0.60 * maximum);
        Add(done, light);
        Add(done, heaviest);
        double most = heaviest * Bounds.Share.Value / 100;
        if (Line(done) is not { NextLoadKg: { } asked })
        {
            return default;
        }

        double drawn = light + (PlatesKg * random.Below((int)Math.Floor((most - light + 1e-9) / PlatesKg) + 1));
        (double doubtA, double missA)? suggested = After(asked);
        (double doubtB, double missB)? other = After(drawn);
        return suggested is { } a && other is { } b
            ? new One(true, asked > most + 1e-9, a.doubtA, b.doubtB, a.missA, b.missB)
            : default;

        void Add(List<LoadedJump> to, double kg)
        {
            for (int t = 0; t < PullsOfATest; t++)
            {
                to.Add(new LoadedJump(kg, Math.Max(0.12, VelocityAt(kg) + (noise * random.Normal()))));
            }
        }

        (double, double)? After(double kg)
        {
            List<LoadedJump> more = [.. done];
            Add(more, kg);
            return Line(more)?.Value("estimated_maximum_kg") is { } estimate
                ? (estimate.StandardUncertainty, estimate.Value - maximum)
                : null;
        }

        static LoadVelocity? Line(List<LoadedJump> lifts) =>
            LoadVelocities
                .Of(
                    new LoadVelocityInput(
                        [.. lifts],
                        HexBarPulls.VelocityAtMaximum.Value,
                        HexBarPulls.VelocityAtMaximum.StandardUncertainty ?? 0.06,
                        LiftIsSquat: false
                    )
                )
                .TryGet(out LoadVelocity? line, out _)
                ? line
                : null;
    }

    private static double Down(double kg) => Math.Floor(kg / PlatesKg) * PlatesKg;

    private static double RootMeanSquare(IEnumerable<double> values) => Math.Sqrt(values.Average(v => v * v));

    private readonly record struct One(
        bool Asked,
        bool Above,
        double DoubtSuggested,
        double DoubtRandom,
        double MissSuggested,
        double MissRandom
    );
}
