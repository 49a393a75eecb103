using Jumpwright.Quantities;
using MathNet.Numerics.Statistics;

namespace Jumpwright.Statistics;

/// <summary>
/// Load of sessions and weeks, in arbitrary units. Descriptions only: no ratio of recent to long-term load is made here, and no
/// injury is foretold from any of it (Impellizzeri et al. 2021). Sources: Foster 1998, Med Sci Sports Exerc 30:1164–1168;
/// Foster et al. 2001, J Strength Cond Res 15:109–115.
/// </summary>
public static class TrainingLoad
{
    /// <summary>Session load: effort (0 to 10) times minutes.</summary>
    public static double OfSession(double effortRpe, double minutes) => effortRpe * minutes;

    /// <summary>Mean daily load over its SD, with rest days as 0; refused where all days are alike (SD 0: not infinite).</summary>
    /// <param name="dailyLoad">One value a day, rest days 0.</param>
    /// <param name="deviation">Which SD.</param>
    public static Outcome<double> Monotony(ReadOnlySpan<double> dailyLoad, DeviationKind deviation)
    {
        double[] days = dailyLoad.ToArray();
        if (days.Length < 2)
        {
            return new Refusal("Monotony needs at least two days of load; give every day, rest days as 0.");
        }

        double sd = deviation == DeviationKind.Sample ? days.StandardDeviation() : days.PopulationStandardDeviation();
        return sd > 0
            ? days.Mean() / sd
            : new Refusal("Monotony is not defined when every day has the same load; show the days themselves.");
    }

    /// <summary>Load of the days together times their monotony; refused where monotony is.</summary>
    public static Outcome<double> Strain(ReadOnlySpan<double> dailyLoad, DeviationKind deviation)
    {
        double sum = dailyLoad.ToArray().Sum();
        return Monotony(dailyLoad, deviation).Then<double>(monotony => sum * monotony);
    }

    /// <summary>
    /// Exponentially weighted load on the last day: E = λ L + (1 − λ) E of the day before, λ = 2 / (N + 1), begun with the first
    /// day's own load.
    /// </summary>
    /// <param name="dailyLoad">One value a day in order, at least one.</param>
    /// <param name="days">N.</param>
    public static double ExponentiallyWeighted(ReadOnlySpan<double> dailyLoad, int days)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        if (dailyLoad.IsEmpty)
        {
            throw new ArgumentException("At least one day is needed.", nameof(dailyLoad));
        }

        double weight = 2.0 / (days + 1);
        double level = dailyLoad[0];
        foreach (double load in dailyLoad[1..])
        {
            level = (weight * load) + ((1 - weight) * level);
        }

        return level;
    }
}
