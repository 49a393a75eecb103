using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// The measures that decisions take: for each name, task, limb, device and method the mean of the latest day's trials. Mean,
/// never best: the best of more trials is higher by luck. Methods and devices are never mixed.
/// </summary>
internal static class CurrentMeasures
{
    /// <summary>
    /// Drop jumps from several boxes are different tests. The one nearest to 0.30 m stands for the athlete (common practice);
    /// the dose looks at all of them.
    /// </summary>
    private const double ReferenceDropM = 0.30;

    internal static ImmutableArray<Evidence> Of(History history, LocalDate asOf) =>
        [
            .. Groups(history, asOf)
                .Select(g =>
                {
                    (MeasuredTrial Trial, Measure Measure)[] comparable = Comparable([.. g]);
                    return Pooled(comparable, comparable.Max(p => p.Trial.Date));
                })
                .OrderBy(e => e.Task)
                .ThenBy(e => e.Measure.Name, StringComparer.Ordinal)
                .ThenBy(e => e.Limb)
                .ThenBy(e => e.Device)
                .ThenBy(e => e.Measure.Method, StringComparer.Ordinal),
        ];

    /// <summary>That current measure and its earlier days, in order: one measure, task, limb, device, method, box and load.</summary>
    internal static ImmutableArray<Evidence> Days(History history, LocalDate asOf, Evidence current)
    {
        (MeasuredTrial Trial, Measure Measure)[] comparable = Comparable([
            .. Groups(history, asOf)
                .Single(g =>
                    g.Key
                    == new Group(
                        current.Measure.Name,
                        current.Task,
                        current.Limb,
                        current.Device,
                        current.Measure.Method
                    )
                ),
        ]);
        return [.. comparable.Select(p => p.Trial.Date).Distinct().Order().Select(day => Pooled(comparable, day))];
    }

    private static IEnumerable<IGrouping<Group, (MeasuredTrial Trial, Measure Measure)>> Groups(
        History history,
        LocalDate asOf
    ) =>
        history
            .Trials.Where(t => t.Date <= asOf)
            .SelectMany(t => t.Trial.Measures.Select(m => (Trial: t, Measure: m)))
            .Where(p => p.Trial.Trial.MayBeAveraged(p.Measure.Name))
            .GroupBy(p => new Group(
                p.Measure.Name,
                p.Trial.Trial.Task,
                p.Trial.Labels.Limb ?? Limb.Both,
                p.Trial.Device,
                p.Measure.Method
            ));

    /// <summary>The mean of that day, with what the device and the athlete's own scatter over all days leave in doubt.</summary>
    private static Evidence Pooled((MeasuredTrial Trial, Measure Measure)[] comparable, LocalDate day)
    {
        (MeasuredTrial Trial, Measure Measure)[] today =
        [
            .. comparable
                .Where(p => p.Trial.Date == day)
                .OrderBy(p => p.Trial.File, StringComparer.Ordinal)
                .ThenBy(p => p.Trial.Trial.Number),
        ];
        Measure first = today[0].Measure;
        MeasuredTrial last = today[^1].Trial;
        double mean = today.Average(p => p.Measure.Value);
        double device = Math.Sqrt(today.Average(p => p.Measure.StandardUncertainty * p.Measure.StandardUncertainty));
        double scatter = Scatter(comparable, first.Name, last.Trial.Task, mean);
        double doubt = Math.Sqrt((device * device) + (scatter * scatter / today.Length));
        return new Evidence(
            new Measure(first.Name, mean, first.Unit, doubt, first.Method),
            day,
            last.File,
            last.Trial.Number,
            last.Device,
            last.Trial.Task,
            last.Labels.Limb ?? Limb.Both
        )
        {
            BoxM = last.Labels.DropHeightM,
            LoadKg = last.Labels.ExternalLoadKg,
            Trials = today.Length,
            TrialSd = scatter,
        };
    }

    private static (MeasuredTrial Trial, Measure Measure)[] Comparable((MeasuredTrial Trial, Measure Measure)[] group)
    {
        if (group[0].Trial.Trial.Task is not (JumpTask.DropJump or JumpTask.LoadedJump))
        {
            return group;
        }

        // The latest day first: what stands for the athlete is taken from its box or load.
        LocalDate latest = group.Max(p => p.Trial.Date);
        double? key = group
            .Where(p => p.Trial.Date == latest)
            .Select(p => Key(p.Trial))
            .OrderBy(k => k is { } known ? Math.Abs(known - Reference(group[0].Trial.Trial.Task)) : double.MaxValue)
            .ThenBy(k => k)
            .First();
        return [.. group.Where(p => Key(p.Trial) == key)];
    }

    private static double? Key(MeasuredTrial trial) =>
        trial.Trial.Task == JumpTask.DropJump ? trial.Labels.DropHeightM : trial.Labels.ExternalLoadKg;

    private static double Reference(JumpTask task) => task == JumpTask.DropJump ? ReferenceDropM : 0;

    private static double Scatter(
        (MeasuredTrial Trial, Measure Measure)[] trials,
        string name,
        JumpTask task,
        double mean
    )
    {
        double squares = 0;
        int freedom = 0;
        foreach (var day in trials.GroupBy(p => p.Trial.Date))
        {
            double dayMean = day.Average(p => p.Measure.Value);
            squares += day.Sum(p => Math.Pow(p.Measure.Value - dayMean, 2));
            freedom += day.Count() - 1;
        }

        return TrialScatter.Pooled(
            squares,
            freedom,
            TrialErrors.StartingSd(name, task, mean),
            TrialErrors.PriorDegreesOfFreedom.Value
        );
    }

    private sealed record Group(string Measure, JumpTask? Task, Limb? Limb, Device? Device, string Method);
}
