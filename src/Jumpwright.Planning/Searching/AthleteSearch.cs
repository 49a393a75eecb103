using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// Local search in one athlete's plan: every move that is kept keeps every hard limit. A move changes the sets of a few menu
/// entries; it is carried out, looked at, and taken back if it breaks a limit or is not wanted (simulated annealing). Whole
/// numbers throughout; points in thousandths, so that prices of kit fit beside them.
/// </summary>
internal sealed partial class AthleteSearch
{
    private readonly ImmutableArray<Entry> _entries;
    private readonly int[] _sets;
    private readonly bool[] _frozen;
    private readonly long[] _rowUse;
    private readonly long[] _rowMost;
    private readonly int[] _goalSets;
    private readonly long[][] _goalPoints;
    private readonly int _slots;
    private readonly int[] _count;
    private readonly int[] _low;
    private readonly bool[] _lowOpen;
    private readonly int _least;
    private readonly int _most;
    private readonly long[] _gap;
    private readonly int[] _hours;
    private readonly int[] _worked;
    private readonly ImmutableArray<int>[] _ofSlot;
    private readonly int[] _dayOf;
    private readonly Dictionary<string, int[]> _ofExercise;
    private readonly ImmutableArray<int> _dependents;
    private readonly long[] _kitUse;
    private readonly long[] _kitMost;
    private readonly long[] _price;
    private readonly int[] _seconds;
    private readonly long[] _work;
    private readonly Random _random;
    private readonly List<(int Entry, int Before)> _log = [];
    private long _value;
    private Sharing? _sharing;
    private readonly int[] _group;
    private SessionFloor[]? _floors;
    private int _place;
    private FloorBlock[][] _alone = [];
    private FloorBlock[][] _paired = [];
    private readonly bool[] _moved;
    private readonly Stand[] _stood;
    private readonly FloorBlock[] _blocks = new FloorBlock[32];

