using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// Places the turns of a session one by one, in the order of their planned starts: who waited moves up, who has no piece of kit waits for
/// another. Where kit is short, a turn that would come too late is not begun at all, so that nobody waits for it.
/// </summary>
internal sealed class FloorTurns
{
    /// <summary>Two times that are nearer than this are one, in minutes.</summary>
    private const double Same = 1e-6;

    private readonly FloorKit _kit;
    private readonly double _changeOver;
    private readonly ILookup<string, FloorNeeds> _needs;
    private readonly List<FloorTurn> _made = [];
    private readonly Dictionary<string, List<FloorTurn>> _before = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _freeFrom = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, string), FloorCutReason> _notBegun = [];
    private readonly Dictionary<RotationEntry, Bout> _bouts;

    /// <summary>Places all turns of a session.</summary>
    /// <param name="rotation">The turns as planned.</param>
    /// <param name="needs">What each item that is left needs.</param>
    /// <param name="here">Who is here.</param>
    /// <param name="gone">Athletes and exercises that are left out already.</param>
    /// <param name="kit">The kit of the day.</param>
    /// <param name="until">When the session ends, min, where kit is short; null where it is not.</param>
    /// <param name="fresh">Until when what must be done fresh begins, min.</param>
    /// <param name="changeOver">Minutes in which somebody changes from one exercise to the next, at the least.</param>
    public FloorTurns(
        ImmutableArray<RotationEntry> rotation,
        ImmutableArray<(string AthleteId, FloorNeeds Needs)> needs,
        HashSet<string> here,
        HashSet<(string, string)> gone,
        FloorKit kit,
        double? until,
        double fresh,
        double changeOver
    )
    {
        _kit = kit;
        _changeOver = changeOver;
        _needs = needs.ToLookup(n => n.AthleteId, n => n.Needs, StringComparer.Ordinal);
        RotationEntry[] turns =
        [
            .. rotation
                .OrderBy(r => r.StartMin)
                .ThenBy(r => r.Station, StringComparer.Ordinal)
                .ThenBy(r => r.ExerciseId, StringComparer.Ordinal)
                .ThenBy(r => r.AthleteIds[0], StringComparer.Ordinal),
        ];
        _bouts = until is null ? [] : BoutsOf(turns);
        foreach (RotationEntry entry in turns)
        {
            Place(
                entry,
                [
                    .. entry.AthleteIds.Where(a =>
                        here.Contains(a)
                        && !gone.Contains((a, entry.ExerciseId))
                        && !_notBegun.ContainsKey((a, entry.ExerciseId))
                    ),
                ],
                until,
                fresh
            );
        }
    }

    /// <summary>The turns that somebody is left for.</summary>
    public IEnumerable<FloorTurn> Left => _made.Where(t => !t.Here.IsEmpty);

    /// <summary>What is not begun, since it would come too late with the kit of today.</summary>
    public IReadOnlyDictionary<(string Athlete, string Exercise), FloorCutReason> NotBegun => _notBegun;

    private void Place(RotationEntry entry, ImmutableArray<string> who, double? until, double fresh)
    {
        string[] planned = entry.Station.Split('+');
        double up = UpBy(entry, planned, who);
        FloorTurn turn =
            until is { } end && !who.IsEmpty
                ? WithKitOfToday(entry, planned, who, up, end, fresh)
                : AsPlanned(entry, who, up);
        _made.Add(turn);
        foreach (string key in Shared(planned, who))
        {
            if (!_before.TryGetValue(key, out List<FloorTurn>? there))
            {
                _before[key] = there = [];
            }

            there.Add(turn);
        }
    }

    /// <summary>By how many minutes a turn moves up: as much as all it waits for allow.</summary>
    private double UpBy(RotationEntry entry, string[] planned, ImmutableArray<string> who)
    {
        double? sooner = null;
        foreach (string key in Shared(planned, who))
        {
            foreach (FloorTurn p in Before(key, entry))
            {
                double by = p.Entry.EndMin - p.End;
                sooner = sooner is { } s ? Math.Min(s, by) : by;
            }
        }

        return Math.Max(0, sooner ?? 0);
    }

    /// <summary>From when somebody who may be late can go on: after the rest that was planned, or the time of changing over where that is less.</summary>
    private double Rested(RotationEntry entry, ImmutableArray<string> who) =>
        who.SelectMany(w => Before("athlete " + w, entry))
            .Select(p => p.End + Math.Min(entry.StartMin - p.Entry.EndMin, _changeOver))
            .DefaultIfEmpty(0)
            .Max();

    private IEnumerable<FloorTurn> Before(string key, RotationEntry entry) =>
        _before.TryGetValue(key, out List<FloorTurn>? there)
            ? there.Where(p => p.Entry.EndMin <= entry.StartMin + Same)
            : [];

    /// <summary>At its own station, and never later than planned; it takes no time where nobody is left for it.</summary>
    private static FloorTurn AsPlanned(RotationEntry entry, ImmutableArray<string> who, double up)
    {
        double start = entry.StartMin - up;
        return new(entry, who, entry.Station, start, who.IsEmpty ? start : entry.EndMin - up);
    }

    private static IEnumerable<string> Shared(string[] planned, ImmutableArray<string> who) =>
        planned.Select(p => "piece " + p).Concat(who.Select(w => "athlete " + w));

    private FloorTurn WithKitOfToday(
        RotationEntry entry,
        string[] planned,
        ImmutableArray<string> who,
        double up,
        double until,
        double fresh
    )
    {
        Bout bout = _bouts[entry];
        if (bout.Pieces is null)
        {
            FloorNeeds[] needs = [.. who.SelectMany(a => _needs[a].Where(n => bout.Exercises.Contains(n.ExerciseId)))];
            double start = Math.Max(entry.StartMin - up, Rested(entry, who));
            bout.Pieces = PiecesOf(planned, needs, start);
            start = (bout.Pieces ?? planned).Select(p => _freeFrom.GetValueOrDefault(p)).Append(start).Max();
            bout.Later = start - entry.StartMin;
            double end = bout.End + bout.Later;
            FloorCutReason? reason =
                bout.Pieces is null ? FloorCutReason.KitMissing
                : end > until + Same ? FloorCutReason.NotOverInTime
                : needs.Any(n => n.IsFresh) && start > fresh + Same ? FloorCutReason.NotFreshByThen
                : null;
            if (reason is { } late)
            {
                foreach (string exercise in bout.Exercises)
                {
                    foreach (string athlete in who)
                    {
                        _notBegun.TryAdd((athlete, exercise), late);
                    }
                }

                return AsPlanned(entry, [], up);
            }

            foreach (string piece in bout.Pieces!.Where(p => FloorKit.Read(p).Number > 0))
            {
                _freeFrom[piece] = end;
            }
        }

        return new(
            entry,
            who,
            bout.Pieces is { Length: > 0 } pieces ? string.Join('+', pieces) : "floor",
            entry.StartMin + bout.Later,
            entry.EndMin + bout.Later
        );
    }

    /// <summary>The pieces of a turn with the kit of today: for one that is missing the one that is free first; null where there are too few.</summary>
    private string[]? PiecesOf(string[] planned, FloorNeeds[] needs, double start)
    {
        if (!planned.Any(_kit.Misses))
        {
            return planned;
        }

        List<string> pieces = [.. planned.Where(p => !_kit.Misses(p))];
        foreach (string lost in planned.Where(_kit.Misses))
        {
            (string kind, _) = FloorKit.Read(lost);
            // A partner that is left out leaves its kit behind.
            if (!needs.Any(n => n.Kit.Any(k => k.Id == kind)))
            {
                continue;
            }

            string? other = Enumerable
                .Range(1, _kit.CountOf(kind))
                .Select(n => $"{kind}-{n}")
                .Where(p => !pieces.Contains(p))
                .MinBy(p => Math.Max(start, _freeFrom.GetValueOrDefault(p)));
            if (other is null)
            {
                return null;
            }

            pieces.Add(other);
        }

        pieces.Sort(StringComparer.Ordinal);
        return [.. pieces];
    }

    /// <summary>Turns that belong together: those of a pair, one after the other at one station; any other turn by itself.</summary>
    private Dictionary<RotationEntry, Bout> BoutsOf(RotationEntry[] turns)
    {
        Dictionary<RotationEntry, Bout> bouts = new(ReferenceEqualityComparer.Instance);
        Dictionary<string, RotationEntry> last = new(StringComparer.Ordinal);
        foreach (RotationEntry turn in turns)
        {
            bool goesOn =
                turn.AthleteIds is [var only]
                && last.TryGetValue(only, out RotationEntry? before)
                && before.AthleteIds.Length == 1
                && before.Station == turn.Station
                && before.ExerciseId != turn.ExerciseId
                && _needs[only]
                    .Any(n =>
                        (n.ExerciseId == before.ExerciseId && n.OnlyWith == turn.ExerciseId)
                        || (n.ExerciseId == turn.ExerciseId && n.OnlyWith == before.ExerciseId)
                    );
            Bout bout = goesOn ? bouts[last[turn.AthleteIds[0]]] : new Bout();
            bout.Exercises.Add(turn.ExerciseId);
            bout.End = Math.Max(bout.End, turn.EndMin);
            bouts[turn] = bout;
            foreach (string athlete in turn.AthleteIds)
            {
                last[athlete] = turn;
            }
        }

        return bouts;
    }

    /// <summary>Turns that are placed together.</summary>
    private sealed class Bout
    {
        /// <summary>What is done in them, in their order.</summary>
        public List<string> Exercises { get; } = [];

        /// <summary>When the last of them was planned to end, min.</summary>
        public double End { get; set; }

        /// <summary>Their pieces of kit once the first is placed.</summary>
        public string[]? Pieces { get; set; }

        /// <summary>By how much they begin later than planned, min.</summary>
        public double Later { get; set; }
    }
}
