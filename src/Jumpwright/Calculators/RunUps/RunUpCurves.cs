using System.Collections.Immutable;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.RunUps;

/// <summary>The athlete's own curve of height against run-up speed, off two feet and off one.</summary>
public static class RunUpCurves
{
    private const int TrialsOfATest = CurveNumbers.TrialsOfATest;

    /// <summary>An expected loss below this share is nothing to test for.</summary>
    private const double NothingToGain = 0.002;

    private const string Method = "one-peak curve, Bayesian grid";

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "run-up",
            "Run-up",
            $"Height = R exp(−k (v − p)²) over run-up speed, Bayesian, one curve for each take-off. Gain = mean height − standing height; run-up as height ½ v²/g; best range: at most 3 % expected to be lost, "
                + $"between the slowest measured and 110 % of the fastest. Which take-off: difference of the two best heights against its doubt.",
            ["approach-jump-2010", "wagner-2009", "vint-hinrichs-1996", "tai-running-jumps", "house-rule"],
            $"'Run faster, jump higher' held in one sample (r 0.71) and not in another: each athlete has a best speed. Reach holds arm and trunk and is no rise of the centre of mass. One and two feet need baselines of their own. Off one foot the landing is often on one leg: count limb contacts."
        );

    /// <summary>Gain, curve, best range, and which take-off serves better; refused below three trials of a take-off.</summary>
    public static Outcome<RunUp> Of(RunUpInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<ApproachTrial> trials = input.Trials.IsDefault ? [] : input.Trials;
        Refusal? bad = Input.First(
            Input.Outside($"The height of the standing jump", input.StandingHeightM, 0.02, 1.2, "m"),
            Input.Outside($"Its doubt", input.StandingUncertaintyM, 0, 0.3, "m"),
            input.LimitMS is { } l ? Input.Outside($"The limit", l, 0, 11, "m/s") : null
        );
        foreach (ApproachTrial trial in trials)
        {
            bad ??= Input.First(
                Input.Outside($"A run-up speed", trial.SpeedMS, 0.3, 10, "m/s"),
                Input.Outside($"A height", trial.HeightM, 0.02, 1.3, "m"),
                trial.ContactS is { } c ? Input.Outside($"A contact", c, 0.08, 1, "s") : null
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        // What was measured faster says nothing of what is allowed: no curve is read below its slowest trial.
        if (
            input.LimitMS is { } limit
            && trials.Length > 0
            && trials.Min(t => t.SpeedMS) is var slowest
            && slowest > limit + 1e-9
        )
        {
            return Refusal.Of(
                $"No run-up at or under the limit of {limit:0.0} m/s was measured: the slowest is {slowest:0.0} m/s. What a slower one gives is not known; test at the limit or under it."
            );
        }

        RunUpCurve? two = Curve(input, TakeOffFoot.TwoFeet);
        RunUpCurve? one = Curve(input, TakeOffFoot.OneFoot);
        if (two is null && one is null)
        {
            return Refusal.Of(
                $"{trials.Length} approach jumps: three off the same foot or feet are the least, at two speeds or more. Time the last metres with gates or a camera."
            );
        }

        double? chance =
            two is not null && one is not null
                ? Likelihood.Above(
                    one.BestHeightM - two.BestHeightM,
                    Math.Sqrt(
                        (one.BestHeightUncertaintyM * one.BestHeightUncertaintyM)
                            + (two.BestHeightUncertaintyM * two.BestHeightUncertaintyM)
                    ),
                    0
                )
                : null;
        ImmutableArray<Measure> values = [.. Values("two_feet", two), .. Values("one_foot", one)];
        Sentence? which = chance switch
        {
            null => null,
            >= 0.9 => Sentence.Of($"One foot serves them better ({Probability.Said(chance.Value)})."),
            <= 0.1 => Sentence.Of($"Two feet serve them better ({Probability.Said(1 - chance.Value)})."),
            _ => Sentence.Of($"Which take-off serves better isn't settled ({chance:0.00} for one foot)."),
        };
        (TakeOffFoot Foot, double SpeedMS, double Left)? next = input.SeekNext ? NextOf(input, two, one) : null;
        return new RunUp(
            Basis,
            values,
            Sentence.Join(
                " ",
                [
                    .. Say($"Off two feet", two),
                    .. Say($"Off one foot", one),
                    .. which is null ? [] : (Sentence[])[which],
                ]
            ),
            two,
            one,
            chance
        )
        {
            NextTest = Next(two, one, next),
            NextFoot = next?.Foot,
            NextSpeedMS = next?.SpeedMS,
        };
    }

    private static RunUpCurve? Curve(RunUpInput input, TakeOffFoot foot)
    {
        ApproachTrial[] trials = [.. input.Trials.Where(t => t.TakeOff == foot)];
        if (trials.Length < 3 || trials.Min(t => t.SpeedMS) > (input.LimitMS ?? double.MaxValue) + 1e-9)
        {
            return null;
        }

        PeakedCurve curve = Belief(trials);
        (double low, double high) = Range(trials, input.LimitMS);
        (double place, double placeSd) = curve.BestPlace(low, high);
        (double best, double bestSd) = curve.BestValue(low, high);
        double[] good =
        [
            .. Enumerable
                .Range(0, 41)
                .Select(i => low + ((high - low) * i / 40))
                .Where(v => curve.ExpectedLoss(v, low, high) <= CurveNumbers.Loss.Value),
        ];
        double mean = trials.Average(t => t.HeightM);
        double gain = mean - input.StandingHeightM;
        double energy = trials.Average(t => t.SpeedMS * t.SpeedMS) / (2 * Gravity.MetresPerSecondSquared);
        double doubt = Math.Sqrt(
            (curve.NoiseSd * curve.NoiseSd / trials.Length) + (input.StandingUncertaintyM * input.StandingUncertaintyM)
        );
        return new RunUpCurve(
            foot,
            mean,
            gain,
            doubt,
            100 * gain / energy,
            place,
            placeSd,
            good.Length > 0 ? good[0] : place,
            good.Length > 0 ? good[^1] : place,
            best,
            bestSd,
            Math.Max(0, best - mean),
            MeanOf([.. trials.Select(t => t.ContactS).OfType<double>()], 0.005),
            MeanOf([.. trials.Select(t => t.LastStepM).OfType<double>()], 0.03),
            MeanOf([.. trials.Select(t => t.LastStepM / t.StepBeforeM).OfType<double>()], 0.03),
            [
                .. Enumerable
                    .Range(0, 31)
                    .Select(i => low + ((high - low) * i / 30))
                    .Select(v =>
                    {
                        (double h, double sd) = curve.At(v);
                        return new CurveSample(v, h, Math.Max(0, h - (1.96 * sd)), h + (1.96 * sd));
                    }),
            ]
        );
    }

    private static IEnumerable<Measure> Values(string foot, RunUpCurve? curve)
    {
        if (curve is null)
        {
            yield break;
        }

        yield return new(foot + "_gain_m", curve.GainM, Unit.Metre, curve.GainUncertaintyM, "mean less standing");
        yield return new(
            foot + "_best_speed_m_s",
            curve.BestSpeedMS,
            Unit.MetrePerSecond,
            curve.BestSpeedUncertaintyMS,
            Method
        );
        yield return new(foot + "_best_height_m", curve.BestHeightM, Unit.Metre, curve.BestHeightUncertaintyM, Method);
        yield return new(foot + "_left_m", curve.LeftM, Unit.Metre, curve.BestHeightUncertaintyM, Method);
        yield return new(
            foot + "_converted_pct",
            curve.ConvertedPct,
            Unit.Percent,
            Math.Abs(curve.ConvertedPct * curve.GainUncertaintyM / curve.GainM) is var u && double.IsFinite(u) ? u : 0,
            "gain over ½ v²/g"
        );
        foreach (
            (string name, (double Mean, double U)? mean, Unit unit) in ((string, (double, double)?, Unit)[])
                [
                    ("_contact_s", curve.MeanContactS, Unit.Second),
                    ("_last_step_m", curve.LastStepM, Unit.Metre),
                    ("_last_step_ratio", curve.LastStepRatio, Unit.One),
                ]
        )
        {
            if (mean is { } m)
            {
                yield return new(foot + name, m.Mean, unit, m.U, "mean of the trials");
            }
        }
    }

    private static IEnumerable<Sentence> Say(Sentence foot, RunUpCurve? curve)
    {
        if (curve is null)
        {
            yield break;
        }

        yield return $"{foot} the run-up brings {new Length(curve.GainM):0.0 (cm)} ± {new Length(curve.GainUncertaintyM):0.0 cm} over the standing jump ({curve.ConvertedPct:0} % of the run-up's energy); best between {curve.GoodFromMS:0.0} and {curve.GoodToMS:0.0} m/s, where {new Length(curve.BestHeightM):0.0 (cm)} ± {new Length(curve.BestHeightUncertaintyM):0.0 cm} is to be expected: {new Length(curve.LeftM):0.0 cm} left on the table.";
        Sentence[] steps =
        [
            .. curve.MeanContactS is { } c ? [$"contact {1000 * c.Mean:0} ± {1000 * c.U:0} ms"] : (Sentence[])[],
            .. curve.LastStepM is { } s
                ? [$"last step {new Length(s.Mean):0 (cm)} ± {new Length(s.U):0 cm}"]
                : (Sentence[])[],
            .. curve.LastStepRatio is { } r ? [$"{r.Mean:0.00} ± {r.U:0.00} of the step before it"] : (Sentence[])[],
        ];
        if (steps.Length > 0)
        {
            yield return $"Its take-off: {Sentence.Join(", ", steps)}.";
        }
    }

    /// <summary>A mean and its standard uncertainty: the spread of the trials, or what one reading is worth where there is one only.</summary>
    private static (double Mean, double U)? MeanOf(double[] values, double reading) =>
        values.Length == 0
            ? null
            : (
                values.Average(),
                Math.Max(values.Length > 1 ? Spread.StandardDeviation(values) : 0, reading) / Math.Sqrt(values.Length)
            );

    private static Sentence? Next(
        RunUpCurve? two,
        RunUpCurve? one,
        (TakeOffFoot Foot, double SpeedMS, double Left)? next
    ) =>
        next is { } n
            ? Sentence.Of(
                $"Three approach jumps off {Feet(n.Foot)} at about {n.SpeedMS:0.0} m/s: it would leave {100 * n.Left:0} % of what the choice of a speed may still lose."
            )
        : two is null || one is null
            ? Sentence.Of(
                $"Three approach jumps off {Feet(two is null ? TakeOffFoot.TwoFeet : TakeOffFoot.OneFoot)}, slow, middling and brisk, as far as the ladder allows them."
            )
        : null;

    /// <summary>The feet that a jump is off.</summary>
    internal static Sentence Feet(TakeOffFoot foot) =>
        foot == TakeOffFoot.TwoFeet ? Sentence.Of($"two feet") : Sentence.Of($"one foot");

    /// <summary>
    /// The speed after whose test the choice is expected to lose least, off the feet whose choice may still lose more; null where
    /// nothing is left to gain.
    /// </summary>
    private static (TakeOffFoot Foot, double SpeedMS, double Left)? NextOf(
        RunUpInput input,
        RunUpCurve? two,
        RunUpCurve? one
    )
    {
        (TakeOffFoot Foot, double SpeedMS, double Left, double Today)? best = null;
        foreach (RunUpCurve curve in new[] { two, one }.OfType<RunUpCurve>())
        {
            ApproachTrial[] trials = [.. input.Trials.Where(t => t.TakeOff == curve.TakeOff)];
            PeakedCurve belief = Belief(trials);
            (double low, double high) = Range(trials, input.LimitMS);
            double[] places = Places(low, high);
            double today = places.Min(v => belief.ExpectedLoss(v, low, high));
            if (today < NothingToGain || today <= best?.Today)
            {
                continue;
            }

            (double speed, double left) = places
                .Select(v => (v, belief.LossAfter(v, TrialsOfATest, places, low, high)))
                .MinBy(p => p.Item2);
            best = (curve.TakeOff, speed, Math.Clamp(left / today, 0, 1), today);
        }

        return best is { } found ? (found.Foot, found.SpeedMS, found.Left) : null;
    }

    /// <summary>What is believed of that take-off after its trials.</summary>
    public static PeakedCurve Belief(IReadOnlyList<ApproachTrial> trials) =>
        PeakedCurve.Of([.. trials.Select(t => new CurvePoint(t.SpeedMS, t.HeightM))], CurveNumbers.RunUp);

    private static (double Low, double High) Range(ApproachTrial[] trials, double? limitMS)
    {
        double low = trials.Min(t => t.SpeedMS);
        double fastest = trials.Max(t => t.SpeedMS);
        return (low, Math.Max(low, Math.Min(fastest * Bounds.Share.Value / 100, limitMS ?? double.MaxValue)));
    }

    /// <summary>Speeds in tenths of a metre per second, a dozen at most, the bound among them.</summary>
    private static double[] Places(double low, double high)
    {
        int steps = Math.Clamp((int)Math.Round((high - low) / 0.2), 1, 12);
        return [.. Enumerable.Range(0, steps + 1).Select(i => low + ((high - low) * i / steps))];
    }
}
