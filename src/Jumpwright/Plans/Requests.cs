using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Safety.Conditions;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Makes the planner's request from what is known of the squad: profiles, ladders, doses, rulings, fixtures.</summary>
public static class Requests
{
    /// <summary>The request for so many weeks from that day; what is known of the athletes is taken as of that day.</summary>
    /// <param name="squad">The squad and its circumstances.</param>
    /// <param name="histories">Its athletes'.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="from">First day.</param>
    /// <param name="weeks">How many weeks.</param>
    /// <param name="budget">How long may be searched.</param>
    /// <param name="amendments">What a person asked by hand; null: nothing.</param>
    /// <returns>The request, or a sentence: no such time zone, no window, no week, an athlete twice.</returns>
    public static Outcome<PlanRequest> For(
        Squad squad,
        ImmutableArray<History> histories,
        Catalogue catalogue,
        LocalDate from,
        int weeks,
        SolveBudget? budget = null,
        Amendments? amendments = null
    )
    {
        if (weeks is < 1 or > 12)
        {
            return Refusal.Of($"A plan of {weeks} weeks was asked for; ask for 1 to 12.");
        }

        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(squad.TimeZone) is not { } zone)
        {
            return Refusal.Of(
                $"squad.yaml names the time zone '{squad.TimeZone}', which is not an IANA zone; write one such as Europe/Paris."
            );
        }

        if (squad.Windows.IsEmpty)
        {
            return Refusal.Of($"squad.yaml has no training windows; write at least one under windows.");
        }

        string? twice = histories
            .GroupBy(h => h.Athlete.Id, StringComparer.Ordinal)
            .FirstOrDefault(g => g.Skip(1).Any())
            ?.Key;
        if (twice is not null)
        {
            return Refusal.Of($"The athlete {twice} stands twice; give every athlete an id of their own.");
        }

        Amendments asked = amendments ?? Amendments.None;
        if (
            !SlotsOfWindows
                .Of(squad, zone, from, weeks, asked.Moved)
                .TryGet(out ImmutableArray<SessionSlot> slots, out Refusal? overlap)
        )
        {
            return overlap;
        }

        PlanRequest request = new(
            from,
            weeks,
            squad.TimeZone,
            slots,
            squad.Kit,
            [.. squad.Fixtures.Where(f => f.Date >= from.PlusDays(-3) && f.Date <= from.PlusWeeks(weeks).PlusDays(3))],
            [],
            catalogue,
            [.. asked.Locks.Where(l => slots.Any(s => s.Id == l.SessionId))],
            budget ?? new SolveBudget()
        );
        LocalDate last = from.PlusWeeks(weeks).PlusDays(-1);
        LimitBook limits = LimitBook.Standard.With(squad.OverridesOf(""), from, last);
        ImmutableArray<History> own = [.. histories.Select(squad.Under)];
        LimitBook[] books = [.. own.Select(h => LimitBook.For(h, from, last))];
        request = request with
        {
            Limits = SquadLimits.From(limits),
            Overrides =
            [
                .. books
                    .Append(limits)
                    .SelectMany(b => b.InForce)
                    .Distinct()
                    .OrderBy(o => o.Limit, StringComparer.Ordinal)
                    .ThenBy(o => o.AthleteId, StringComparer.Ordinal)
                    .Select(o => Override.Of(o, limits.Find(o.Limit), last)),
            ],
            Remarks =
            [
                .. squad
                    .Policy.Where(p => !Squad.IsReportSetting(p.Key))
                    .Where(p => squad.OverridesOf("").All(o => o.Limit != p.Key))
                    .OrderBy(p => p.Key, StringComparer.Ordinal)
                    .Select(p =>
                        Sentence.Of($"squad.yaml: '{p.Key}: {p.Value}' under policy is no number, so it is not used.")
                    ),
                .. books.Append(limits).SelectMany(b => b.Remarks).Distinct(),
                .. ConditionRules.Remarks(squad),
            ],
        };
        return request with
        {
            Athletes = [.. own.Select(h => new AthleteAsking(h, squad, zone, request, asked).Build())],
        };
    }
}
