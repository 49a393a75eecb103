using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Sessions;

/// <summary>The room's door: a plan in, what is printed out.</summary>
public static class Cards
{
    private const string LoggedPain = "logged-pain";

    /// <summary>One card for every athlete of every session, those with nothing planned included.</summary>
    public static ImmutableArray<SessionCard> Of(
        Plan plan,
        PlanRequest request,
        Squad squad,
        ImmutableArray<History> histories
    ) =>
        [
            .. from session in plan.Sessions
            from history in histories
            select CardOf(plan, request, session, history.Athlete),
        ];

    /// <summary>One sheet a session.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">What was asked of it.</param>
    /// <param name="squad">Whose it is.</param>
    /// <param name="histories">Everybody, in the squad's order.</param>
    /// <param name="cards">The cards of the plan as they stand: whoever was closed since has no turn on a sheet, and the reason.</param>
    public static ImmutableArray<CoachSheet> SheetsOf(
        Plan plan,
        PlanRequest request,
        Squad squad,
        ImmutableArray<History> histories,
        ImmutableArray<SessionCard> cards
    )
    {
        ILookup<string, SessionCard> closed = cards.Where(c => c.IsClosedSince).ToLookup(c => c.SessionId);
        return
        [
            .. Standing(plan, cards)
                .Select(session =>
                    CoachSheets.Of(plan, request, squad, session, histories, [.. closed[session.Slot.Id]])
                ),
        ];
    }

    /// <summary>The plan's sessions as they stand: whoever was closed since has neither work nor a turn in them. The plan itself stays as it was checked.</summary>
    public static ImmutableArray<PlannedSession> Standing(Plan plan, ImmutableArray<SessionCard> cards)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ILookup<string, string> closed = cards
            .Where(c => c.IsClosedSince)
            .ToLookup(c => c.SessionId, c => c.AthleteId, StringComparer.Ordinal);
        return
        [
            .. plan.Sessions.Select(session =>
                closed[session.Slot.Id].ToHashSet(StringComparer.Ordinal) is { Count: > 0 } gone
                    ? Without(session, gone)
                    : session
            ),
        ];
    }

    private static PlannedSession Without(PlannedSession session, HashSet<string> gone) =>
        session with
        {
            Athletes = [.. session.Athletes.Where(a => !gone.Contains(a.AthleteId))],
            Rotation =
            [
                .. session
                    .Rotation.Select(r => r with { AthleteIds = [.. r.AthleteIds.Where(a => !gone.Contains(a))] })
                    .Where(r => !r.AthleteIds.IsEmpty),
            ],
        };

    private static SessionCard CardOf(Plan plan, PlanRequest request, PlannedSession session, Athlete athlete)
    {
        ImmutableArray<PlannedItem> items =
            session.Athletes.FirstOrDefault(a => a.AthleteId == athlete.Id)?.Items ?? [];
        Nothing? nothing = items.IsEmpty ? Nothing.For(athlete, request, session) : null;
        return new SessionCard(
            athlete.Id,
            athlete.Name,
            session.Slot.Date,
            session.Slot.Id,
            session.Slot.Start,
            nothing is null ? CardWords.Headline(items, request.Catalogue) : Sentence.Of($"No jumps in this session."),
            nothing?.OnCard,
            nothing is null ? CardQuestions.For(items, request.Catalogue) : [],
            [.. items.Select(item => ItemOf(item, items, request.Catalogue))],
            items.Sum(i => i.Contacts),
            nothing is null ? CardWords.LandingLines : [],
            CardWords.StopAtOnce,
            CardWords.Caution,
            MadeBy(request, session.Slot)
        )
        {
            NothingInShort = nothing?.OnFloor,
            WhyNothing = nothing?.Reason,
            IsShut = nothing?.IsShut ?? false,
            PainStopsAbove = CardQuestions.StopAboveFor(items),
        };
    }

    /// <summary>
    /// A card made before rulings that came since: nothing of it is done any more, until there is another plan. Where one of them plans nothing,
    /// the card says so; of the day's own session it is closed only by what is no log of that session, for the floor has its own stops.
    /// </summary>
    /// <param name="card">As it was made.</param>
    /// <param name="since">Rulings of the athlete that came since.</param>
    /// <param name="today">The day they are of.</param>
    public static SessionCard Since(SessionCard card, ImmutableArray<Ruling> since, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(card);
        Ruling[] news = [.. since.Where(r => card.Date > today || (card.Date == today && r.LimitId != LoggedPain))];
        Nothing? nothing =
            Nothing.ShutBy(news) ?? (news.Length > 0 && card.Date > today ? Nothing.PlannedBefore : null);
        return nothing is null ? card : Closed(card, nothing);
    }

    /// <summary>A card that something closed after it was planned; one with nothing planned stays as it is.</summary>
    public static SessionCard PlannedBefore(SessionCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return Closed(card, Nothing.PlannedBefore);
    }

    private static SessionCard Closed(SessionCard card, Nothing nothing) =>
        card.NothingPlanned is not null
            ? card
            : card with
            {
                Headline = Sentence.Of($"No jumps in this session."),
                NothingPlanned = nothing.OnCard,
                Questions = [],
                Items = [],
                TotalContacts = 0,
                LandingLines = [],
                NothingInShort = nothing.OnFloor,
                WhyNothing = nothing.Reason,
                IsShut = true,
                IsClosedSince = true,
            };

    /// <summary>As much of how an exercise is set up as a card has room for, in whichever language.</summary>
    public static string SetUp(string whole) => CardWords.SetUp(whole);

    private static CardItem ItemOf(PlannedItem item, ImmutableArray<PlannedItem> all, Catalogue catalogue)
    {
        Exercise exercise =
            catalogue.Find(item.Dose.ExerciseId)
            ?? throw new InvalidOperationException($"'{item.Dose.ExerciseId}' is planned but not in the catalogue.");
        Exercise? partner = item.Pair is null
            ? null
            : all.Where(other => other.Pair == item.Pair && other.Dose.ExerciseId != item.Dose.ExerciseId)
                .Select(other => catalogue.Find(other.Dose.ExerciseId))
                .FirstOrDefault();
        return new CardItem(
            exercise.Id,
            exercise.Name,
            CardWords.Why(item, exercise),
            SetUp(exercise.SetUp),
            exercise.Cues[0],
            CardWords.Amount(item.Dose, item.Sets),
            CardWords.HeightOrLoad(item.Dose),
            CardWords.Rest(item, partner),
            CardWords.StopWhen(item.Dose.Stop),
            CardWords.OwnStop(exercise),
            CardWords.Instead(item.Dose, item.Sets, catalogue),
            item.Sets,
            item.Contacts
        );
    }

    /// <summary>What made it, so that it can be made again: version, first day of the plan and session; whose it is stands at its head.</summary>
    internal static Sentence MadeBy(PlanRequest request, SessionSlot slot) =>
        $"Made by Jumpwright {ProductVersion.Current}: plan from {request.From}, session on {slot.Date} at {slot.Start:HH:mm}";
}
