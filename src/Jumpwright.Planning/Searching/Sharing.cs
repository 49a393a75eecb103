using System.Collections.Immutable;
using System.Numerics;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// What the squad does side by side, while plans change: how many do each exercise of each session, and the kit in use; and what
/// that costs (<see cref="Evenness"/>), in thousandths of a point. Not for two lanes at once.
/// </summary>
internal sealed class Sharing
{
    private readonly long _group;
    private readonly long _staff;
    private readonly long _kit;
    private readonly ImmutableArray<(string Key, string Session)> _kits;
    private readonly Dictionary<string, int> _exercise;
    private readonly int[] _doing;
    private readonly int[] _open;
    private readonly long[] _seconds;
    private readonly int[][] _week;
    private readonly int[][] _weekOfKit;

    public Sharing(
        PlanRequest request,
        ImmutableArray<SessionSlot> slots,
        ImmutableArray<(string Key, string Session)> kits
    )
    {
        _group = Evenness.EachGroup(request);
        _staff = Evenness.UnevenStaff(request);
        _kit = Evenness.UnevenKit(request);
        _kits = kits;
        _exercise = request
            .Catalogue.Exercises.Select((e, i) => (e.Id, i))
            .ToDictionary(e => e.Id, e => e.i, StringComparer.Ordinal);
        _doing = new int[slots.Length * _exercise.Count];
        _open = new int[slots.Length];
        _seconds = new long[kits.Length];
        var weekOf = slots.Select(s => PlanRequest.WeekOf(s.Date)).ToList();
        _week = [.. weekOf.Select(w => Enumerable.Range(0, slots.Length).Where(s => weekOf[s] == w).ToArray())];
        var weekOfSession = slots
            .Select((s, i) => (s.Id, i))
            .ToDictionary(s => s.Id, s => weekOf[s.i], StringComparer.Ordinal);
        var sameWeek = Enumerable
            .Range(0, kits.Length)
            .Where(k => KitUse.KitOf(kits[k].Key) == kits[k].Key)
            .GroupBy(k => (kits[k].Key, weekOfSession[kits[k].Session]))
            .SelectMany(g => g.Select(k => (k, All: g.ToArray())))
            .ToDictionary(k => k.k, k => k.All);
        // Work that must be done fresh stands among all work already: only that is counted.
        _weekOfKit =
        [
            .. Enumerable.Range(0, kits.Length).Select(k => _kit > 0 ? sameWeek.GetValueOrDefault(k, []) : []),
        ];
    }

    /// <summary>False when nothing of it costs anything.</summary>
    public bool Matters => _group > 0 || _staff > 0 || _kit > 0;

    /// <summary>What it costs now.</summary>
    public long Cost { get; private set; }

    /// <summary>Where an exercise of a session is counted.</summary>
    public int GroupOf(int slot, string exerciseId) => (slot * _exercise.Count) + _exercise[exerciseId];

    /// <summary>One more, or one less, does an exercise in a session.</summary>
    public void Do(int slot, int group, int more)
    {
        int before = _doing[group];
        _doing[group] += more;
        int opened = (before + more > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
        if (opened == 0)
        {
            return;
        }

        Cost += (opened * _group) - (_staff * Spread(_week[slot], _open));
        _open[slot] += opened;
        Cost += _staff * Spread(_week[slot], _open);
    }

    /// <summary>So many seconds more, or less, of a kit in a session, by the squad's kit index.</summary>
    public void Use(int kit, long seconds)
    {
        int[] week = _weekOfKit[kit];
        if (week.Length > 1)
        {
            Cost -= _kit * Evenness.Minutes(Spread(week, _seconds));
            _seconds[kit] += seconds;
            Cost += _kit * Evenness.Minutes(Spread(week, _seconds));
        }
    }

    /// <summary>Counts what others do who are not planned here.</summary>
    public void Count(IEnumerable<Chosen> others, ImmutableArray<SessionSlot> slots)
    {
        ImmutableArray<Chosen> all = [.. others];
        foreach (Chosen other in all)
        {
            int slot = slots.IndexOf(other.Slot);
            Do(slot, GroupOf(slot, other.Exercise.Id), 1);
        }

        foreach ((var key, long seconds) in KitUse.Of(all))
        {
            int kit = _kits.IndexOf(key);
            if (kit >= 0)
            {
                Use(kit, seconds);
            }
        }
    }

    /// <summary>Greatest less least of some of the values.</summary>
    private static long Spread<T>(int[] some, T[] values)
        where T : struct, IComparable<T>, INumberBase<T>
    {
        T high = values[some[0]];
        T low = high;
        foreach (int k in some)
        {
            high = values[k].CompareTo(high) > 0 ? values[k] : high;
            low = values[k].CompareTo(low) < 0 ? values[k] : low;
        }

        return long.CreateChecked(high - low);
    }
}
