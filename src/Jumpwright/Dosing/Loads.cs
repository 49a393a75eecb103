using Jumpwright.Athletes;
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
                ? OfBodyMass(exercise, range, mass, LimitBook.For(history, day)["light-load"])
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

        double load = Down(range.MinShare * test.Value);
        string basis =
            $"{100 * load / test.Value:0} % of the hex-bar test of {test.Value:0.#} kg on {test.Date:uuuu-MM-dd}, bar included";
        return load < DoseRules.LightestBar.Value
            ? Refusals.BarTooHeavy(exercise, range.MaxShare * test.Value)
            : new LoadChoice(load, basis);
    }

    private static Outcome<LoadChoice> OfBodyMass(Exercise exercise, LoadRange range, double massKg, double lightShare)
    {
        double most = range.MaxShare * massKg;
        double wished = Math.Clamp(lightShare, range.MinShare, range.MaxShare) * massKg;
        double load = Math.Max(DoseRules.LightestBar.Value, Down(wished));
        return load > most
            ? Refusals.BarTooHeavy(exercise, most)
            : new LoadChoice(
                load,
                $"{100 * load / massKg:0} % of body mass, bar included (range {100 * range.MinShare:0}–{100 * range.MaxShare:0} %)"
            );
    }

    /// <summary>Down to a load that plates of 1.25 kg make.</summary>
    private static double Down(double kg) => Math.Floor((kg + 1e-9) / 2.5) * 2.5;
}
