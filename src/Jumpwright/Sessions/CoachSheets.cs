using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime.Text;

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
        UnitSystem units
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
            [.. histories.Select(h => LineOf(h.Athlete, request, session, units))],
            [
                .. session
                    .Rotation.OrderBy(r => r.StartMin)
                    .ThenBy(r => r.Station, StringComparer.Ordinal)
                    .Select(r => new CoachStation(
                        r.Station,
                        request.Catalogue.Find(r.ExerciseId)?.Name ?? r.ExerciseId,
                        r.StartMin,
                        r.EndMin,
                        [.. r.AthleteIds.Select(id => names.GetValueOrDefault(id, id))]
                    )
                    {
                        EasyUntilMin = r.EasyUntilMin,
                    }),
            ],
            [.. Notes(plan, request)],
            Cards.MadeBy(request, "coach", session.Slot.Id)
        );
    }

    private static CoachLine LineOf(Athlete athlete, PlanRequest request, PlannedSession session, UnitSystem units)
    {
        ImmutableArray<PlannedItem> items =
            session.Athletes.FirstOrDefault(a => a.AthleteId == athlete.Id)?.Items ?? [];
        AthleteRequest? asked = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athlete.Id);
        string[] watching =
        [
            .. (asked?.RulingsOn(session.Slot.Date) ?? [])
                .Select(r => r.Because.ToString())
                .Distinct(StringComparer.Ordinal)
                .Take(3)
                .Concat(asked?.Prompts ?? []),
        ];
        string? watch = watching.Length == 0 ? null : string.Join(" ", watching);
        return new CoachLine(
            athlete.Name,
            items.IsEmpty ? ["Nothing planned"] : [.. items.Select(i => Brief(i, request.Catalogue, units))],
            items.Sum(i => i.Contacts),
            watch
        );
    }

    private static string Brief(PlannedItem item, Catalogue catalogue, UnitSystem units)
    {
        string name = catalogue.Find(item.Dose.ExerciseId)?.Name ?? item.Dose.ExerciseId;
        string? how = CardWords.HeightOrLoad(item.Dose, units)?.ToString().Split(" (")[0];
        return $"{name} {CardWords.Amount(item.Dose, item.Sets)}" + (how is null ? "" : ", " + how);
    }

    private static IEnumerable<string> Notes(Plan plan, PlanRequest request)
    {
        yield return CardWords.Caution;
        if (plan is { Objective: { } value, BestBound: { } bound, Gap: { } gap })
        {
            yield return $"The plan is worth {value:0} points; no plan within the limits is worth more than {bound:0} (gap {100 * gap:0.0} %).";
        }

        foreach (string remark in request.Remarks)
        {
            yield return remark;
        }

        foreach (Override o in plan.Overrides)
        {
            yield return FormattableString.Invariant(
                $"Overridden until {LocalDatePattern.Iso.Format(o.Until)} by {o.Who}: {o.Limit}{(o.AthleteId is { } id ? " of " + id : "")} {o.Value:0.###} instead of {o.Standard:0.###} {o.Unit} ({o.Reason})."
            );
        }
    }
}
