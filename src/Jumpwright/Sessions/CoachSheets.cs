using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Sessions;

/// <summary>The coach's sheet: who does what, where and when, and what to watch.</summary>
internal static class CoachSheets
{
    internal static CoachSheet Of(
        Plan plan,
        PlanRequest request,
        Squad squad,
        PlannedSession session,
        ImmutableArray<History> histories,
        ImmutableArray<SessionCard> closed
    )
    {
        ImmutableDictionary<string, string> names = histories.ToImmutableDictionary(
            h => h.Athlete.Id,
            h => h.Athlete.Name,
            StringComparer.Ordinal
        );
        return new CoachSheet(
            squad.Name,
            session.Slot.Date,
            session.Slot.Id,
            session.Slot.Start,
            session.Slot.Minutes,
            [.. histories.Select(h => LineOf(h.Athlete, request, session, closed))],
            [
                .. session
                    .Rotation.OrderBy(r => r.StartMin)
                    .ThenBy(r => r.Station, StringComparer.Ordinal)
                    .Select(r => new CoachStation(
                        StationOf(r.Station),
                        $"{NameOf(r.ExerciseId, request.Catalogue)}",
                        r.StartMin,
                        r.EndMin,
                        [.. r.AthleteIds.Select(id => names.GetValueOrDefault(id, id))]
                    )
                    {
                        EasyUntilMin = r.EasyUntilMin,
                        Settings = [.. r.AthleteIds.Select(id => Setting(session, id, r.ExerciseId))],
                    }),
            ],
            [.. Notes(plan, request)],
            Cards.MadeBy(request, session.Slot)
        )
        {
            Between = Between(request.Limits, session.Slot),
        };
    }

    private static Sentence? Setting(PlannedSession session, string athleteId, string exerciseId) =>
        session.ItemOf(athleteId, exerciseId) is { } item ? CardWords.HeightOrLoad(item.Dose, brief: true) : null;

    private static Sentence? Between(SquadLimits limits, SessionSlot slot) =>
        (limits.OpeningMinutes, limits.ChangeOverMinutes) switch
        {
            (> 0 and var opening, > 0 and var change) =>
                $"Until {slot.Start.PlusSeconds((long)(60 * opening)):HH:mm}: roll call, the three questions, a general warm-up. Between two turns {change:0.#} min are kept for changing places.",
            (> 0 and var opening, _) =>
                $"Until {slot.Start.PlusSeconds((long)(60 * opening)):HH:mm}: roll call, the three questions, a general warm-up.",
            (_, > 0 and var change) => $"Between two turns {change:0.#} min are kept for changing places.",
            _ => null,
        };

    private static CoachLine LineOf(
        Athlete athlete,
        PlanRequest request,
        PlannedSession session,
        ImmutableArray<SessionCard> closed
    )
    {
        ImmutableArray<PlannedItem> items =
            session.Athletes.FirstOrDefault(a => a.AthleteId == athlete.Id)?.Items ?? [];
        AthleteRequest? asked = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athlete.Id);
        ImmutableArray<Ruling> rulings = asked?.RulingsOn(session.Slot.Date) ?? [];
        // What alone is allowed is never cut off: whoever swaps an exercise goes by it.
        Sentence[] watching =
        [
            .. closed
                .Where(c => c.AthleteId == athlete.Id)
                .Select(c => Sentence.Of($"Closed since this was planned: {c.WhyNothing!}.")),
            .. rulings.Where(IsWhole).Select(r => r.Because).Distinct(),
            .. rulings.Where(r => !IsWhole(r)).Select(r => r.Because).Distinct().Take(3),
            .. asked?.Prompts ?? [],
        ];
        Sentence? watch = watching.Length == 0 ? null : Sentence.Join(" ", watching);
        return new CoachLine(
            athlete.Name,
            items.IsEmpty ? [$"Nothing planned"] : [.. items.Select(i => Brief(i, request.Catalogue))],
            items.Sum(i => i.Contacts),
            watch
        );
    }

    private static bool IsWhole(Ruling ruling) => ruling.Effect is NothingPlanned or OnlyExercises;

    private static Sentence Brief(PlannedItem item, Catalogue catalogue)
    {
        SaidExercise name = NameOf(item.Dose.ExerciseId, catalogue);
        Sentence amount = CardWords.Amount(item.Dose, item.Sets);
        return CardWords.HeightOrLoad(item.Dose, brief: true) is { } how
            ? Sentence.Of($"{name} {amount}, {how}")
            : Sentence.Of($"{name} {amount}");
    }

    private static SaidExercise NameOf(string id, Catalogue catalogue) =>
        catalogue.Find(id)?.Said ?? SaidExercise.ById(id);

    /// <summary>A place or several, for example <c>plyo-box-1+floor</c>: kit with its number.</summary>
    private static Sentence StationOf(string station)
    {
        Sentence[] places = [.. station.Split('+').Select(PlaceOf)];
        return places.Aggregate((all, next) => Sentence.Of($"{all} and {next}"));
    }

    private static Sentence PlaceOf(string id)
    {
        int at = id.LastIndexOf('-');
        return at > 0 && int.TryParse(id[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? Sentence.Of($"{new SaidKit(id[..at])} {number}")
            : Sentence.Of($"{new SaidKit(id)}");
    }

    private static IEnumerable<Sentence> Notes(Plan plan, PlanRequest request)
    {
        yield return CardWords.Caution;
        yield return $"What is written after this was printed is not on it. Look at the session's page before you work from paper.";
        if (PlanGains.CouldBeBetterBy(plan) is { } better)
        {
            yield return $"Every hard limit was kept when it was planned. No plan within the limits can be better than this one by more than {100 * better:0.0} %.";
        }

        foreach (Sentence remark in request.Remarks)
        {
            yield return remark;
        }

        foreach (Override o in plan.Overrides)
        {
            SaidLimit called = new(o.Limit);
            Sentence what = o.AthleteId is { } id
                ? Sentence.Of($"{called} of {request.NameOf(id)}")
                : Sentence.Of($"{called}");
            yield return $"Overridden until {o.Until:uuuu-MM-dd} by {o.Who}: {what} {Overridden(o)} ({o.Reason}).";
        }
    }

    /// <summary>What a limit is set to and what it was, in its unit.</summary>
    private static Sentence Overridden(Override o) =>
        o.Unit switch
        {
            "m" => $"{new Length(o.Value):0.### m} instead of {new Length(o.Standard):0.### m}",
            "kg" => $"{new Mass(o.Value):0.### kg} instead of {new Mass(o.Standard):0.### kg}",
            _ => $"{o.Value:0.###} instead of {o.Standard:0.###} {UnitOf(o.Unit)}",
        };

    private static Sentence UnitOf(string unit) =>
        unit switch
        {
            "contacts" => $"contacts",
            "contacts × tier" => $"contacts × tier",
            "days" => $"days",
            "exercises" => $"exercises",
            "sessions" => $"sessions",
            _ => Sentence.Of($"{unit}"),
        };
}
