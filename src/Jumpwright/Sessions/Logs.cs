using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Sessions;

/// <summary>The door for what was really done: load beside the plan, the week's session-RPE, and the stop rule held against the log.</summary>
public static class Logs
{
    /// <summary>The standard deviation that monotony divides by here.</summary>
    public const string SampleDeviation = "sample, n − 1";

    /// <summary>Load done beside load planned, for every planned session, athlete and tissue, and plain contacts.</summary>
    public static ImmutableArray<LoadDone> Loads(Plan plan, PlanRequest request, ImmutableArray<History> histories) =>
        [
            .. from session in plan.Sessions
            from one in session.Athletes
            let log = histories
                .Where(h => h.Athlete.Id == one.AthleteId)
                .SelectMany(h => h.Completed)
                .Where(c => IsOf(c, session.Slot))
                .ToList()
            let possible = histories
                .Where(h => h.Athlete.Id == one.AthleteId)
                .SelectMany(h => h.PossiblyDone)
                .Where(p => IsOf(p.Date, p.SessionId, session.Slot))
                .ToList()
            from tissue in Enum.GetValues<Tissue>().Select(t => (Tissue?)t).Prepend(null)
            select new LoadDone(
                session.Slot.Id,
                one.AthleteId,
                tissue,
                one.Items.Sum(i => i.Contacts * TierOf(request.Catalogue, i.Dose.ExerciseId, tissue)),
                log.Count == 0 ? null : log.Sum(c => c.Contacts * TierOf(request.Catalogue, c.ExerciseId, tissue)),
                possible.Sum(p => p.Contacts * TierOf(request.Catalogue, p.ExerciseId, tissue))
            ),
        ];

    /// <summary>The seven days from that Monday. A session's load is its effort times its minutes, once a session.</summary>
    /// <param name="history">Whose.</param>
    /// <param name="monday">The week's first day.</param>
    /// <param name="seenFrom">The day it is asked on; while the week is not over by then, it has no monotony and no strain yet.</param>
    public static WeekOfLoad Week(History history, LocalDate monday, LocalDate seenFrom)
    {
        ArgumentNullException.ThrowIfNull(history);
        double[] days = new double[7];
        int without = 0;
        foreach (
            var session in history
                .Completed.Where(c => c.Date >= monday && c.Date < monday.PlusDays(7))
                .GroupBy(c => (c.Date, c.SessionId))
        )
        {
            double? effort = session.Select(c => c.EffortRpe).Where(e => e is not null).DefaultIfEmpty(null).Average();
            double? minutes = session.Select(c => c.SessionMinutes).Max();
            if (effort is { } rpe && minutes is { } length)
            {
                days[Period.DaysBetween(monday, session.Key.Date)] += TrainingLoad.OfSession(rpe, length);
            }
            else
            {
                without++;
            }
        }

        bool isOver = seenFrom >= monday.PlusDays(7);
        double? monotony =
            isOver && TrainingLoad.Monotony(days, DeviationKind.Sample).TryGet(out double m, out _) ? m : null;
        double? strain =
            isOver && TrainingLoad.Strain(days, DeviationKind.Sample).TryGet(out double s, out _) ? s : null;
        return new(monday, days.Sum(), monotony, strain, SampleDeviation, without, isOver);
    }

    /// <summary>
    /// Holds the stop rule of a planned item against its log. Height and contact are compared with the best set so far;
    /// pain and landing faults are the log's own.
    /// </summary>
    public static ImmutableArray<StopFinding> Stops(PlannedItem item, IEnumerable<CompletedItem> log)
    {
        ArgumentNullException.ThrowIfNull(item);
        StopRule stop = item.Dose.Stop;
        CompletedItem[] sets =
        [
            .. log.Where(c => c.ExerciseId == item.Dose.ExerciseId).OrderBy(c => c.Set ?? int.MaxValue),
        ];
        var found = ImmutableArray.CreateBuilder<StopFinding>();
        double bestHeight = 0;
        double bestContact = double.PositiveInfinity;
        int faults = 0;
        for (int n = 0; n < sets.Length; n++)
        {
            CompletedItem set = sets[n];
            bool wentOn = n + 1 < sets.Length;
            faults += set.LandingFaults ?? 0;
            if (stop.LandingFaults is { } most && faults >= most && faults - (set.LandingFaults ?? 0) < most)
            {
                Add(
                    most == 1
                        ? Sentence.Of($"landing faults: {faults}; the first is the limit")
                        : Sentence.Of($"{faults} landing faults; {most} are the limit")
                );
            }

            if (set.PainDuring > stop.PainDuringAbove)
            {
                Add($"pain {set.PainDuring:0.#} of 10; above {stop.PainDuringAbove:0.#} it stops");
            }

            if (set.PainSiteNew && stop.PainSiteNew)
            {
                Add($"it hurt in a new place");
            }

            if (set.HeightM is { } height)
            {
                if (stop.HeightLossPct is { } loss && height < bestHeight * (1 - (loss / 100)) - 1e-9)
                {
                    Add(
                        $"{new Length(height):0.0 cm} after {new Length(bestHeight):0.0 cm}, {100 * (1 - (height / bestHeight)):0} % lower; {loss:0.#} % is the limit"
                    );
                }

                bestHeight = Math.Max(bestHeight, height);
            }

            if (set.ContactTimeS is { } contact)
            {
                if (stop.ContactGainPct is { } gain && contact > bestContact * (1 + (gain / 100)) + 1e-9)
                {
                    Add(
                        $"contact {1000 * contact:0} ms after {1000 * bestContact:0} ms; {gain:0.#} % longer is the limit"
                    );
                }

                bestContact = Math.Min(bestContact, contact);
            }

            void Add(Sentence what) => found.Add(new(item.Dose.ExerciseId, set.Set, wentOn, what));
        }

        return found.ToImmutable();
    }

    /// <summary>
    /// Holds the stop rule of a proposed test against its trials, in their order: where it stopped, and whether it went on all the
    /// same. Null when no trial met it.
    /// </summary>
    public static StopFinding? TestStop(TestStop rule, IEnumerable<CompletedItem> trials)
    {
        ArgumentNullException.ThrowIfNull(rule);
        CompletedItem[] done = [.. trials.OrderBy(t => t.Set ?? int.MaxValue)];
        TrialSeen[] seen =
        [
            .. done.Select(t => new TrialSeen(
                t.HeightM,
                t.ContactTimeS,
                t.LandingFaults ?? 0,
                t.PainDuring,
                t.PainSiteNew
            )),
        ];
        for (int n = 1; n <= seen.Length; n++)
        {
            StopVerdict verdict = rule.After(seen.AsSpan(0, n));
            if (verdict.Stops)
            {
                CompletedItem at = done[n - 1];
                bool wentOn = n < seen.Length;
                return new StopFinding(at.ExerciseId, at.Set, wentOn, verdict.Because!) { Trial = at.Set ?? n };
            }
        }

        return null;
    }

    /// <summary>Whether that work was done in that session: named for it, or of its day and named for none.</summary>
    public static bool IsOf(CompletedItem item, SessionSlot slot)
    {
        ArgumentNullException.ThrowIfNull(item);
        return IsOf(item.Date, item.SessionId, slot);
    }

    private static bool IsOf(LocalDate date, string sessionId, SessionSlot slot) =>
        date == slot.Date && (sessionId.Length == 0 || sessionId == slot.Id);

    private static int TierOf(Catalogue catalogue, string exerciseId, Tissue? tissue) =>
        tissue is { } t ? catalogue.Find(exerciseId)?.Demand.GetValueOrDefault(t) ?? 1 : 1;
}
