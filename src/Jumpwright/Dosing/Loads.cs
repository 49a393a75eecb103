using Jumpwright.Athletes;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>How heavy a bar, with what the share is of. Two bases are never mixed.</summary>
internal static class Loads
{
    internal static Outcome<LoadChoice> For(Exercise exercise, History history, LocalDate day)
    {
        LoadRange range = exercise.Load!;
        if (range.Of == "body-mass")
        {
            return history.Athlete.BodyMassKg is { } mass && mass > 0
                ? OfBodyMass(exercise, range, mass, history, day)
                : Refusals.MassUnknown(exercise);
        }

        ScreenResult? test = history
            .Screens.Where(s => s.Test == "hex-bar-load" && s.Date <= day && s.Unit is ("kg" or ""))
            .Where(s => Period.DaysBetween(s.Date, day) <= LimitBook.For(history, day)["load-test-stale"])
            .OrderByDescending(s => s.Date)
            .ThenByDescending(s => s.Value)
            .FirstOrDefault();
        if (test is null)
        {
            return Refusals.NoLoadTest(exercise, LimitBook.For(history, day)["load-test-stale"]);
        }

        (double most, Sentence of) = OfTheTest(history, day, test);
        double load = Down(range.MinShare * most);
        Sentence basis = $"{100 * load / most:0} % of {of}, bar included";
        return load < DoseRules.LightestBar.Value
            ? Refusals.BarTooHeavy(exercise, range.MaxShare * most)
            : new LoadChoice(load, basis);
    }

    /// <summary>
    /// What the share is of: the heaviest pull of the latest test, or where pulls were timed the maximum they point to less 2u,
    /// never more than 110 % of the heaviest pull.
    /// </summary>
    private static (double Kg, Sentence Basis) OfTheTest(History history, LocalDate day, ScreenResult test)
    {
        Sentence lifted = $"the hex-bar test of {new Mass(test.Value):0.# kg} on {test.Date:uuuu-MM-dd}";
        if (
            !HexBarPulls
                .LineOf(history, day, LimitBook.For(history, day)["load-test-stale"])
                .TryGet(out LoadVelocity? line, out _)
        )
        {
            return (test.Value, lifted);
        }

        Measure maximum = line.Value("estimated_maximum_kg");
        double careful = maximum.Value - (2 * maximum.StandardUncertainty);
        double bound = test.Value * Bounds.Share.Value / 100;
        return careful <= test.Value
            ? (test.Value, lifted)
            : (
                Math.Min(careful, bound),
                Sentence.Of(
                    $"{new Mass(Math.Min(careful, bound)):0.# kg} (timed pulls point to a maximum of {new Mass(maximum.Value):0 (kg)} ± {new Mass(maximum.StandardUncertainty):0 kg}: less 2u, and at most {Bounds.Share.Value:0} % of {lifted})"
                )
            );
    }

    private static Outcome<LoadChoice> OfBodyMass(
        Exercise exercise,
        LoadRange range,
        double massKg,
        History history,
        LocalDate day
    )
    {
        LimitBook limits = LimitBook.For(history, day);
        double most = range.MaxShare * massKg;
        double light = Math.Clamp(limits["light-load"], range.MinShare, range.MaxShare) * massKg;
        double wished = light;
        Sentence why = $"of body mass, bar included (range {100 * range.MinShare:0}–{100 * range.MaxShare:0} %)";
        if (exercise.ContactsPerRep > 0 && LoadedJumps.Of(history, day) is { HeaviestKg: > 0 } jumps)
        {
            // Measured jumps speak: the lightest load of the range aimed at, and never far above the heaviest jumped with.
            double bound = jumps.HeaviestKg * Bounds.Share.Value / 100;
            most = Math.Min(most, bound);
            (double from, double to) = jumps.Aim(limits["load-speed-least"], limits["load-speed-most"]);
            if (jumps.SpeedCurve(from, to, most).TryGet(out LoadCurve? curve, out _))
            {
                wished = Math.Max(curve.FromKg, range.MinShare * massKg);
                why =
                    $"{why}; {from:0.0} to {to:0.0} m/s at take-off came with {new Mass(curve.FromKg):0.# (kg)} to {new Mass(curve.ToKg):0.# kg} in this athlete's own jumps, the lightest is enough";
            }

            // What the athlete's own jumps point to never loosens what the squad calls light.
            if (wished > light)
            {
                why = $"{why}; more than {new Mass(light):0.# kg} does not count as light here";
            }

            wished = Math.Min(Math.Min(wished, most), light);
            why = $"{why}; at most {new Mass(bound):0.# kg}, {Bounds.Share.Value:0} % of the heaviest jumped with";
        }

        double load = Math.Max(DoseRules.LightestBar.Value, Down(wished));
        return load > most + 1e-9
            ? Refusals.BarTooHeavy(exercise, most)
            : new LoadChoice(load, $"{100 * load / massKg:0} % {why}");
    }

    /// <summary>Down to a load that plates of 1.25 kg make.</summary>
    private static double Down(double kg) => Math.Floor((kg + 1e-9) / 2.5) * 2.5;
}
