using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>Real change, for a squad at once: noise is learned from all, levels are each athlete's own.</summary>
public static class Changes
{
    /// <summary>Every trend with at least two sessions of every athlete, in the order of the histories.</summary>
    /// <param name="histories">The squad's.</param>
    /// <param name="asOf">Only what happened up to that day counts.</param>
    /// <param name="options">What is watched.</param>
    public static ImmutableArray<Trend> Of(IReadOnlyList<History> histories, LocalDate asOf, ChangeOptions options)
    {
        SquadTrends trends = InSquad(histories, asOf, options);
        return [.. histories.SelectMany(h => trends.Of(h.Athlete.Id))];
    }

    /// <summary>The same for one athlete at a time: what all teach is learned now, each one's trends when they are asked for.</summary>
    /// <param name="histories">The squad's.</param>
    /// <param name="asOf">Only what happened up to that day counts.</param>
    /// <param name="options">What is watched.</param>
    public static SquadTrends InSquad(IReadOnlyList<History> histories, LocalDate asOf, ChangeOptions options)
    {
        ArgumentNullException.ThrowIfNull(histories);
        ArgumentNullException.ThrowIfNull(options);
        Dictionary<string, ImmutableArray<Series>> series = histories.ToDictionary(
            h => h.Athlete.Id,
            h => SeriesList.Of(h, asOf),
            StringComparer.Ordinal
        );
        Dictionary<SeriesKey, SquadNoise> noises = histories
            .SelectMany(h => series[h.Athlete.Id])
            .Where(s => IsTrend(s.Key))
            .GroupBy(s => s.Key)
            .ToDictionary(g => g.Key, g => SquadNoises.Of([.. g]));
        HashSet<Series> watched = [.. series.Values.SelectMany(own => WatchedOf(own, options))];
        ControlChart? chart = ChartFor(watched, options);
        return new SquadTrends(
            series,
            own =>
                [
                    .. own.Where(s => s.Sessions.Length >= 2 && IsTrend(s.Key))
                        .Select(s => Make(s, noises[s.Key], options, watched.Contains(s) ? chart : null, asOf)),
                ]
        );
    }

    /// <summary>Counts and booleans are no trends; weight is its own matter.</summary>
    private static bool IsTrend(SeriesKey key) =>
        key.Measure
            is not (
                MeasureNames.HopsFound
                or MeasureNames.HopsCounted
                or MeasureNames.UnwantedDip
                or MeasureNames.AsymmetryPropulsiveImpulse
                or MeasureNames.AsymmetryBrakingImpulse
                or MeasureNames.AsymmetryLandingImpulse
                or MeasureNames.DropHeight
                or MeasureNames.BodyWeight
                or MeasureNames.SystemWeight
            );

    /// <summary>Height by impulse and by flight time say the same of one jump: one of them is enough, whichever was asked for.</summary>
    private static IEnumerable<Series> WatchedOf(ImmutableArray<Series> own, ChangeOptions options) =>
        HeightMethods.One(
            options
                .Watched.Take(ChangeOptions.MostWatched)
                .Select(name =>
                    own.Where(s => s.Key.Measure == name && s.Sessions.Length >= 2)
                        .OrderByDescending(s => s.Sessions.Length)
                        .ThenBy(s => s.Key.Task)
                        .FirstOrDefault()
                )
                .OfType<Series>(),
            s => s
        );

    /// <summary>
    /// False alarms a week that are to be expected over those series when nobody changes: what was wished, or less where so few are
    /// watched that an alarm would mean nothing.
    /// </summary>
    internal static double FalseAlarmsAWeek(IEnumerable<Series> watched, ChangeOptions options)
    {
        double perWeek = SessionsAWeek(watched);
        return perWeek <= 0 ? 0 : Math.Min(options.FalseAlarmsAWeek, ControlChart.MostPerSession * perWeek);
    }

    private static ControlChart? ChartFor(HashSet<Series> watched, ChangeOptions options)
    {
        double perWeek = SessionsAWeek(watched);
        return perWeek <= 0 ? null : ControlChart.For(options.FalseAlarmsAWeek, perWeek);
    }

    private static double SessionsAWeek(IEnumerable<Series> watched) =>
        watched
            .Where(s => s.Sessions.Length >= 2)
            .Sum(s => 7.0 * (s.Sessions.Length - 1) / Math.Max(7, s.Sessions[^1].Day));

    private static Trend Make(
        Series series,
        SquadNoise noise,
        ChangeOptions options,
        ControlChart? chart,
        LocalDate asOf
    )
    {
        ReadOnlySpan<SessionMean> sessions = series.Sessions.AsSpan();
        LevelBelief belief = LevelBelief.Of(sessions, noise.Prior);
        LocalDate wished = asOf.PlusDays(-options.DaysBack);
        int from = 0;
        for (int i = 0; i < series.Days.Length - 1 && series.Days[i] <= wished; i++)
        {
            from = i;
        }

        LevelChange change = belief.ChangeSince(sessions[from].Day, noise.SmallestWorthwhile);
        (double level, double sd) = belief.Now;
        ImmutableArray<LevelAlarm> alarms = chart is null
            ? []
            : [.. LevelAlarms.Of(sessions, noise.Prior, chart, noise.Spread)];
        return new Trend(
            series,
            noise,
            level,
            sd,
            [.. belief.Smooth()],
            series.Days[from],
            change,
            alarms,
            chart is not null,
            ChangeWords.Of(series, level, sd, series.Days[from], change, alarms)
        );
    }
}
