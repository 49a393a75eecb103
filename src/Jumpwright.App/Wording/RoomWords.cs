using Jumpwright.App.Desk;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// The room a plan leaves, in contacts: of the week, and of each tissue at the hardest tier that is open, so that one contact is one
/// contact whatever it is of. Where a ruling closes all jumps there is none, whatever a limit would still hold.
/// </summary>
internal static class RoomWords
{
    /// <summary>The hardest tier of demand there is.</summary>
    private const int Hardest = 3;

    /// <summary>The limit of the week that everybody expects; another one that binds is named.</summary>
    private const string Expected = "contacts-per-week";

    /// <summary>For example <c>82 contacts left in the week; of the hardest (tier 3): Achilles 60, bone 41.</c></summary>
    public static IEnumerable<Piece> Of(PlannedWeek week, string athleteId) =>
        Of(week.Request, athleteId, week.Plan.Limits.Where(l => l.AthleteId == athleteId));

    /// <summary>The same of an athlete's own readings.</summary>
    public static IEnumerable<Piece> Of(PlanRequest request, string athleteId, IEnumerable<LimitReading> readings)
    {
        AthleteRequest? asked = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athleteId);
        Ruling[][] days =
        [
            .. request
                .Slots.Select(s => s.Date)
                .Distinct()
                .Select(d => asked is null ? [] : asked.RulingsOn(d).ToArray()),
        ];
        return asked is not null && !asked.Menu.Any(m => m.Dose.Contacts(1) > 0)
            ? Closed(days)
            : Open(days, [.. readings.Where(l => l.Sense != "at-least")]);
    }

    /// <summary>Whether any exercise that costs contacts is open to an athlete.</summary>
    public static bool IsOpen(PlanRequest request, string athleteId) =>
        request.Athletes.FirstOrDefault(a => a.Athlete.Id == athleteId) is not { } asked
        || asked.Menu.Any(m => m.Dose.Contacts(1) > 0);

    /// <summary>How far a limit is used; null where there was nothing to count.</summary>
    public static double? Reached(LimitReading reading) =>
        reading.Sense == "at-least" ? reading.Lowest : reading.Highest;

    /// <summary>What is left of a limit, in its own unit; null where there was nothing to count.</summary>
    public static double? Left(LimitReading reading) =>
        Reached(reading) is not { } reached ? null
        : reading.Sense == "at-least" ? reached - reading.Limit
        : reading.Limit - reached;

    /// <summary>Nothing that jumps is open: by what, the widest ruling first.</summary>
    private static IEnumerable<Piece> Closed(Ruling[][] days)
    {
        Ruling[] all = [.. days.SelectMany(d => d)];
        Ruling[] closing = [.. all.Where(r => r.Effect is NothingPlanned)];
        closing = closing.Length > 0 ? closing : [.. all.Where(r => r.Effect is NoJumps or TierAtMost { Tier: 0 })];
        closing = closing.Length > 0 ? closing : [.. all.Where(r => r.Effect is OnlyExercises or TierAtMost)];
        return closing.Length == 0
            ? [new(T["room.closed"])]
            :
            [
                new(T["room.closed-by"] + " "),
                SpokenSentences.Of(Sentence.Join(", ", closing.Select(r => LimitNames.Of(r.LimitId)).Distinct())),
                new("."),
            ];
    }

    private static IEnumerable<Piece> Open(Ruling[][] days, LimitReading[] limits)
    {
        if (limits.Where(l => l is { Unit: "contacts", Period: "week" }).MinBy(Room) is not { } binding)
        {
            yield return new(T["room.none"]);
            yield break;
        }

        double all = Math.Max(0, Room(binding));
        yield return new(Counted("room.of", (int)Math.Round(all)));
        if (binding.Id != Expected && limits.Any(l => l.Id == Expected && Room(l) > Room(binding)))
        {
            yield return new(" (");
            yield return SpokenSentences.Of(LimitNames.Of(binding.Id));
            yield return new(")");
        }

        if (all > 0)
        {
            foreach (string tissues in OfTissues(days, limits, all))
            {
                yield return new("; " + tissues);
            }
        }

        yield return new(".");
    }

    /// <summary>The contacts that each tissue has room for at the hardest tier that is open to it, the hardest first.</summary>
    private static IEnumerable<string> OfTissues(Ruling[][] days, LimitReading[] limits, double all) =>
        from tissue in Enum.GetValues<Tissue>()
        let room = RoomOn(limits, tissue)
        where room is not null
        let tier = TierOf(days, tissue)
        let left = tier == 0 ? 0 : Math.Max(0, Math.Min(all, Math.Floor(room.Value / tier)))
        group tier == 0 ? Spoken.Of(tissue) : $"{Spoken.Of(tissue)} {left:0}" by tier into alike
        orderby alike.Key descending
        let said = string.Join(", ", alike)
        select alike.Key switch
        {
            0 => T["room.tier.none", said],
            Hardest => T["room.tier.hardest", Hardest, said],
            _ => T["room.tier.open", alike.Key, said],
        };

    private static double Room(LimitReading limit) => limit.Limit - (limit.Highest ?? 0);

    private static double? RoomOn(LimitReading[] limits, Tissue tissue) =>
        limits
            .Where(l => l.Id.EndsWith("-" + tissue.ToString().ToLowerInvariant(), StringComparison.Ordinal))
            .Select(l => (double?)Room(l))
            .Min();

    /// <summary>The hardest tier that is open on any day of the plan.</summary>
    private static int TierOf(Ruling[][] days, Tissue tissue) =>
        days.Length == 0
            ? Hardest
            : days.Max(day =>
                day.Select(r =>
                        r.Effect switch
                        {
                            NothingPlanned => 0,
                            TierAtMost at when at.Tissue == tissue => at.Tier,
                            NoHighIntensity => Hardest - 1,
                            _ => Hardest,
                        }
                    )
                    .Append(Hardest)
                    .Min()
            );
}
