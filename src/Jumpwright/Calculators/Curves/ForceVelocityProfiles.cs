using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>Force–velocity profiles from loaded squat jumps, with the evidence against prescribing from them beside.</summary>
public static class ForceVelocityProfiles
{
    private const string Method = "push-off means, least squares";

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "force-velocity",
            "Force–velocity profile",
            $"Mean force (m + load) g (h / h_PO + 1) per body mass over mean velocity √(g h / 2), least squares: F0, v0, S = −F0 / v0, P = F0 v0 / 4. "
                + $"Optimal slope by the closed form of Samozino 2012, checked against a direct search; heights from the take-off velocity of the same equations.",
            ["samozino-2008", "samozino-2012", "lindberg-2021", "wolte-2024", "jimenez-reyes-2017", "samozino-2022"],
            $"Training toward the optimum did no better than away from it in a randomised trial (Lindberg 2021, n 40), and a meta-analysis does not support it (Wolte 2024); earlier trials of its authors did (Jiménez-Reyes 2017). Two centimetres of push-off distance move the ratio by about 4 points. The profile describes and never picks exercises alone."
        );

    /// <summary>The profile; refused for countermovement jumps, for fewer than three loads, and for a line that does not fall.</summary>
    public static Outcome<ForceVelocityProfile> Of(ForceVelocityInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        ImmutableArray<LoadedJump> jumps = input.Jumps.IsDefault ? [] : input.Jumps;
        Refusal? bad = Input.First(
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            Input.Outside($"The push-off distance", input.PushOffM, 0.15, 0.8, "m"),
            Input.Outside($"The doubt of the push-off distance", input.PushOffUncertaintyM, 0, 0.1, "m")
        );
        foreach (LoadedJump jump in jumps)
        {
            bad ??= Input.First(
                Input.Outside($"A load", jump.LoadKg, 0, 300, "kg"),
                Input.Outside($"A height", jump.Value, 0.02, 1.0, "m")
            );
        }

        if (bad is not null)
        {
            return bad;
        }

        if (!input.SquatJumps)
        {
            return Refusal.Of(
                $"The profile is a model of squat jumps: countermovement heights do not fit it. Measure squat jumps from a still start."
            );
        }

        if (jumps.Select(j => j.LoadKg).Distinct().Count() < 3)
        {
            return Refusal.Of(
                $"{jumps.Select(j => j.LoadKg).Distinct().Count()} different loads: a profile needs squat jumps at three at least, far enough apart to tell a line."
            );
        }

        if (!Fit(input, input.PushOffM).TryGet(out StraightLine? fit, out Refusal? refusal))
        {
            return refusal;
        }

        if (fit.Slope >= 0 || fit.Intercept <= 0)
        {
            return Refusal.Of(
                $"Force does not fall with velocity in these jumps: a load or a height is wrong, or the loads are too close. Check them, or add a heavier load."
            );
        }

        var line = new ForceVelocityLine(fit.Intercept, -fit.Intercept / fit.Slope);
        double power = line.PowerWKg;
        double optimal = ForceVelocityLine.OptimalSlope(power, input.PushOffM);
        double searched = ForceVelocityLine.OptimalSlopeBySearch(power, input.PushOffM);
        double[] now = Heights(input, fit, input.PushOffM);
        double[] doubt = Doubts(input, fit, now);
        ImmutableArray<Measure> values =
        [
            new("force_at_zero_velocity_N_kg", now[0], new Unit("N/kg"), doubt[0], Method),
            new("velocity_at_zero_force_m_s", now[1], Unit.MetrePerSecond, doubt[1], Method),
            new("greatest_power_W_kg", now[2], new Unit("W/kg"), doubt[2], Method),
            new("slope_of_optimal_pct", now[3], Unit.Percent, doubt[3], Method),
            new("height_now_m", now[4], Unit.Metre, doubt[4], Method),
            new("height_at_optimum_m", now[5], Unit.Metre, doubt[5], Method),
            new("height_left_m", now[5] - now[4], Unit.Metre, doubt[6], Method),
        ];
        return new ForceVelocityProfile(
            Basis,
            values,
            $"F0 {now[0]:0.0} ± {doubt[0]:0.0} N/kg, v0 {now[1]:0.00} ± {doubt[1]:0.00} m/s, greatest power {now[2]:0.0} ± {doubt[2]:0.0} W/kg; the slope is {now[3]:0} ± {doubt[3]:0} % of the optimal one. On the model that gap is worth {new Length(now[5] - now[4]):0.0 (cm)} ± {new Length(doubt[6]):0.0 cm}. It describes; a randomised trial found no gain from training toward it.",
            line,
            fit,
            optimal,
            searched
        )
        {
            Warnings =
            [
                .. Math.Abs(now[3] - 100) < 2 * doubt[3]
                    ? (Sentence[])[$"The slope can't be told from the optimal one within its own error."]
                    : [],
                .. fit.RSquared < 0.95
                    ? (Sentence[])[$"The jumps lie off the line (r² {fit.RSquared:0.00}): repeat those that look odd."]
                    : [],
            ],
            NextTest =
                doubt[3] > 5
                    ? Sentence.Of(
                        $"Three jumps at the heaviest load the limits allow, and the push-off distance measured twice."
                    )
                    : null,
        };
    }

    private static Outcome<StraightLine> Fit(ForceVelocityInput input, double pushOffM) =>
        StraightLine.Fit(
            [.. input.Jumps.Select(j => PushOff.MeanVelocityMS(j.Value))],
            [
                .. input.Jumps.Select(j =>
                    PushOff.MeanForceN(input.BodyMassKg + j.LoadKg, j.Value, pushOffM) / input.BodyMassKg
                ),
            ]
        );

    private static double[] Heights(ForceVelocityInput input, StraightLine fit, double pushOffM)
    {
        var line = new ForceVelocityLine(fit.Intercept, -fit.Intercept / fit.Slope);
        double optimal = ForceVelocityLine.OptimalSlope(line.PowerWKg, pushOffM);
        return
        [
            line.ForceNKg,
            line.VelocityMS,
            line.PowerWKg,
            100 * line.Slope / optimal,
            Flight.HeightFromVelocityM(line.TakeOffMS(pushOffM)),
            Flight.HeightFromVelocityM(ForceVelocityLine.TakeOffMS(line.PowerWKg, optimal, pushOffM)),
        ];
    }

    /// <summary>First order, by moving the centred intercept and slope (which are uncorrelated) and the distance one SD each.</summary>
    private static double[] Doubts(ForceVelocityInput input, StraightLine fit, double[] now)
    {
        double centre = fit.ResidualSd / Math.Sqrt(fit.Points);
        double slope = fit.ResidualSd / Math.Sqrt(fit.SumOfSquaresX);
        double[][] moved =
        [
            Heights(input, fit with { Intercept = fit.Intercept + centre }, input.PushOffM),
            Heights(
                input,
                fit with
                {
                    Slope = fit.Slope + slope,
                    Intercept = fit.Intercept - (slope * fit.MeanX),
                },
                input.PushOffM
            ),
            Fit(input, input.PushOffM + input.PushOffUncertaintyM).TryGet(out StraightLine? longer, out _)
                ? Heights(input, longer, input.PushOffM + input.PushOffUncertaintyM)
                : now,
        ];
        return
        [
            .. Enumerable.Range(0, 6).Select(i => Math.Sqrt(moved.Sum(m => (m[i] - now[i]) * (m[i] - now[i])))),
            Math.Sqrt(moved.Sum(m => Math.Pow(m[5] - m[4] - now[5] + now[4], 2))),
        ];
    }
}
