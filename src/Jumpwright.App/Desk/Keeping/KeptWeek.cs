using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.App.Desk.Keeping;

/// <summary>
/// A plan as the store keeps it, so that it is there again after the program was closed. What was asked of it is not kept but asked
/// again of what is known now; what was known of rulings then is kept, so that whatever came since closes.
/// </summary>
/// <param name="Version">The version that planned.</param>
/// <param name="Asked">Print of what was asked (<see cref="AskedPrint"/>).</param>
/// <param name="CheckedAt">When its limits were checked.</param>
/// <param name="Plan">The plan as it was checked.</param>
/// <param name="Changes">What was otherwise than in the plan before; null when there was none.</param>
/// <param name="Known">Rulings that it was made under.</param>
/// <param name="Closed">Who was closed of what since.</param>
internal sealed record KeptWeek(
    string Version,
    string Asked,
    Instant? CheckedAt,
    Plan Plan,
    ImmutableArray<PlanChange>? Changes,
    ImmutableArray<KeptRuling> Known,
    ImmutableArray<KeptClosing> Closed
)
{
    public static KeptWeek Of(PlannedWeek week) =>
        new(
            ProductVersion.Current,
            AskedPrint.Of(week.Request),
            week.CheckedAt,
            week.Plan,
            week.Changes,
            [.. week.Request.Athletes.SelectMany(KeptRuling.Of)],
            [.. week.Cards.Where(c => c.IsClosedSince).Select(c => new KeptClosing(c.SessionId, c.AthleteId))]
        );

    public string Write() => JsonSerializer.Serialize(this, KeptJson.Options);

    /// <summary>A kept plan; null where this version can't read it.</summary>
    public static KeptWeek? Read(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<KeptWeek>(json, KeptJson.Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The plan with its cards and sheets as they stand today; null where it is of others, or of exercises that are no more.</summary>
    /// <param name="request">The same asked again, of what is known now.</param>
    /// <param name="material">What is known now.</param>
    /// <param name="leaves">And what follows from it for the day.</param>
    /// <param name="day">The day the decisions are for.</param>
    public PlannedWeek? Again(
        PlanRequest request,
        SquadMaterial material,
        ImmutableArray<AthleteLeaf> leaves,
        LocalDate day
    )
    {
        AthleteSession[] all = [.. Plan.Sessions.SelectMany(s => s.Athletes)];
        var now = leaves.ToDictionary(l => l.Athlete.Id, StringComparer.Ordinal);
        if (
            !all.All(a => now.ContainsKey(a.AthleteId))
            || !all.SelectMany(a => a.Items).All(i => request.Catalogue.Find(i.Dose.ExerciseId) is not null)
        )
        {
            return null;
        }

        if (Plan.Status is not (PlanStatus.Optimal or PlanStatus.Feasible))
        {
            return new PlannedWeek(request, Plan, [], []) { CheckedAt = CheckedAt, Changes = Changes };
        }

        var closed = Closed.ToHashSet();
        ILookup<string, KeptRuling> known = Known.ToLookup(k => k.AthleteId, StringComparer.Ordinal);
        PlannedWeek made = new(
            request,
            Plan,
            Cards.Of(Plan, request, material.Squad, material.Histories),
            Cards.SheetsOf(Plan, request, material.Squad, material.Histories, [])
        )
        {
            CheckedAt = CheckedAt,
            Changes = Changes,
        };
        ImmutableArray<SessionCard> cards =
        [
            .. made.Cards.Select(card =>
            {
                ImmutableArray<Ruling> since = Since(now[card.AthleteId], known[card.AthleteId], day);
                // What came while the program was closed came before the day's session, unless that has begun: then the floor has its own stops.
                LocalDate from = request.HasBegun(card.AthleteId, card.SessionId) ? day : day.PlusDays(-1);
                SessionCard standing = Cards.Since(card, since, from);
                return closed.Contains(new(card.SessionId, card.AthleteId)) ? Cards.PlannedBefore(standing) : standing;
            }),
        ];
        return cards.Any(c => c.IsClosedSince) ? made.After(cards, material) : made;
    }

    /// <summary>Whether what the plan depends on is what it was.</summary>
    public bool IsAskedTheSame(PlanRequest request) =>
        Asked == AskedPrint.Of(request) && Version == ProductVersion.Current;

    private static ImmutableArray<Ruling> Since(AthleteLeaf now, IEnumerable<KeptRuling> known, LocalDate day)
    {
        HashSet<string> then = [.. known.Where(k => k.Days.Contains(day)).Select(k => k.Because)];
        return [.. now.Rulings.Where(r => !then.Contains(r.Because.ToString()))];
    }
}
