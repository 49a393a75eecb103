using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Change;

/// <summary>
/// One jump's height is got in two ways, by impulse–momentum and by flight time, and often on two devices: nearly the same number,
/// never the same quantity. One of them is followed, chosen by counting sessions and not by looking at values: the one with more
/// sessions, impulse–momentum where both have as many (it assumes nothing about the posture at landing), plates before mats before
/// cameras after that. House rule.
/// </summary>
internal static class HeightMethods
{
    internal static Sentence Rule =>
        $"One way of getting a height is followed: the one with more sessions, impulse–momentum where both have as many.";

    /// <summary>The same items in order, without the heights that stand behind another of the same task, leg and condition.</summary>
    internal static IEnumerable<T> One<T>(IEnumerable<T> items, Func<T, Series> seriesOf)
    {
        T[] all = [.. items];
        HashSet<T> followed =
        [
            .. all.Where(i => IsHeight(seriesOf(i).Key))
                .GroupBy(i =>
                    (seriesOf(i).AthleteId, seriesOf(i).Key.Task, seriesOf(i).Key.Limb, seriesOf(i).Key.Condition)
                )
                .Select(g =>
                    g.OrderByDescending(i => seriesOf(i).Sessions.Length)
                        .ThenBy(i => seriesOf(i).Key.Measure == MeasureNames.JumpHeight ? 0 : 1)
                        .ThenBy(i => seriesOf(i).Key.Device)
                        .First()
                ),
        ];
        return all.Where(i => !IsHeight(seriesOf(i).Key) || followed.Contains(i));
    }

    /// <summary>The heights that are on record beside those followed.</summary>
    internal static ImmutableArray<SeriesKey> Others(IEnumerable<Series> series)
    {
        Series[] all = [.. series];
        HashSet<Series> followed = [.. One(all, s => s)];
        return [.. all.Where(s => !followed.Contains(s)).Select(s => s.Key)];
    }

    /// <summary>Heights that are followed and were measured in another way since their last session, each with the one measured last.</summary>
    internal static ImmutableArray<(Series Followed, Series Since)> Switched(IEnumerable<Series> series)
    {
        Series[] heights = [.. series.Where(s => IsHeight(s.Key))];
        return
        [
            .. One(heights, s => s)
                .Select(followed =>
                    (
                        followed,
                        Since: heights
                            .Where(s =>
                                (s.AthleteId, s.Key.Task, s.Key.Limb, s.Key.Condition)
                                == (followed.AthleteId, followed.Key.Task, followed.Key.Limb, followed.Key.Condition)
                            )
                            .Where(s => s.Days[^1] > followed.Days[^1])
                            .MaxBy(s => s.Days[^1])
                    )
                )
                .Where(p => p.Since is not null)
                .Select(p => (p.followed, p.Since!)),
        ];
    }

    private static bool IsHeight(SeriesKey key) =>
        key.Measure is MeasureNames.JumpHeight or MeasureNames.JumpHeightFlightTime;
}
