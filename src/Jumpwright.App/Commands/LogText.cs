using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary>Work done beside work planned as plain text: session by session, then stop rules reached, then the weeks' load.</summary>
internal static class LogText
{
    public static void Write(PlannedWeek week, SquadMaterial material, TextWriter to)
    {
        TerminalWords.Use(week.Request.Catalogue);
        ImmutableArray<LoadDone> loads = Logs.Loads(week.Plan, week.Request, material.Histories);
        foreach (PlannedSession session in week.Plan.Sessions)
        {
            to.WriteLine($"{Dates.Long(session.Slot.Date)}, {Dates.At(session.Slot.Start)}");
            foreach (History history in material.Histories)
            {
                Session(material, session, history, loads, to);
            }

            to.WriteLine();
        }

        foreach (History history in material.Histories)
        {
            foreach (string line in Outside(week.Plan, week.Request, history))
            {
                to.WriteLine(line);
            }

            for (
                LocalDate monday = PlanRequest.WeekOf(week.Request.From);
                monday < week.Request.From.PlusWeeks(week.Request.Weeks);
                monday = monday.PlusWeeks(1)
            )
            {
                Week(history, monday, to);
            }
        }
    }

    private static void Session(
        SquadMaterial material,
        PlannedSession session,
        History history,
        ImmutableArray<LoadDone> loads,
        TextWriter to
    )
    {
        string id = history.Athlete.Id;
        ImmutableArray<LoadDone> theirs =
        [
            .. loads.Where(l =>
                l.SessionId == session.Slot.Id
                && l.AthleteId == id
                && (l.Planned > 0 || l.Done > 0 || l.PossiblyMore > 0)
            ),
        ];
        if (theirs.IsEmpty)
        {
            return;
        }

        to.WriteLine(
            theirs[0] is { Done: null, PossiblyMore: 0 }
                ? $"  {history.Athlete.Name}: nothing logged; {theirs[0].Planned} contacts were planned"
                : $"  {history.Athlete.Name}: {string.Join("; ", theirs.Select(Load))}"
        );
        ImmutableArray<PlannedItem> items = session.Athletes.FirstOrDefault(a => a.AthleteId == id)?.Items ?? [];
        IEnumerable<CompletedItem> log = history.Completed.Where(c => Logs.IsOf(c, session.Slot));
        foreach (StopFinding stop in items.SelectMany(i => Logs.Stops(i, log)))
        {
            to.WriteLine($"    Stop rule: {TerminalWords.Of(stop.Sentence)}");
        }

        foreach (StopFinding stop in TestStops(material, session, history))
        {
            to.WriteLine($"    Stop rule: {TerminalWords.Of(stop.Sentence)}");
        }
    }

    /// <summary>
    /// Rows by set of an exercise that was offered as a test that day and was not planned are its trials: the test's own rule is held
    /// against them. What was offered is made again from what was known before that session.
    /// </summary>
    private static IEnumerable<StopFinding> TestStops(SquadMaterial material, PlannedSession session, History history)
    {
        string id = history.Athlete.Id;
        ImmutableArray<PlannedItem> items = session.Athletes.FirstOrDefault(a => a.AthleteId == id)?.Items ?? [];
        CompletedItem[] rows =
        [
            .. history.Completed.Where(c =>
                c.Set is not null
                && Logs.IsOf(c, session.Slot)
                && items.All(i => i.Dose.ExerciseId != c.ExerciseId || i.Dose.DropHeightM != c.DropHeightM)
            ),
        ];
        if (rows.Length == 0)
        {
            return [];
        }

        // What was measured that day may be the test itself, and what was felt that day may have come of it: neither stood before it.
        LocalDate day = session.Slot.Date;
        History before = history with
        {
            Completed = [.. history.Completed.Where(c => c.Date < day)],
            Trials = [.. history.Trials.Where(t => t.Date < day)],
            Screens = [.. history.Screens.Where(s => s.Date < day)],
        };
        History felt = before with { Symptoms = [.. history.Symptoms.Where(s => s.Date < day)] };
        return ((History[])[before, felt])
            .SelectMany(h => Reporting.TestsBeside(material.Squad, h, material.Catalogue, day, []))
            .Select(o => o.Test.TryGet(out TestProposal? test, out _) ? (o.Question, Test: test) : default)
            .Where(o => o.Test is not null)
            .DistinctBy(o => o.Question)
            .Select(o => o.Test)
            .Select(t =>
                Logs.TestStop(
                    t.Stop,
                    rows.Where(r => r.ExerciseId == t.ExerciseId && IsFrom(r.DropHeightM, t.Ask.DropM))
                )
            )
            .OfType<StopFinding>();
    }

    private static bool IsFrom(double? done, double? asked) =>
        done is not { } d || asked is not { } a || Math.Abs(d - a) < 0.01;

    private static string Load(LoadDone load) =>
        load.Tissue is { } tissue
            ? $"{Words.Of(tissue)} {load.Done} done{Perhaps(load)}, {load.Planned} planned (contacts × tier)"
            : $"{load.Done} contacts done{Perhaps(load)}, {load.Planned} planned";

    /// <summary>With a set that pain broke off and nobody counted, what it may have come to.</summary>
    private static string Perhaps(LoadDone load) =>
        load.PossiblyMore == 0
            ? ""
            : $" (perhaps up to {(load.Done ?? 0) + load.PossiblyMore}: a set was broken off and not counted)";

    /// <summary>Work on days for which this plan has no session of theirs.</summary>
    private static IEnumerable<string> Outside(Plan plan, PlanRequest request, History history) =>
        from item in history.Completed
        where item.Date >= request.From && item.Date < request.From.PlusWeeks(request.Weeks)
        where
            !plan.Sessions.Any(s =>
                Logs.IsOf(item, s.Slot) && s.Athletes.Any(a => a.AthleteId == item.AthleteId && !a.Items.IsEmpty)
            )
        group item by item.Date into day
        orderby day.Key
        select $"{history.Athlete.Name}, {Dates.Short(day.Key)}: {day.Sum(i => i.Contacts)} contacts outside the plan ({string.Join(", ", day.Select(i => i.ExerciseId).Distinct(StringComparer.Ordinal).Select(TerminalWords.Exercise))})";

    private static void Week(History history, LocalDate monday, TextWriter to)
    {
        // A week that is asked for by its dates is told as a whole, and what it takes days without a log for is said with it.
        WeekOfLoad load = Logs.Week(history, monday, monday.PlusDays(7));
        if (load.Load <= 0 && load.WithoutMinutes == 0)
        {
            return;
        }

        string sessions = load.WithoutMinutes == 1 ? "1 session" : $"{load.WithoutMinutes} sessions";
        string who = $"{history.Athlete.Name}, week of {Dates.Short(monday)}";
        // What nobody rated is no load of nothing.
        if (load.Load <= 0)
        {
            to.WriteLine($"{who}: session-RPE load not known: {sessions} without effort or minutes");
            return;
        }

        string monotony = load.Monotony is { } m
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"monotony {m:0.0}, strain {load.Strain:0} (standard deviation: {load.StandardDeviation}; days without a log count as 0)"
            )
            : "monotony is not defined when all days are alike";
        string without = load.WithoutMinutes > 0 ? $"; {sessions} without effort or minutes not in it" : "";
        to.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"{who}: session-RPE load {load.Load:0}, {monotony}{without}")
        );
    }
}