    public AthleteSearch(
        PlanRequest request,
        AthleteRequest who,
        ImmutableArray<SessionSlot> slots,
        ImmutableArray<(string Key, string Session)> kit,
        int seed
    )
    {
        Who = who;
        _random = new Random(seed);
        _slots = slots.Length;
        _dayOf = [.. slots.Select(s => Period.DaysBetween(slots[0].Date, s.Date))];
        var slotIndex = slots.Select((s, i) => (s.Id, i)).ToDictionary(s => s.Id, s => s.i, StringComparer.Ordinal);
        var kitIndex = kit.Select((k, i) => (k, i)).ToDictionary(k => k.k, k => k.i);
        List<long> most = [];
        var weeks = slots.Select(s => PlanRequest.WeekOf(s.Date)).Distinct().Order().ToList();
        int Row(long limit)
        {
            most.Add(limit);
            return most.Count - 1;
        }

        int[] contacts = [.. slots.Select(s => Row(who.ContactsAtMostOn(s.Date)))];
        int[] high = [.. slots.Select(_ => Row(who.HighIntensityContactsPerSessionAtMost))];
        int[] seconds = [.. slots.Select(s => Row(request.WorkSeconds(s)))];
        _seconds = seconds;
        _work = [.. slots.Select(s => (long)request.WorkSeconds(s))];
        int[] week = [.. weeks.Select(_ => Row(who.ContactsPerWeekAtMost))];
        int[] caps = [.. who.Caps.Select(c => Row(c.AtMost))];
        int[] growths = [.. who.Growths.Select(g => Row(100L * g.Step))];
        var variants = who
            .Menu.Where(m => slotIndex.ContainsKey(m.SessionId) && Variants.KeyOf(m, request) is not null)
            .Select(m => (m.SessionId, Variants.KeyOf(m, request)!.Value))
            .Distinct()
            .ToDictionary(v => v, v => Row(Variants.AtMost(who, v.SessionId, v.Value, request)));
        _rowMost = [.. most];
        _rowUse = new long[_rowMost.Length];
        _goalPoints =
        [
            .. who.Goals.Select(g => Enumerable.Range(0, 200).Select(n => Scope.PointScale * g.PointsOf(n)).ToArray()),
        ];
        _goalSets = new int[_goalPoints.Length];
        var goalOf = who.Goals.Select((g, i) => (Key: (g.Quality, g.WeekOf), i)).ToDictionary(g => g.Key, g => g.i);
        var open = who
            .Menu.Where(m => slotIndex.ContainsKey(m.SessionId) && request.Catalogue.Find(m.ExerciseId) is not null)
            .Where(m => IsOpen(m, request, who, slots[slotIndex[m.SessionId]]))
            .OrderBy(m => slotIndex[m.SessionId])
            .ThenBy(m => m.ExerciseId, StringComparer.Ordinal)
            .ToList();
        _hours =
        [
            .. open.SelectMany(m => request.Catalogue.Find(m.ExerciseId)!.RecoveryHours.Values)
                .Where(h => h > 0)
                .Distinct()
                .Order(),
        ];
        _gap = new long[_slots * _slots];
        for (int i = 0; i < _slots; i++)
        {
            for (int j = 0; j < _slots; j++)
            {
                _gap[(i * _slots) + j] = (long)(slots[j].StartUtc - slots[i].EndUtc).TotalSeconds;
            }
        }

        // A session's low work counts as open when the menu holds any, whether or not something else closes it.
        _lowOpen =
        [
            .. slots.Select(s =>
                who.Menu.Any(m =>
                    m.SessionId == s.Id
                    && request.Catalogue.Find(m.ExerciseId) is { } e
                    && OrderOfWork.PhaseOf(e, m.Dose.DropHeightM) == 0
                )
            ),
        ];
        var at = open.Select((m, i) => (Key: (m.SessionId, m.ExerciseId), i)).ToDictionary(a => a.Key, a => a.i);
        var keeps = request.Keeps.Where(k => k.AthleteId == who.Athlete.Id).ToLookup(k => (k.SessionId, k.ExerciseId));
        Numbers numbers = new(
            contacts,
            high,
            seconds,
            week,
            caps,
            growths,
            variants,
            weeks,
            goalOf,
            kitIndex,
            at,
            keeps
        );
        _entries =
        [
            .. open.Select(m => EntryOf(m, request, slots[slotIndex[m.SessionId]], slotIndex[m.SessionId], numbers)),
        ];
        _dependents = [.. Enumerable.Range(0, _entries.Length).Where(i => _entries[i].After.Length > 0)];
        _ofExercise = _entries
            .Select((e, i) => (e.Exercise.Id, i))
            .GroupBy(e => e.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Select(e => e.i).ToArray(), StringComparer.Ordinal);
        _ofSlot =
        [
            .. Enumerable
                .Range(0, _slots)
                .Select(s =>
                    Enumerable
                        .Range(0, _entries.Length)
                        .Where(i => _entries[i].SlotIndex == s && _entries[i].Light != -2)
                        .ToImmutableArray()
                ),
        ];
        _sets = new int[_entries.Length];
        _group = new int[_entries.Length];
        _frozen = new bool[_entries.Length];
        _moved = new bool[_slots];
        _stood = new Stand[_slots];
        _count = new int[_slots];
        _low = new int[_slots];
        _least = who.ExercisesPerSessionAtLeast;
        _most = who.ExercisesPerSessionAtMost;
        _worked = new int[_slots * 4 * Math.Max(1, _hours.Length)];
        _kitUse = new long[kit.Length];
        _kitMost = new long[kit.Length];
        _price = new long[_entries.Length];
    }

    /// <summary>Where work on a tissue that needs so many hours is counted, in a session.</summary>
    private int At(int slot, int tissue, int level) => (((slot * 4) + tissue) * _hours.Length) + level;

    public AthleteRequest Who { get; }

    /// <summary>Seconds of kit in use, by the squad's kit index.</summary>
    public IReadOnlyList<long> KitUsed => _kitUse;

    /// <summary>Points in thousandths, prices left aside.</summary>
    public long Points { get; private set; }

    public IEnumerable<Chosen> Chosen =>
        from i in Enumerable.Range(0, _entries.Length)
        where _sets[i] > 0
        select new Chosen(Who, _entries[i].Slot, _entries[i].Menu, _entries[i].Exercise, _sets[i]);

    public int[] State => [.. _sets];

    /// <summary>What is done in one session.</summary>
    public IEnumerable<Chosen> ChosenIn(string sessionId) =>
        from i in Enumerable.Range(0, _entries.Length)
        where _sets[i] > 0 && _entries[i].Slot.Id == sessionId
        select new Chosen(Who, _entries[i].Slot, _entries[i].Menu, _entries[i].Exercise, _sets[i]);
}
