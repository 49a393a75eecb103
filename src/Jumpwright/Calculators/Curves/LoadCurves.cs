using System.Collections.Immutable;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Load against jump height, velocity and power: a range of loads, never one load for all.</summary>
public static class LoadCurves
{
    /// <summary>Ends of a range of loads known better than this are settled, kg.</summary>
    public static Coefficient Settled { get; } =
        new("load-range-settled", 5, Unit.Kilogram, null, Bibliography.Get("house-rule"));

    /// <summary>A best load known better than this share of body mass is settled.</summary>
    public static Coefficient SettledPower { get; } =
        new("load-power-settled", 0.1, Unit.One, null, Bibliography.Get("house-rule"));

    private const double PlatesKg = 2.5;
    private const double NearlyAsGood = 1.02;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "load-curve",
            "Load for a jump",
            $"Height or velocity over load: least-squares line; the range of loads is where the line crosses the wished values. Power over load per body mass: R exp(−k (L − p)²), Bayesian; "
                + $"the range is where at most 3 % of the best is expected to be lost. Never above 110 % of the heaviest load measured, nor above the limit in force.",
            ["swinton-2012", "suchomel-2019", "turner-2015", "house-rule"],
            $"One best load for all is disputed: best power was unloaded with a straight bar and at 20 % of squat maximum with a hex bar in one sample, at 40 % of body mass in another (another base), a range in a third. Metres per second, not named bands: those belong to slow lifts."
        );

    /// <summary>The range; refused below two loads, for a curve that does not fall, and for a range outside the bound.</summary>
    public static Outcome<LoadCurve> Of(LoadCurveInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<LoadedJump> jumps = input.Jumps.IsDefault ? [] : input.Jumps;
        (Sentence what, Sentence wished, double most, string unit) = input.Measure switch
        {
            LoadMeasure.Height => (Sentence.Of($"A height"), Sentence.Of($"A height that is wished"), 1.0, "m"),
            LoadMeasure.Velocity => (Sentence.Of($"A velocity"), Sentence.Of($"A velocity that is wished"), 5.0, "m/s"),
            _ => (Sentence.Of($"A power"), Sentence.Of($"A power that is wished"), 12000.0, "W"),
        };
        Refusal? bad = Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg");
        foreach (LoadedJump jump in jumps)
        {
            bad ??= Input.First(
                Input.Outside($"A load", jump.LoadKg, 0, 300, "kg"),
                Input.Outside(what, jump.Value, 0.02, most, unit)
            );
        }

        foreach (double end in new[] { input.FromValue, input.ToValue }.OfType<double>())
        {
            bad ??= Input.Outside(wished, end, 0.02, most, unit);
        }

        if (input.LimitKg is { } limit)
        {
            bad ??= Input.Outside($"The heaviest load allowed", limit, 0, 300, "kg");
        }

        if (bad is not null)
        {
            return bad;
        }

        double[] loads = [.. jumps.Select(j => j.LoadKg).Distinct().Order()];
        if (loads.Length < 2)
        {
            return loads.Length == 1
                ? Refusal.Of($"1 different load: a curve needs two at least, better four, from the lightest up.")
                : Refusal.Of(
                    $"{loads.Length} different loads: a curve needs two at least, better four, from the lightest up."
                );
        }

        double bound = loads[^1] * Bounds.Share.Value / 100;
        double roof = Math.Min(bound, input.LimitKg ?? bound);
        return input.Measure == LoadMeasure.Power ? OfPower(input, loads, roof) : OfLine(input, loads, roof, unit);
    }

    private static Outcome<LoadCurve> OfLine(LoadCurveInput input, double[] loads, double roof, string unit)
    {
        if (input.FromValue is not { } low || input.ToValue is not { } high || !(low > 0) || !(high >= low))
        {
            return new Refusal(
                $"Say the range that is wished, from and to, in {unit}: for example what the session is to train."
            );
        }

        double mean = input.Jumps.Average(j => j.Value);
        StraightLine line = StraightLine
            .Fit([.. input.Jumps.Select(j => j.LoadKg)], [.. input.Jumps.Select(j => j.Value)], 0.05 * mean, 2)
            .Require();
        if (line.Slope >= 0)
        {
            return Refusal.Of(
                $"It does not fall with load in these jumps: a value is wrong or the loads are too close. Measure again with loads farther apart."
            );
        }

        double from = Math.Max(0, line.Solve(high));
        double to = Math.Min(roof, line.Solve(low));
        if (to < from)
        {
            return Refusal.Of(
                $"Between {Alone(low, unit)} and {Value(high, unit)} would need {new Mass(Math.Max(0, line.Solve(high))):0 (kg)} to {new Mass(line.Solve(low)):0 kg}, outside of what was measured and allowed (0 to {new Mass(roof):0.# kg})."
            );
        }

        const string method = "line through the trials";
        double fromDoubt = line.SolveUncertainty(high, 0);
        double toDoubt = line.SolveUncertainty(low, 0);
        (double LoadKg, double Left)? next =
            Math.Max(fromDoubt, toDoubt) > Settled.Value
                ? Lightest(
                    Candidates(loads, input.LeastTestKg ?? 0, Math.Min(roof, input.MostTestKg ?? roof)),
                    x =>
                        Math.Max(
                            fromDoubt * line.DoubtLeftAt(line.Solve(high), x, CurveNumbers.TrialsOfATest),
                            toDoubt * line.DoubtLeftAt(line.Solve(low), x, CurveNumbers.TrialsOfATest)
                        ) / Math.Max(fromDoubt, toDoubt)
                )
                : null;
        return new LoadCurve(
            Basis,
            [
                new("load_from_kg", from, Unit.Kilogram, fromDoubt, method),
                new("load_to_kg", to, Unit.Kilogram, toDoubt, method),
            ],
            $"{Lighter()}; {Heavier()} (heaviest measured {new Mass(loads[^1]):0.# kg}).",
            from,
            to,
            Samples(0, roof, x => (line.At(x), line.UncertaintyAt(x)))
        )
        {
            NextTest = Words(next?.LoadKg, loads[^1]),
            NextLoadKg = next?.LoadKg,
            DoubtLeft = next?.Left,
            IsSettled = Math.Max(fromDoubt, toDoubt) <= Settled.Value,
        };

        // The greater value comes with the lighter load; an end that no load reaches is not paired with the bound it is cut to.
        Sentence Lighter() =>
            line.Solve(high) >= 0
                ? Sentence.Of(
                    $"{Value(high, unit)} comes with {new Mass(from):0.# (kg)} ± {new Mass(fromDoubt):0.# kg}"
                )
                : Sentence.Of($"{Value(high, unit)} is more than the line gives without any load");

        Sentence Heavier() =>
            line.Solve(low) <= roof
                ? Sentence.Of($"{Value(low, unit)} with {new Mass(to):0.# (kg)} ± {new Mass(toDoubt):0.# kg}")
                : Sentence.Of(
                    $"{Value(low, unit)} would take more than {new Mass(roof):0.# kg}, the most that was measured and allowed"
                );
    }

    private static Outcome<LoadCurve> OfPower(LoadCurveInput input, double[] loads, double roof)
    {
        double mass = input.BodyMassKg;
        PeakedCurve curve = PeakedCurve.Of(
            [.. input.Jumps.Select(j => new CurvePoint(j.LoadKg / mass, j.Value))],
            CurveNumbers.Power
        );
        double low = loads[0] / mass;
        double high = roof / mass;
        if (high < low)
        {
            return Refusal.Of(
                $"The limit of {new Mass(roof):0.# kg} is below the lightest load measured ({new Mass(loads[0]):0.# kg}): measure inside the limit first."
            );
        }

        double[] good =
        [
            .. Enumerable
                .Range(0, 41)
                .Select(i => low + ((high - low) * i / 40))
                .Where(x => curve.ExpectedLoss(x, low, high) <= CurveNumbers.Loss.Value),
        ];
        (double best, double bestSd) = curve.BestPlace(low, high);
        double from = (good.Length > 0 ? good[0] : best) * mass;
        double to = (good.Length > 0 ? good[^1] : best) * mass;
        const string method = "one-peak curve, Bayesian grid";
        (double LoadKg, double Left)? next =
            bestSd > SettledPower.Value
                ? Lightest(
                    Candidates(loads, input.LeastTestKg ?? 0, Math.Min(roof, input.MostTestKg ?? roof)),
                    x => curve.DoubtAfter(x / mass, CurveNumbers.TrialsOfATest, low, high) / bestSd
                )
                : null;
        return new LoadCurve(
            Basis,
            [
                new("load_from_kg", from, Unit.Kilogram, 0, method),
                new("load_to_kg", to, Unit.Kilogram, 0, method),
                new("best_load_kg", best * mass, Unit.Kilogram, bestSd * mass, method),
            ],
            $"Power is within 3 % of its best, as far as can be told, from {new Mass(from):0.# (kg)} to {new Mass(to):0.# kg}; the best is likely {new Mass(best * mass):0 (kg)} ± {new Mass(bestSd * mass):0 kg}, {100 * best:0} % of body mass (heaviest measured {new Mass(loads[^1]):0.# kg}).",
            from,
            to,
            Samples(loads[0], roof, x => curve.At(x / mass))
        )
        {
            NextTest = Words(next?.LoadKg, loads[^1]),
            NextLoadKg = next?.LoadKg,
            DoubtLeft = next?.Left,
            IsSettled = bestSd <= SettledPower.Value,
        };
    }

    private static Sentence? Words(double? next, double heaviest) =>
        next is not { } load ? null
        : load > heaviest + 0.01
            ? Sentence.Of(
                $"Three jumps with {new Mass(load):0.# kg}, above the heaviest so far but within bound and plates, would sharpen it most."
            )
        : Sentence.Of($"Three more jumps with {new Mass(load):0.# kg} would sharpen it most.");

    /// <summary>A height or a velocity with its unit.</summary>
    private static Sentence Value(double value, string unit) =>
        unit == "m" ? Sentence.Of($"{new Length(value):0.## m}") : Sentence.Of($"{value:0.##} {unit}");

    /// <summary>The same without its unit.</summary>
    private static Sentence Alone(double value, string unit) =>
        unit == "m" ? Sentence.Of($"{new Length(value):0.## (m)}") : Sentence.Of($"{value:0.##}");

    /// <summary>Loads that were jumped with, and what plates of 1.25 kg make between the lightest bar (as said, or used) and the most allowed.</summary>
    private static double[] Candidates(double[] loads, double least, double most)
    {
        double bar = least > 0 ? least : loads.FirstOrDefault(l => l > 0, double.MaxValue);
        return
        [
            .. Enumerable
                .Range(0, (int)Math.Floor((most + 1e-9) / PlatesKg) + 1)
                .Select(i => i * PlatesKg)
                .Where(l => l >= bar)
                .Concat(loads)
                .Where(l => l >= least - 1e-9 && l <= most + 1e-9)
                .Distinct()
                .Order(),
        ];
    }

    /// <summary>The lightest load whose test leaves nearly as little doubt as the best one; null where none is allowed.</summary>
    private static (double LoadKg, double Left)? Lightest(double[] candidates, Func<double, double> left)
    {
        if (candidates.Length == 0)
        {
            return null;
        }

        (double Load, double Left)[] all = [.. candidates.Select(x => (x, left(x)))];
        double least = all.Min(c => c.Left);
        return all.First(c => c.Left <= least * NearlyAsGood);
    }

    private static ImmutableArray<CurveSample> Samples(
        double from,
        double to,
        Func<double, (double Mean, double Sd)> at
    ) =>
        [
            .. Enumerable
                .Range(0, 31)
                .Select(i => from + ((to - from) * i / 30))
                .Select(x =>
                {
                    (double mean, double sd) = at(x);
                    return new CurveSample(x, mean, mean - (1.96 * sd), mean + (1.96 * sd));
                }),
        ];
}
