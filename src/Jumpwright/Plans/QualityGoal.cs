using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>How much it is worth to an athlete, in one week, that sets train a quality. Falling returns.</summary>
/// <param name="Quality">The quality that an exercise trains first.</param>
/// <param name="WeekOf">Monday of the week.</param>
/// <param name="SetPoints">Points of the first, second, … set of that week; never negative, never rising; further sets are worth 0.</param>
/// <param name="Because">Why, in one sentence.</param>
public sealed record QualityGoal(Quality Quality, LocalDate WeekOf, ImmutableArray<int> SetPoints, Sentence Because)
{
    /// <summary>Points of so many sets.</summary>
    public int PointsOf(int sets)
    {
        int points = 0;
        for (int set = 0; set < Math.Min(sets, SetPoints.Length); set++)
        {
            points += SetPoints[set];
        }

        return points;
    }
}
