using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using MathNet.Numerics.Distributions;

namespace Jumpwright.Calculators.Landings;

/// <summary>Landing forces by a spring and damper fitted to the athlete. It does not extrapolate.</summary>
public static class LandingForces
{
    /// <summary>How far above the highest measured drop it speaks.</summary>
    public static Coefficient Reach { get; } =
        new("landing-model-reach", 0.10, Unit.Metre, null, Bibliography.Get("house-rule"));

    /// <summary>Landings that miss their own spring by more are said to be uneven.</summary>
    public static Coefficient Uneven { get; } =
        new("landing-model-uneven", 0.20, Unit.One, null, Bibliography.Get("house-rule"));

    /// <summary>
    /// Relative miss of a peak to start from, worth four landings: what fifteen landings of five people (Adams 2020) scattered by about
    /// their own fit.
    /// </summary>
    private static readonly Coefficient StartingMiss = new(
        "landing-model-starting-miss",
        0.19,
        Unit.One,
        null,
        Bibliography.Get("house-rule")
    );

    private const double StartingDegreesOfFreedom = 4;

    /// <summary>Landings whose drops differ by less are taken as from one height, m.</summary>
    private const double OneHeightM = 0.05;

    /// <summary>
    /// How far an athlete's own growth of force with height may differ from the model's, standard deviation of d ln force / d ln drop.
    /// The model's lies between 0.3 and 0.5; over 26 studies force goes with the square root of the drop (Niu 2014), that is 0.5. So
    /// ± 2 of it reach from force that does not grow at all to force that grows with the drop itself.
    /// </summary>
    public static Coefficient GrowthDoubt { get; } =
        new("landing-model-growth-doubt", 0.25, Unit.One, null, Bibliography.Get("house-rule"));

