using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Everything a plan depends on; the planner looks at nothing else.</summary>
public sealed record PlanRequest(
    LocalDate From,
    int Weeks,
    string TimeZone,
    ImmutableArray<SessionSlot> Slots,
    ImmutableArray<KitCount> Kit,
    ImmutableArray<Fixture> Fixtures,
    ImmutableArray<AthleteRequest> Athletes,
    Catalogue Catalogue,
    ImmutableArray<LockedItem> Locks,
    SolveBudget Budget
)
{
    /// <summary>What a coach asked for by name.</summary>
    public ImmutableArray<Wish> Wishes { get; init; } = [];

    /// <summary>What it is worth that items of an earlier plan stay.</summary>
    public ImmutableArray<KeepWish> Keeps { get; init; } = [];

    /// <summary>Limits that hold for the whole squad.</summary>
    public SquadLimits Limits { get; init; } = new();

    /// <summary>Limits that somebody overrode.</summary>
    public ImmutableArray<Override> Overrides { get; init; } = [];

    /// <summary>What was asked of limits and does not hold, each as a sentence that says why.</summary>
    public ImmutableArray<Sentence> Remarks { get; init; } = [];

    /// <summary>Monday of the week of that day: the week in which contacts and goals are counted.</summary>
    public static LocalDate WeekOf(LocalDate day) => day.PlusDays(1 - (int)day.DayOfWeek);

    /// <summary>Whether work of that athlete is logged in that session already.</summary>
    public bool HasBegun(string athleteId, string sessionId) =>
        Athletes.FirstOrDefault(a => a.Athlete.Id == athleteId)?.Begun.Contains(sessionId) == true;

    /// <summary>The quality an exercise trains first; null when the catalogue does not know it or it trains none.</summary>
    public Quality? Trains(string exerciseId) =>
        Catalogue.Find(exerciseId) is { Trains.IsEmpty: false } exercise ? exercise.Trains[0] : null;

    /// <summary>An athlete as people call them; the id where the request doesn't hold them.</summary>
    public string NameOf(string athleteId) =>
        Athletes.FirstOrDefault(a => a.Athlete.Id == athleteId)?.Athlete.Name ?? athleteId;

    /// <summary>How many of a piece of kit the squad has.</summary>
    public int CountOf(string kitId) => Kit.Where(k => k.Id == kitId).Sum(k => k.Count);

    /// <summary>Seconds of a session in which stations run.</summary>
    public int UsableSeconds(SessionSlot slot) => (int)Math.Floor(((slot.Minutes - Limits.OpeningMinutes) * 60) + 1e-6);

    /// <summary>Seconds of a session that an athlete's own work and changes may fill; the rest is for waiting.</summary>
    public int WorkSeconds(SessionSlot slot) =>
        UsableSeconds(slot) - (int)Math.Ceiling((Limits.WaitingMinutes * 60) - 1e-6);

    /// <summary>Seconds for which all pieces of a kit together may be planned in a session.</summary>
    public int KitSeconds(string kitId, SessionSlot slot) =>
        (int)Math.Floor((CountOf(kitId) * UsableSeconds(slot) * Limits.KitShareAtMost) + 1e-6);

    /// <summary>Seconds for which all pieces of a kit together may be planned in a session by work that must be done fresh.</summary>
    public int FreshKitSeconds(string kitId, SessionSlot slot) =>
        (int)Math.Floor((CountOf(kitId) * UsableSeconds(slot) * Limits.FreshKitShareAtMost) + 1e-6);

    /// <summary>Second of the session, from its start, by which what must be done fresh has begun.</summary>
    public int FreshUntil(SessionSlot slot) =>
        (slot.Minutes * 60)
        - UsableSeconds(slot)
        + (int)Math.Floor((UsableSeconds(slot) * Limits.FreshWithinShare) + 1e-6);

    /// <summary>Seconds of changing over before every item.</summary>
    public int ChangeOverSeconds => (int)Math.Ceiling((Limits.ChangeOverMinutes * 60) - 1e-6);
}
