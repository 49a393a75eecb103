using System.Collections.Immutable;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Estimated maximum of a heavy lift from a few lighter ones.</summary>
public static class LoadVelocities
{
    private const string Method = "load-velocity line";

    /// <summary>Scatter of mean velocity about a load–velocity line to start from, m/s.</summary>
    public static Coefficient StartingScatter { get; } =
        new(
            "load-velocity-scatter",
            0.06,
            Unit.MetrePerSecond,
            null,
            Bibliography.Get("sanchez-medina-2017"),
            "The standard error of one line through 80 men; one athlete's own line scatters less."
        );

    private const double StartingDegreesOfFreedom = 2;

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "load-velocity",
            "Load–velocity and estimated maximum",
            $"Mean velocity v = a + b L by least squares; maximum = (v at the maximum − a) / b; load at zero velocity −a / b. ± holds the scatter about the line and how far athletes differ in the velocity at their maximum.",
            ["sanchez-medina-2017", "house-rule"],
            $"The published velocity at the maximum (0.32 ± 0.03 m/s) is the full squat's; other lifts have their own. General tables of % of maximum over velocity do not hold for one person. Every load needs full intent."
        );

    /// <summary>The line and the maximum; refused below two loads, or when velocity does not fall with load.</summary>
    public static Outcome<LoadVelocity> Of(LoadVelocityInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<LoadedJump> lifts = input.Lifts.IsDefault ? [] : input.Lifts;
        Refusal? bad = Input.First(
            Input.Outside($"Velocity at the maximum", input.VelocityAtMaximumMS, 0.05, 1.0, "m/s"),
            Input.Outside($"Its doubt", input.VelocityAtMaximumUncertaintyMS, 0, 0.3, "m/s")
        );
        foreach (LoadedJump lift in lifts)
        {
            bad ??= Input.First(
                Input.Outside($"A load", lift.LoadKg, 0, 500, "kg"),
                Input.Outside($"A mean velocity", lift.Value, 0.1, 3, "m/s")
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        if (
            !StraightLine
                .Fit(
                    [.. lifts.Select(l => l.LoadKg)],
                    [.. lifts.Select(l => l.Value)],
                    StartingScatter.Value,
                    StartingDegreesOfFreedom
                )
                .TryGet(out StraightLine? line, out _)
        )
        {
            return Refusal.Of(
                $"{lifts.Length} lifts at one load: the line needs two different loads at least, better four."
            );
        }

        if (line.Slope >= 0)
        {
            return Refusal.Of(
                $"Velocity does not fall with load in these lifts: a load or a velocity is wrong, or a light lift was not moved with full intent. Measure them again."
            );
        }

        double maximum = line.Solve(input.VelocityAtMaximumMS);
        double doubt = line.SolveUncertainty(input.VelocityAtMaximumMS, input.VelocityAtMaximumUncertaintyMS);
        double heaviest = lifts.Max(l => l.LoadKg);
        if (maximum < heaviest)
        {
            return Refusal.Of(
                $"The line points to a maximum of {new Mass(maximum):0 kg}, below the {new Mass(heaviest):0 kg} that were lifted: the velocity at the maximum is too high for this lift, or a velocity is wrong."
            );
        }

        double reach = 100 * heaviest / maximum;
        double? next =
            doubt / maximum > 0.05
                ? Math.Floor(Math.Min(0.85 * maximum, heaviest * Bounds.Share.Value / 100) / 2.5) * 2.5
                : null;
        return new LoadVelocity(
            Basis,
            [
                new("estimated_maximum_kg", maximum, Unit.Kilogram, doubt, Method),
                new("load_at_zero_velocity_kg", line.Solve(0), Unit.Kilogram, line.SolveUncertainty(0, 0), Method),
                new(
                    "slope_m_s_kg",
                    line.Slope,
                    new Unit("m/s/kg"),
                    line.ResidualSd / Math.Sqrt(line.SumOfSquaresX),
                    Method
                ),
            ],
            $"The lifts point to a maximum of {new Mass(maximum):0 (kg)} ± {new Mass(doubt):0 kg} (velocity there taken as {input.VelocityAtMaximumMS:0.00} ± {input.VelocityAtMaximumUncertaintyMS:0.00} m/s); the heaviest lift measured is {reach:0} % of it.",
            line
        )
        {
            Warnings =
            [
                .. reach < 70
                    ? (Sentence[])
                        [
                            $"The heaviest lift is only {reach:0} % of the estimate: that far beyond the loads measured the line is a guess.",
                        ]
                    : [],
                .. input.LiftIsSquat
                    ? []
                    : (Sentence[])
                        [
                            $"The velocity at the maximum of this lift is not published in our sources: {input.VelocityAtMaximumMS:0.00} ± {input.VelocityAtMaximumUncertaintyMS:0.00} m/s is assumed.",
                        ],
            ],
            NextTest = next is { } load
                ? Sentence.Of($"Two lifts at about {new Mass(load):0.# kg} with full intent would narrow it most.")
                : null,
            NextLoadKg = next,
        };
    }
}
