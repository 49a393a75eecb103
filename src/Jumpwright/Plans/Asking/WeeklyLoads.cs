using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// What a week may hold: with the jumps of practices and matches, and tissue by tissue against what was done before. An
/// exercise of the log that the catalogue does not know counts as tier 1 for every tissue, since less makes the growth smaller. What was
/// done in the first week up to and on the plan's first day is part of that week: a session that was begun is not planned again.
/// </summary>
internal sealed class WeeklyLoads(History history, Squad squad, PlanRequest request, LimitBook limits, int perSession)
{
    /// <summary>Tier of what was done by an exercise that nobody knows, where it takes from what is left: the highest.</summary>
    private const int UnknownTier = 3;

    private readonly IGrouping<LocalDate, SessionSlot>[] _weeks =
    [
        .. request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)).OrderBy(g => g.Key),
    ];

    private readonly int _growth = ContactCaps.WeeklyGrowth(history, limits, request.From);

    private readonly WeeklyDemand _demand = new(
        history,
        request.Catalogue,
        squad,
        limits,
        perSession,
        ContactCaps.WeeklyGrowth(history, limits, request.From)
    );

    /// <summary>The first day of which nothing can have been done yet.</summary>
    private LocalDate AfterDone => request.From.PlusDays(1);

    /// <summary>Contacts that the rulings of a day leave to a session.</summary>
    public Func<LocalDate, int> RuledOn { get; init; } = _ => int.MaxValue;

    public ImmutableArray<OtherJumping> Other => [.. _weeks.Select(w => _demand.In(w.Key))];

    public ImmutableArray<LoadCap> Caps()
    {
        if (_weeks.Length == 0)
        {
            return [];
        }

        LocalDate monday = _weeks[0].Key;
        int done = (int)_demand.AtMostDone(monday, AfterDone, null, 1);
        var caps = ImmutableArray.CreateBuilder<LoadCap>();
        int allJumping = ContactCaps.AllJumpingPerWeek(perSession, limits);
        foreach (var week in _weeks)
        {
            OtherJumping other = _demand.In(week.Key);
            if (_demand.ContactsBeside(other) is { } left)
            {
                caps.Add(
                    new(
                        "weekly-load",
                        [.. week.Select(s => s.Id)],
                        null,
                        Math.Max(0, left - (week.Key == monday ? done : 0)),
                        $"A week may hold {allJumping} contacts with all jumping, and always one session of jump training. {other.Says}"
                    )
                );
            }
        }

        if (done > 0)
        {
            int perWeek = ContactCaps.PerWeek(perSession, limits);
            caps.Add(
                new(
                    "weekly-load",
                    [.. _weeks[0].Select(s => s.Id)],
                    null,
                    Math.Max(0, perWeek - done),
                    $"{done} of the week's {perWeek} contacts were done before the plan begins."
                )
            );
        }

        foreach (Tissue tissue in Enum.GetValues<Tissue>())
        {
            int before = _demand.Before(tissue, request.From);
            int other = _demand.OtherLoad(monday);
            int always = _demand.Always;
            int grown = _demand.Grown(tissue, request.From, monday);
            double sofar = _demand.AtMostDone(monday, AfterDone, tissue, UnknownTier);
            int whole = _demand.AtMost(tissue, monday, monday);
            int most = Math.Max(always, grown);
            caps.Add(
                new(
                    "weekly-growth",
                    [.. _weeks[0].Select(s => s.Id)],
                    tissue,
                    sofar > 0 ? Math.Clamp(whole - (int)sofar, 0, most) : most,
                    sofar > 0 && whole - sofar < most
                            ? Sentence.Of(
                                $"{sofar:0} of the {whole} contacts × tier that the week may hold were done before the plan begins."
                            )
                        : grown > always
                            ? Sentence.Of(
                                $"{before} were logged a week lately; {_growth} % more are allowed, other jumping ({other}) counted in both."
                            )
                        : Sentence.Of($"So much needs no week before it ({before} were logged a week lately).")
                )
            );
        }

        caps.AddRange(Tapers(caps).ToArray());
        return caps.ToImmutable();
    }

    /// <summary>
    /// Shortly before a fixture a session is short: less work, as keen as before. What is usual is an even share of the week
    /// where that is less than what a session may hold, or the eve could hold as much as any other day; or what a ruling of
    /// that day leaves, or whoever is held to few contacts would have no shorter eve than week.
    /// </summary>
    private IEnumerable<LoadCap> Tapers(IEnumerable<LoadCap> caps) =>
        from week in _weeks
        let share = WeekHolds(week, caps) / week.Count()
        from slot in week
        let ruled = RuledOn(slot.Date)
        let usual = Math.Min(ruled, Math.Min(perSession, share))
        let next = request
            .Fixtures.Where(f => f.Date >= slot.Date && f.Date <= slot.Date.PlusDays(limits.Whole("taper-days")))
            .OrderBy(f => f.Date)
            .FirstOrDefault()
        where next is not null
        select new LoadCap(
            "taper-before-fixture",
            [slot.Id],
            null,
            (int)(usual * limits["taper-share"]),
            ruled < Math.Min(perSession, share)
                    ? Sentence.Of(
                        $"{next.Name} is on {next.Date:uuuu-MM-dd}: {100 * limits["taper-share"]:0} % of the {usual} contacts that a ruling leaves."
                    )
                : share < perSession
                    ? Sentence.Of(
                        $"{next.Name} is on {next.Date:uuuu-MM-dd}: {100 * limits["taper-share"]:0} % of the usual {usual} contacts (the week's, shared evenly)."
                    )
                : Sentence.Of(
                    $"{next.Name} is on {next.Date:uuuu-MM-dd}: {100 * limits["taper-share"]:0} % of the usual {usual} contacts."
                )
        );

    private int WeekHolds(IEnumerable<SessionSlot> week, IEnumerable<LoadCap> caps)
    {
        string[] ids = [.. week.Select(s => s.Id)];
        return caps.Where(c => c.Tissue is null && c.SessionIds.SequenceEqual(ids))
            .Select(c => c.AtMost)
            .Append(ContactCaps.PerWeek(perSession, limits))
            .Min();
    }

    public IEnumerable<LoadGrowth> Growths()
    {
        for (int i = 1; i < _weeks.Length; i++)
        {
            int other = _demand.OtherLoad(_weeks[i - 1].Key);
            int now = _demand.OtherLoad(_weeks[i].Key);
            // Other jumping counts in both weeks: it adds its share of growth, and a week with more of it leaves less.
            int step = Math.Max(0, ((100 + _growth) * other / 100) - now) + (_demand.Always / 5);
            foreach (Tissue tissue in Enum.GetValues<Tissue>())
            {
                // What was done in the first week before the plan begins is part of that week.
                int done = i == 1 ? (int)_demand.Logged(_weeks[0].Key, AfterDone, tissue, 1) : 0;
                yield return new(
                    tissue,
                    [.. _weeks[i - 1].Select(s => s.Id)],
                    [.. _weeks[i].Select(s => s.Id)],
                    _growth,
                    step + ((100 + _growth) * done / 100)
                );
            }
        }
    }
}
