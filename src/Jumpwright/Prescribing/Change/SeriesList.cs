using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>Makes trends of a history: trusted measures only, one line for each <see cref="SeriesKey"/>.</summary>
public static class SeriesList
{
    /// <summary>Every trend of that athlete up to that day, by key.</summary>
    public static ImmutableArray<Series> Of(History history, LocalDate asOf)
    {
        ArgumentNullException.ThrowIfNull(history);
        return
        [
            .. history
                .Trials.Where(t => t.Date <= asOf)
                .SelectMany(t =>
                    t.Trial.Measures.Where(m => t.Trial.MayBeAveraged(m.Name)).Select(m => (Trial: t, Measure: m))
                )
                .GroupBy(p => KeyOf(p.Trial, p.Measure))
                .Select(g => Make(history.Athlete.Id, g.Key, [.. g]))
                .OrderBy(s => s.Key.Task)
                .ThenBy(s => s.Key.Measure, StringComparer.Ordinal)
                .ThenBy(s => s.Key.Device)
                .ThenBy(s => s.Key.Method, StringComparer.Ordinal)
                .ThenBy(s => s.Key.Limb)
                .ThenBy(s => s.Key.Condition),
        ];
    }

    private static SeriesKey KeyOf(MeasuredTrial trial, Measure measure) =>
        new(
            measure.Name,
            trial.Trial.Task,
            trial.Labels.Limb ?? Limb.Both,
            trial.Device,
            measure.Method,
            trial.Trial.Task switch
            {
                JumpTask.DropJump or JumpTask.DropLanding => trial.Labels.DropHeightM,
                JumpTask.LoadedJump => trial.Labels.ExternalLoadKg,
                _ => null,
            }
        );

    private static Series Make(string athlete, SeriesKey key, (MeasuredTrial Trial, Measure Measure)[] values)
    {
        IGrouping<LocalDate, (MeasuredTrial Trial, Measure Measure)>[] days =
        [
            .. values.GroupBy(v => v.Trial.Date).OrderBy(g => g.Key),
        ];
        LocalDate first = days[0].Key;
        return new Series(
            athlete,
            key,
            values[0].Measure.Unit,
            [.. days.Select(d => d.Key)],
            [
                .. days.Select(d =>
                    SessionMean.Of(
                        Period.DaysBetween(first, d.Key),
                        [.. d.Select(v => v.Measure.Value)],
                        d.Average(v => v.Measure.StandardUncertainty * v.Measure.StandardUncertainty)
                    )
                ),
            ]
        );
    }
}