    /// <summary>The loading rate is the noisier measure: it counts a quarter.</summary>
    private const double LoadingWeight = 0.25;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "landing-force",
            "Landing force",
            $"m z'' = m g − k z − c z' from first contact at v = √(2 g H); force k z + c z'. k and c are fitted to the athlete's own peaks (and 10 ms loading, a quarter of the weight), "
                + $"by least squares of logarithms. ± is the scatter of their own landings about the fit (with 19 % worth four landings, as real people's; wider by Student's t while they are few) and the distance from the heights measured, where force may grow otherwise than the model says (± 0.25 of its exponent over the drop, which is 0.5 over 26 studies).",
            ["niu-2014", "wallace-2010", "duarte-watanabe-bmc", "house-rule"],
            $"A landing is no linear spring: it has two peaks, of which now one and now the other is the greater, and technique can change the force by a quarter. On fifteen landings of five people (Adams 2020) a landing foretold from the same person's two others was off by 22 %; their plain mean was off by 23 %, so most of it is how people land from one trial to the next. Ground force is not tissue load; the model describes this athlete's own landings and says nothing of another's."
        );

    /// <summary>
    /// The expected peak and loading; refused with fewer than three landings, above a step over the highest
    /// measured, and above the athlete's cap.
    /// </summary>
    public static Outcome<LandingForce> Of(LandingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<MeasuredLanding> landings = input.Measured.IsDefault ? [] : input.Measured;
        double weight = input.BodyMassKg * Gravity.MetresPerSecondSquared;
        Refusal? bad = Input.First(
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            Input.Outside($"The drop", input.DropM, 0.03, 1.2, "m"),
            input.CapM is { } given ? Input.Outside($"The limit", given, 0, 1.2, "m") : null
        );
        foreach (MeasuredLanding landing in landings)
        {
            bad ??= Input.First(
                Input.Outside($"A measured drop", landing.DropM, 0.03, 1.2, "m"),
                Input.Outside($"A measured peak", landing.PeakForceN / weight, 1, 20, "body weights")
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        if (input.CapM is { } cap && input.DropM > cap + 1e-9)
        {
            return Refusal.Of(
                $"{new Length(input.DropM):0 cm} is above what the limits allow this athlete ({new Length(cap):0 cm}): nothing is computed for it."
            );
        }

        double[] heights = [.. landings.Select(l => l.DropM)];
        if (landings.Length < 3)
        {
            return landings.Length == 1
                ? Refusal.Of(
                    $"1 measured landing: the model needs at least three, better from {new Length(0.2):0 (cm)} and {new Length(0.3):0 cm}. Measure landings."
                )
                : Refusal.Of(
                    $"{landings.Length} measured landings: the model needs at least three, better from {new Length(0.2):0 (cm)} and {new Length(0.3):0 cm}. Measure landings."
                );
        }

        double most = heights.Max() + Reach.Value;
        if (input.DropM > most + 1e-9)
        {
            return Refusal.Of(
                $"{new Length(input.DropM):0 cm} is more than {new Length(Reach.Value):0 cm} above the highest landing measured ({new Length(heights.Max()):0 cm}): the model says nothing there. Ask about at most {new Length(most):0 cm}, and go up a step at a time."
            );
        }

        SpringDamper model = Fit(landings, weight);
        double miss = Miss(landings, model, weight);
        bool oneHeight = heights.Max() - heights.Min() < OneHeightM;
        double relative = Relative(landings, miss, input.DropM);
        double speed = Flight.TouchDownSpeedMS(input.DropM);
        double peak = model.PeakBw(speed);
        double loading = model.LoadingBwS(speed);
        double loadingRelative = landings.Any(l => l.LoadingRateNS is not null)
            ? Math.Max(2 * relative, LoadingMiss(landings, model, weight))
            : 1;
        const string method = "spring-damper fitted to own landings";
        return new LandingForce(
            Basis,
            [
                new("peak_landing_force_N", weight * peak, Unit.Newton, weight * peak * relative, method),
                new("peak_landing_force_BW", peak, new Unit("BW"), peak * relative, method),
                new(
                    "peak_loading_rate_N_s",
                    weight * loading,
                    Unit.NewtonPerSecond,
                    weight * loading * loadingRelative,
                    method
                ),
                new(
                    "leg_spring_N_m",
                    model.StiffnessNM(input.BodyMassKg),
                    Unit.NewtonPerMetre,
                    2 * miss * model.StiffnessNM(input.BodyMassKg) / Math.Sqrt(landings.Length),
                    method
                ),
            ],
            $"From {new Length(input.DropM):0 cm} this athlete's landing likely peaks at {peak:0.0} ± {peak * relative:0.0} body weights ({weight * peak:0} N), as their {landings.Length} measured landings from {new Length(heights.Min()):0 (cm)} to {new Length(heights.Max()):0 cm} go.",
            model,
            miss
        )
        {
            Warnings =
            [
                .. miss > Uneven.Value
                    ? (Sentence[])
                        [
                            $"This athlete's own landings differ by {100 * miss:0} % from what one spring would give: they land now stiff, now soft. Coach the landing and measure again before leaning on this.",
                        ]
                    : [],
                .. oneHeight
                    ? (Sentence[])
                        [
                            $"All were measured from about one height ({new Length(heights.Min()):0 (cm)} to {new Length(heights.Max()):0 cm}): how force grows with height is the model's and other people's, not yet this athlete's.",
                        ]
                    : [],
                .. input.DropM > heights.Max()
                    ? (Sentence[])
                        [
                            $"{new Length(input.DropM):0 cm} is above the highest landing measured ({new Length(heights.Max()):0 cm}).",
                        ]
                    : [],
                .. landings.All(l => l.LoadingRateNS is null)
                    ? (Sentence[])
                        [
                            $"Loading was not measured: the loading rate given is the model's guess, and may be off by all of itself.",
                        ]
                    : [],
            ],
            NextTest =
                oneHeight
                    ? Sentence.Of(
                        $"Three landings from a height {new Length(0.1):0 cm} lower would show how force grows with height for this athlete."
                    )
                : landings.Length < 6
                    ? Sentence.Of(
                        $"Three landings from the highest drop the limits allow, at most {new Length(0.1):0 cm} above the highest measured, would sharpen it most."
                    )
                : null,
        };
    }

    /// <summary>The model of these landings.</summary>
    public static SpringDamper Fit(ImmutableArray<MeasuredLanding> landings, double weightN) =>
        SpringFit.Of(landings, weightN, LoadingWeight);

    /// <summary>Standard deviation of what it misses on them, of the force, with the house's start.</summary>
    public static double Miss(ImmutableArray<MeasuredLanding> landings, SpringDamper model, double weightN)
    {
        double squares = landings.Sum(l =>
            Square(Math.Log(l.PeakForceN / weightN / model.PeakBw(Flight.TouchDownSpeedMS(l.DropM))))
        );
        return Math.Sqrt(
            (squares + (StartingDegreesOfFreedom * Square(StartingMiss.Value)))
                / (Math.Max(landings.Length - 2, 0) + StartingDegreesOfFreedom)
        );
    }

    /// <summary>
    /// What a further landing may differ from the model, of the force, as a standard uncertainty whose ± 2 holds 95.45 %: the miss itself
    /// is known from few landings only, so Student's t widens it.
    /// </summary>
    /// <param name="landings">What the model was fitted to.</param>
    /// <param name="miss">What it misses on them.</param>
    /// <param name="dropM">The drop asked about, m.</param>
    public static double Relative(ImmutableArray<MeasuredLanding> landings, double miss, double dropM)
    {
        double[] logs = [.. landings.Select(l => Math.Log(l.DropM))];
        double mean = logs.Average();
        double growth = 1 / ((logs.Sum(x => Square(x - mean)) / Square(miss)) + (1 / Square(GrowthDoubt.Value)));
        double few = StudentT.InvCDF(0, 1, Math.Max(landings.Length - 2, 0) + StartingDegreesOfFreedom, 0.97725) / 2;
        return Math.Sqrt(
            (Square(few * miss) * (1 + (1.0 / landings.Length))) + (growth * Square(Math.Log(dropM) - mean))
        );
    }

    private static double LoadingMiss(ImmutableArray<MeasuredLanding> landings, SpringDamper model, double weight)
    {
        double[] misses =
        [
            .. landings
                .Where(l => l.LoadingRateNS is > 0)
                .Select(l =>
                    Square(
                        Math.Log(l.LoadingRateNS!.Value / weight / model.LoadingBwS(Flight.TouchDownSpeedMS(l.DropM)))
                    )
                ),
        ];
        return Math.Sqrt(misses.Average());
    }

    private static double Square(double x) => x * x;
}
