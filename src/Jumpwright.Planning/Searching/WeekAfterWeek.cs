using System.Collections.Immutable;
using Jumpwright.Plans;
using NodaTime;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// One athlete's plan made week after week, each by the exact model: what earlier weeks hold sets how far this one may grow
/// and which steps are open, and what later weeks gain from this one is in its objective, at the relaxation's duals. Not a proof, but
/// a plan that seldom lies a hundredth under one.
/// </summary>
internal sealed class WeekAfterWeek(Squad squad, int athlete)
{
    private const double Within = 0.001;

    private readonly PlanRequest _request = squad.Request;
    private readonly AthleteRequest _who = squad.Athletes[athlete];
    private readonly ImmutableArray<IGrouping<LocalDate, SessionSlot>> _weeks =
    [
        .. squad.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)),
    ];

    /// <summary>True when the last plan holds every week.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>The plan; it ends before the first week that found none in its time.</summary>
    /// <param name="ahead">What later weeks gain from each literal, in the parts of <paramref name="fine"/>.</param>
    /// <param name="fine">Parts of a thousandth of a point.</param>
    /// <param name="kit">Seconds of kit that may be used.</param>
    /// <param name="prices">What a second of it costs.</param>
    /// <param name="eachWeek">Deterministic time for a week.</param>
    /// <param name="sketch">Sets that each week's model tries first, by session and exercise.</param>
    public ImmutableArray<Chosen> Plan(
        ImmutableDictionary<(string Session, string Exercise, int Literal), long> ahead,
        long fine,
        ImmutableDictionary<(string Kit, string Session), long> kit,
        ImmutableDictionary<(string Kit, string Session), long> prices,
        double eachWeek,
        IReadOnlyDictionary<(string Session, string Exercise), int>? sketch = null
    )
    {
        IsWhole = true;
        ImmutableArray<Chosen> done = [];
        foreach (var week in _weeks)
        {
            (PlanRequest one, AthleteRequest own) = OneWeek.Of(_request, _who, week);
            if (own.Menu.IsEmpty)
            {
                continue;
            }

            var ids = week.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
            own = own with { Menu = [.. Opened(ids, done)], Caps = [.. own.Caps, .. Grown(ids, done)] };
            Solution solution = Solution.Of(
                SquadModel.Of(
                    one with
                    {
                        Athletes = [own],
                    },
                    Asked.All(),
                    new Scope
                    {
                        Only = [own],
                        KitSeconds = kit,
                        GroupShares = squad.GroupShares,
                        Sketch = sketch,
                        Prices = prices.Where(p => ids.Contains(p.Key.Session)).ToImmutableDictionary(),
                        Fine = fine,
                        Extra = ahead.Where(e => ids.Contains(e.Key.Session)).ToImmutableDictionary(),
                    }
                ),
                eachWeek,
                _request.Budget.WallSeconds,
                Within,
                small: true
            );
            if (solution.Points is null)
            {
                IsWhole = false;
                return done;
            }

            done = [.. done, .. solution.Chosen];
        }

        return done;
    }

    /// <summary>The week's menu; a step needs so many sessions fewer as earlier weeks hold.</summary>
    private IEnumerable<MenuItem> Opened(HashSet<string> ids, ImmutableArray<Chosen> done) =>
        from menu in _who.Menu
        where ids.Contains(menu.SessionId)
        select menu with
        {
            After =
            [
                .. from opening in menu.After
                let left = opening.Sessions - done.Count(c => c.Exercise.Id == opening.ExerciseId)
                where left > 0
                select opening with
                {
                    Sessions = left,
                },
            ],
        };

    /// <summary>Growth as caps, now that the weeks before are known.</summary>
    private IEnumerable<LoadCap> Grown(HashSet<string> ids, ImmutableArray<Chosen> done) =>
        from growth in _who.Growths
        where growth.Later.Any(ids.Contains)
        let before = done.Where(c => growth.Earlier.Contains(c.Slot.Id))
            .Sum(c => (long)c.Menu.LoadOf(c.Exercise, growth.Tissue, c.Sets))
        select new LoadCap(
            "weekly-growth-in-plan",
            growth.Later,
            growth.Tissue,
            (int)Math.Min(int.MaxValue, growth.Step + ((100L + growth.Percent) * before / 100)),
            $"Of the weeks before."
        );
}
