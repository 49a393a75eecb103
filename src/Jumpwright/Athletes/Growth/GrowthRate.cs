using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Athletes.Growth;

/// <summary>How fast somebody grows, from standing heights of two days.</summary>
/// <param name="From">The earlier day.</param>
/// <param name="To">The later day.</param>
/// <param name="CmPerYear">Growth, cm a year.</param>
/// <param name="StandardUncertaintyCmPerYear">Of both heights together, cm a year.</param>
public sealed record GrowthRate(LocalDate From, LocalDate To, double CmPerYear, double StandardUncertaintyCmPerYear)
{
    /// <summary>The test of screens.csv that gives a standing height.</summary>
    public const string Test = "stature";

    /// <summary>Heights nearer to each other than this say more of the tape than of growth, days (common practice: three months).</summary>
    public const int LeastDays = 84;

    private const double DaysAYear = 365.25;

    /// <summary>
    /// The last height against the one nearest a year before it; null where no two lie far enough apart within the look-back.
    /// </summary>
    public static GrowthRate? Of(ImmutableArray<ScreenResult> screens, LocalDate asOf, int lookBackDays)
    {
        (LocalDate Day, double HeightM, int N)[] heights =
        [
            .. screens
                .Where(s => s.Test == Test && s.Date <= asOf)
                .GroupBy(s => s.Date)
                .OrderBy(g => g.Key)
                .Select(g => (g.Key, g.Average(s => s.Value), g.Count())),
        ];
        if (heights.Length < 2)
        {
            return null;
        }

        (LocalDate last, double now, int nowN) = heights[^1];
        (LocalDate Day, double HeightM, int N)[] before =
        [
            .. heights.Where(h =>
                Period.DaysBetween(h.Day, last) >= LeastDays && Period.DaysBetween(h.Day, last) <= lookBackDays
            ),
        ];
        if (before.Length == 0 || Period.DaysBetween(last, asOf) > lookBackDays)
        {
            return null;
        }

        (LocalDate first, double then, int thenN) = before.MinBy(h =>
            Math.Abs(Period.DaysBetween(h.Day, last) - DaysAYear)
        );
        double years = Period.DaysBetween(first, last) / DaysAYear;
        double oneM = FieldTest.Find(Test)!.StandardUncertainty;
        double bothCm = 100 * oneM * Math.Sqrt((1.0 / nowN) + (1.0 / thenN));
        return new(first, last, 100 * (now - then) / years, bothCm / years);
    }
}
