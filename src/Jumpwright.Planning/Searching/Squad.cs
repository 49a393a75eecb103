using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>What the parts of a search share: athletes, sessions and kit in a fixed order, and each athlete's plan so far.</summary>
internal sealed class Squad
{
    private Sharing? _sharing;

    /// <summary>The squad of a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="used">Seconds of kit that are taken already, by kit and session.</param>
    public Squad(PlanRequest request, IReadOnlyDictionary<(string Kit, string Session), long>? used = null)
    {
        Request = request;
        Athletes = [.. request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal)];
        Slots = [.. request.Slots.OrderBy(s => s.StartUtc).ThenBy(s => s.Id, StringComparer.Ordinal)];
        Kit =
        [
            .. from slot in request.Slots from key in KitUse.Keys(request) orderby slot.Id, key select (key, slot.Id),
        ];
        var slotOf = request.Slots.ToDictionary(s => s.Id, StringComparer.Ordinal);
        Most =
        [
            .. Kit.Select(k =>
                Math.Max(0, KitUse.Seconds(request, k.Key, slotOf[k.Session]) - (used?.GetValueOrDefault(k) ?? 0))
            ),
        ];
        KitSeconds = Enumerable.Range(0, Kit.Length).ToImmutableDictionary(k => Kit[k], k => Most[k]);
        // Beside others who hold kit and form groups already, a group may cost the few nothing: then they pay no share of it.
        long group = Evenness.EachGroup(request);
        GroupShares =
            group == 0 || used is not null
                ? ImmutableDictionary<(string, string), long>.Empty
                : Athletes
                    .SelectMany(a => a.Menu)
                    .GroupBy(m => (m.SessionId, m.ExerciseId))
                    .ToImmutableDictionary(g => g.Key, g => group / g.Count());
        var searches = new AthleteSearch[Athletes.Length];
        Parallel.For(
            0,
            searches.Length,
            Two(CancellationToken.None),
            i => searches[i] = new AthleteSearch(request, Athletes[i], Slots, Kit, seed: 1000 + i)
        );
        Searches = [.. searches];
    }

    public PlanRequest Request { get; }
    public ImmutableArray<AthleteRequest> Athletes { get; }
    public ImmutableArray<SessionSlot> Slots { get; }
    public ImmutableArray<(string Key, string Session)> Kit { get; }

    /// <summary>Seconds of each kit in each session that the squad may use.</summary>
    public ImmutableArray<long> Most { get; }

    /// <summary>The same by kit and session.</summary>
    public ImmutableDictionary<(string Kit, string Session), long> KitSeconds { get; }

    public ImmutableArray<AthleteSearch> Searches { get; }

    /// <summary>Menu entries of all athletes.</summary>
    public int Entries => Athletes.Sum(a => a.Menu.Length);

    /// <summary>Points of the plan so far.</summary>
    public long Points =>
        (long)Math.Floor((decimal)(Searches.Sum(s => s.Points) - (_sharing?.Cost ?? Together())) / Scope.PointScale);

    /// <summary>What an entry costs as its athlete's share of a group, in thousandths of a point: see <see cref="Scope.GroupShares"/>.</summary>
    public ImmutableDictionary<(string Session, string Exercise), long> GroupShares { get; }

    /// <summary>From now on searches count what is done side by side, and what it costs. Not for lanes that run at once.</summary>
    /// <param name="others">What others do who are not planned here.</param>
    /// <param name="request">The request of all of them.</param>
    public void Share(IEnumerable<Chosen> others, PlanRequest request)
    {
        Sharing sharing = new(request, Slots, Kit);
        if (sharing.Matters)
        {
            _sharing = sharing;
            sharing.Count(others, Slots);
            foreach (AthleteSearch search in Searches)
            {
                search.Share(sharing);
            }
        }
    }

    private long Together() =>
        Evenness.Of([.. Chosen.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets))], Request);

    public ImmutableArray<Chosen> Chosen => [.. Searches.SelectMany(s => s.Chosen)];

    /// <summary>Seconds of kit that nobody uses.</summary>
    public long[] Left()
    {
        long[] left = [.. Most];
        foreach (AthleteSearch search in Searches)
        {
            for (int k = 0; k < left.Length; k++)
            {
                left[k] -= search.KitUsed[k];
            }
        }

        return left;
    }

    /// <summary>Prices by kit and session, of those that cost anything.</summary>
    public ImmutableDictionary<(string Kit, string Session), long> ByKit(long[] prices) =>
        Enumerable
            .Range(0, prices.Length)
            .Where(k => prices[k] > 0)
            .ToImmutableDictionary(k => (Kit[k].Key, Kit[k].Session), k => prices[k]);

    /// <summary>Two lanes, so that the result is the same whatever the machine has.</summary>
    public static ParallelOptions Two(CancellationToken cancel) =>
        new() { CancellationToken = cancel, MaxDegreeOfParallelism = 2 };
}
