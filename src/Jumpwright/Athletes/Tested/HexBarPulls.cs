using System.Collections.Immutable;
using Jumpwright.Calculators.Curves;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Athletes.Tested;

/// <summary>Hex-bar pulls of the latest weeks (screens.csv), each load with the mean velocity of the same trial number and day.</summary>
public static class HexBarPulls
{
    /// <summary>Test that holds the load.</summary>
    public const string LoadTest = "hex-bar-load";

    /// <summary>Test that holds the mean velocity of the upward phase.</summary>
    public const string VelocityTest = "hex-bar-velocity";

    /// <summary>
    /// Mean velocity at the maximum of a hex-bar pull: none is published in our sources. The full squat's (Sánchez-Medina 2017)
    /// stands for it with twice its spread (house rule).
    /// </summary>
    public static Coefficient VelocityAtMaximum { get; } =
        new(
            "hex-bar-velocity-at-maximum",
            0.32,
            Unit.MetrePerSecond,
            0.06,
            Bibliography.Get("sanchez-medina-2017"),
            "Of the full squat, ± 0.03 there; doubled here because the hex-bar pull is another lift."
        );

    /// <summary>Loads, kg, and mean velocities, m/s; empty when no pull was timed.</summary>
    public static ImmutableArray<LoadedJump> Of(History history, LocalDate day, double staleDays = TestWindow.Days)
    {
        ArgumentNullException.ThrowIfNull(history);
        ScreenResult[] fresh =
        [
            .. history.Screens.Where(s => s.Date <= day && Period.DaysBetween(s.Date, day) <= staleDays),
        ];
        return
        [
            .. from load in fresh
            where load.Test == LoadTest && load.TrialNumber is not null && load.Unit is "kg" or ""
            from velocity in fresh
            where
                velocity.Test == VelocityTest
                && velocity.Unit is "m/s" or ""
                && velocity.Date == load.Date
                && velocity.TrialNumber == load.TrialNumber
            select new LoadedJump(load.Value, velocity.Value),
        ];
    }

    /// <summary>The line with the estimated maximum; refused where fewer than two loads were timed.</summary>
    public static Outcome<LoadVelocity> LineOf(History history, LocalDate day, double staleDays = TestWindow.Days)
    {
        ImmutableArray<LoadedJump> pulls = Of(history, day, staleDays);
        return pulls.IsEmpty
            ? Refusal.Of(
                $"No hex-bar pull was timed: lift two loads or more with full intent, and write hex-bar-load and hex-bar-velocity with one trial number."
            ) with
            {
                Brief = $"heavy pull (two loads, timed)",
            }
            : LoadVelocities.Of(
                new LoadVelocityInput(
                    pulls,
                    VelocityAtMaximum.Value,
                    VelocityAtMaximum.StandardUncertainty ?? 0.06,
                    LiftIsSquat: false
                )
            );
    }
}
