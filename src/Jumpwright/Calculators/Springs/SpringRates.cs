using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Springs;

/// <summary>Leg springs from contact and flight, and from force; refused, not guessed, outside the band of the model.</summary>
public static class SpringRates
{
    /// <summary>Shortest contact for which the half-sine is believed.</summary>
    public static Coefficient ShortestContact { get; } =
        new("half-sine-contact-from", 0.10, Unit.Second, null, Bibliography.Get("house-rule"));

    /// <summary>Longest.</summary>
    public static Coefficient LongestContact { get; } =
        new(
            "half-sine-contact-to",
            0.25,
            Unit.Second,
            null,
            Bibliography.Get("schmidtbleicher-1992"),
            "Above 0.25 s, and with two peaks, a half-sine does not fit."
        );

    /// <summary>What it stands on.</summary>
    public static Basis Basis { get; } =
        new(
            "spring",
            "Leg spring and indices of rebound",
            $"Time model k = m π (t_f + t_c) / (t_c² ((t_f + t_c)/π − t_c/4)) for contacts of 0.10 to 0.25 s; from force k = peak force / fall of the centre of mass. "
                + $"Index = (g t_f²/8) / t_c, m/s; flight–contact ratio = t_f / t_c; modified index = height / time to take-off: three names, never mixed.",
            ["dalleau-2004", "morin-2005", "ebben-petushek-2010", "louder-2021", "house-rule"],
            $"Stiffer is not better by itself. Two-peaked curves and long contacts do not fit a half-sine; vertical and leg stiffness differ in running; the indices are not interchangeable (Louder 2021)."
        );

    /// <summary>All that the input allows.</summary>
    public static Outcome<Spring> Of(SpringInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Refusal? bad = Input.First(
            Input.Outside($"Body mass", input.BodyMassKg, 20, 250, "kg"),
            Input.Outside($"The contact", input.ContactS, 0.05, 2, "s"),
            Input.Outside($"The flight", input.FlightS, 0.05, 1, "s"),
            Input.Outside($"The doubt of the times", input.TimeUncertaintyS, 0, 0.05, "s"),
            input.PeakForceN is { } f
                ? Input.Outside(
                    $"Peak force",
                    f / (input.BodyMassKg * Gravity.MetresPerSecondSquared),
                    1,
                    15,
                    "body weights"
                )
                : null,
            input.FallM is { } fall ? Input.Outside($"The fall of the centre of mass", fall, 0.01, 0.6, "m") : null,
            input.TimeToTakeOffS is { } t ? Input.Outside($"Time to take-off", t, 0.1, 3, "s") : null
        );
        if (bad is not null)
        {
            return bad;
        }

        double m = input.BodyMassKg;
        double tc = input.ContactS;
        double tf = input.FlightS;
        double u = input.TimeUncertaintyS;
        bool holds = tc >= ShortestContact.Value - 1e-9 && tc <= LongestContact.Value + 1e-9;
        var values = ImmutableArray.CreateBuilder<Measure>();
        values.Add(
            Timed(
                "reactive_strength_index",
                Unit.MetrePerSecond,
                (c, f) => ReactiveStrength.Index(Flight.HeightFromTimeM(f), c),
                "flight-time"
            )
        );
        values.Add(
            Timed(
                "flight_contact_ratio",
                Unit.One,
                (c, f) => ReactiveStrength.FlightContactRatio(f, c),
                "flight over contact"
            )
        );
        if (holds)
        {
            values.Add(
                Timed(
                    "vertical_stiffness_time_model_N_m",
                    Unit.NewtonPerMetre,
                    (c, f) => Stiffness.HoppingNM(m, c, f),
                    "half-sine"
                )
            );
            values.Add(
                Timed(
                    "vertical_stiffness_time_model_N_m_kg",
                    new Unit("N/m/kg"),
                    (c, f) => Stiffness.HoppingNM(m, c, f) / m,
                    "half-sine"
                )
            );
        }

        if (input.PeakForceN is { } force && input.FallM is { } depth)
        {
            values.Add(
                new(
                    "vertical_stiffness_N_m",
                    force / depth,
                    Unit.NewtonPerMetre,
                    force / depth * Math.Sqrt((0.02 * 0.02) + Math.Pow(0.005 / depth, 2)),
                    "peak force over fall"
                )
            );
        }

        if (input.TimeToTakeOffS is { } toTakeOff)
        {
            double height = Flight.HeightFromTimeM(tf);
            values.Add(
                new(
                    "reactive_strength_index_modified",
                    ReactiveStrength.ModifiedIndex(height, toTakeOff),
                    Unit.MetrePerSecond,
                    height / toTakeOff * Math.Sqrt(Math.Pow(2 * u / tf, 2) + Math.Pow(0.02 / toTakeOff, 2)),
                    "flight-time height over time to take-off"
                )
            );
        }

        Measure? time = values.FirstOrDefault(v => v.Name == "vertical_stiffness_time_model_N_m");
        Sentence stiffness = time is { } k
            ? Sentence.Of(
                $"Spring of {k.Value / 1000:0.0} ± {k.StandardUncertainty / 1000:0.0} kN/m by the time model."
            )
            : Sentence.Of(
                $"No spring by the time model: a contact of {1000 * tc:0} ms lies outside {1000 * ShortestContact.Value:0} to {1000 * LongestContact.Value:0} ms, where a half-sine is believed."
            );
        return new Spring(
            Basis,
            values.ToImmutable(),
            $"Index {values[0].Value:0.00} ± {values[0].StandardUncertainty:0.00} m/s; flight is {values[1].Value:0.0} times the contact. {stiffness}",
            holds
        )
        {
            NextTest = holds
                ? null
                : Sentence.Of($"Hops with the shortest contact they can do well; or a plate, which needs no model."),
        };

        Measure Timed(string name, Unit unit, Func<double, double, double> of, string method)
        {
            double value = of(tc, tf);
            double byContact = of(tc + u, tf) - value;
            double byFlight = of(tc, tf + u) - value;
            return new(name, value, unit, Math.Sqrt((byContact * byContact) + (byFlight * byFlight)), method);
        }
    }
}
