using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Prescribing.Change;

/// <summary>Where the belief about noise and walk of a level starts.</summary>
public static class Noise
{
    /// <summary>SD from day to day beyond the trials, % of the level.</summary>
    public static Coefficient DayToDay { get; } =
        new(
            "level-day-to-day",
            2,
            Unit.Percent,
            null,
            Bibliography.Get("house-rule"),
            "Papers give one typical error that mixes trials and days (5.8 % for countermovement height over 48 to 168 h)."
        );

    /// <summary>SD by which a level walks in a week, % of the level.</summary>
    public static Coefficient WeekToWeek { get; } =
        new("level-week-to-week", 0.5, Unit.Percent, null, Bibliography.Get("house-rule"));

    /// <summary>For a measure whose trial-to-trial SD is 5.8 %, as countermovement height.</summary>
    public static LevelPrior UsualPrior { get; } = PriorFor(5.8, 8);

    /// <summary>The start for a measure with that trial-to-trial SD, worth so many degrees of freedom.</summary>
    public static LevelPrior PriorFor(double trialPct, double degreesOfFreedom) =>
        LevelPrior.Of(trialPct, degreesOfFreedom, DayToDay.Value, 0.6, WeekToWeek.Value, 0.8);
}
