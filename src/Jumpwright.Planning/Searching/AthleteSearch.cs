using System.Collections.Immutable;
using Jumpwright.Exercises;
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
internal sealed class AthleteSearch
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
    private readonly long[,] _gap;
    private readonly int[] _hours;
    private readonly int[,,] _worked;
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
    private readonly bool[] _touched;
    private int _done;
    private long _value;

    /// <summary>One menu entry in numbers.</summary>
    private sealed record Entry(
        MenuItem Menu,
        Exercise Exercise,
        SessionSlot Slot,
        int SlotIndex,
        int Min,
        int Max,
        long[] Points,
        int Goal,
        (int Row, int Each, int Once)[] Rows,
        (int Kit, int Each)[] Kit,
        int[] Level,
        bool Low,
        bool NeedsLow,
        int Heavy,
        int Light,
        long PairPoints,
        (string ExerciseId, int Sessions)[] After
    );

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
        _gap = new long[_slots, _slots];
        for (int i = 0; i < _slots; i++)
        {
            for (int j = 0; j < _slots; j++)
            {
                _gap[i, j] = (long)(slots[j].StartUtc - slots[i].EndUtc).TotalSeconds;
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
        _entries =
        [
            .. open.Select(m =>
            {
                Exercise exercise = request.Catalogue.Find(m.ExerciseId)!;
                int s = slotIndex[m.SessionId];
                SessionSlot slot = slots[s];
                int each = m.Dose.Contacts(1);
                bool highItem = m.Dose.HighIntensity || exercise.IsHighIntensityAt(m.Dose.DropHeightM);
                int phase = OrderOfWork.PhaseOf(exercise, m.Dose.DropHeightM);
                int secondsEach = m.SecondsOf(1) + who.PairSeconds(m, 1);
                List<(int, int, int)> rows =
                [
                    (contacts[s], each, 0),
                    (seconds[s], secondsEach, request.ChangeOverSeconds),
                    (week[weeks.IndexOf(PlanRequest.WeekOf(slot.Date))], each, 0),
                ];
                if (m.Dose.HighIntensity)
                {
                    rows.Add((high[s], each, 0));
                }

                for (int c = 0; c < caps.Length; c++)
                {
                    if (who.Caps[c].SessionIds.Contains(slot.Id))
                    {
                        rows.Add((caps[c], m.LoadOf(exercise, who.Caps[c].Tissue, 1), 0));
                    }
                }

                for (int g = 0; g < growths.Length; g++)
                {
                    LoadGrowth growth = who.Growths[g];
                    int load = m.LoadOf(exercise, growth.Tissue, 1);
                    if (growth.Later.Contains(slot.Id))
                    {
                        rows.Add((growths[g], 100 * load, 0));
                    }

                    if (growth.Earlier.Contains(slot.Id))
                    {
                        rows.Add((growths[g], -(100 + growth.Percent) * load, 0));
                    }
                }

                ContrastPair? asHeavy = who.Pairs.FirstOrDefault(p =>
                    p.SessionId == slot.Id && p.HeavyExerciseId == exercise.Id
                );
                int light = asHeavy is null ? -1 : at.GetValueOrDefault((slot.Id, asHeavy.LightExerciseId), -2);
                if (
                    asHeavy is not null
                    && (
                        asHeavy.RestS < request.Limits.PairRestAtLeastS
                        || asHeavy.RestS > request.Limits.PairRestAtMostS
                    )
                )
                {
                    light = -2;
                }

                ContrastPair? asLight = who.Pairs.FirstOrDefault(p =>
                    p.SessionId == slot.Id
                    && p.LightExerciseId == exercise.Id
                    && at.ContainsKey((slot.Id, p.HeavyExerciseId))
                );
                KeepWish? keep = keeps[(slot.Id, exercise.Id)].FirstOrDefault();
                return new Entry(
                    m,
                    exercise,
                    slot,
                    s,
                    m.Dose.SetsMin,
                    m.Dose.SetsMax,
                    [
                        .. Enumerable
                            .Range(0, m.Dose.SetsMax + 1)
                            .Select(n => n == 0 ? 0 : Scope.PointScale * (m.PointsOf(n) + (keep?.PointsOf(n) ?? 0))),
                    ],
                    request.Trains(exercise.Id) is { } q
                        ? goalOf.GetValueOrDefault((q, PlanRequest.WeekOf(slot.Date)), -1)
                        : -1,
                    [.. rows.Where(r => r.Item2 != 0 || r.Item3 != 0)],
                    [
                        .. KitUse
                            .Of(exercise, phase)
                            .Where(k => kitIndex.ContainsKey((k.Key, slot.Id)))
                            .Select(k => (kitIndex[(k.Key, slot.Id)], k.Count * secondsEach)),
                    ],
                    [
                        .. Enum.GetValues<Tissue>()
                            .Select(t => Array.IndexOf(_hours, exercise.RecoveryHours.GetValueOrDefault(t))),
                    ],
                    phase == 0,
                    _lowOpen[s] ? phase != 0 : highItem,
                    asLight is null ? -1 : at[(slot.Id, asLight.HeavyExerciseId)],
                    light,
                    asHeavy is null ? 0 : Scope.PointScale * asHeavy.Points,
                    [.. m.After.Select(o => (o.ExerciseId, o.Sessions))]
                );
            }),
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
        _frozen = new bool[_entries.Length];
        _touched = new bool[_entries.Length];
        _count = new int[_slots];
        _low = new int[_slots];
        _least = who.ExercisesPerSessionAtLeast;
        _most = who.ExercisesPerSessionAtMost;
        _worked = new int[_slots, 4, Math.Max(1, _hours.Length)];
        _kitUse = new long[kit.Length];
        _kitMost = new long[kit.Length];
        _price = new long[_entries.Length];
        // Something not open that is needed to open another closes that one: no entry of its exercise is there to be counted.
    }

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

    /// <summary>Puts a plan in place that is known to keep every limit.</summary>
    public void Restore(int[] sets)
    {
        for (int i = 0; i < sets.Length; i++)
        {
            Set(i, sets[i]);
        }

        _log.Clear();
    }

    /// <summary>Begins from these items; those that are locked or asked for stay as they are.</summary>
    public void Begin(IEnumerable<Chosen> chosen, Func<Chosen, bool> stays)
    {
        foreach (Chosen item in chosen)
        {
            int i = Array.FindIndex([.. _entries], e => e.Slot.Id == item.Slot.Id && e.Exercise.Id == item.Exercise.Id);
            Set(i, item.Sets);
            _frozen[i] = stays(item);
        }

        _log.Clear();
    }

    /// <summary>Takes over what can stand of an earlier plan, session by session.</summary>
    public void Seed(ILookup<string, (string ExerciseId, int Sets)> bySession)
    {
        for (int slot = 0; slot < _slots; slot++)
        {
            _log.Clear();
            ImmutableArray<int> here = _ofSlot[slot];
            if (here.IsEmpty)
            {
                continue;
            }

            // Low work first, since the rest needs it.
            foreach (int i in here.OrderBy(i => _entries[i].Low ? 0 : 1))
            {
                foreach (
                    (_, int sets) in bySession[_entries[i].Slot.Id].Where(o => o.ExerciseId == _entries[i].Exercise.Id)
                )
                {
                    int mark = _log.Count;
                    Change(i, Math.Clamp(sets, _entries[i].Min, _entries[i].Max));
                    if (!Keeps(mark, ignoreLeast: true))
                    {
                        UndoTo(mark);
                    }
                }
            }

            if (!Keeps())
            {
                Undo();
            }
        }

        _log.Clear();
    }

    /// <summary>
    /// Leaves a share of every session's working time for waiting at stations; 1 gives all of it back. A plan that fills
    /// every minute finds no time line where kit is shared.
    /// </summary>
    public void Fill(double share)
    {
        for (int n = 0; n < _seconds.Length; n++)
        {
            _rowMost[_seconds[n]] = (long)(share * _work[n]);
        }
    }

    /// <summary>What kit may be used from now on, and what a second of it costs.</summary>
    public void Lend(long[] kitMost, long[] prices)
    {
        kitMost.CopyTo(_kitMost, 0);
        for (int i = 0; i < _entries.Length; i++)
        {
            _price[i] = _entries[i].Kit.Sum(k => prices[k.Kit] * k.Each);
        }

        _value = Points - Enumerable.Range(0, _entries.Length).Sum(i => _price[i] * _sets[i]);
    }

    /// <summary>So many moves at a temperature that falls evenly on the scale of logarithms; ends at the best plan met.</summary>
    public void Anneal(int moves, double hot, double cold)
    {
        if (_entries.IsEmpty)
        {
            return;
        }

        long best = _value;
        int[]? bestSets = null;
        double temperature = hot * Scope.PointScale;
        double factor = Math.Pow(cold / hot, 64.0 / Math.Max(64, moves));
        for (int move = 0; move < moves; move++)
        {
            if (move % 64 == 63)
            {
                temperature *= factor;
            }

            long before = _value;
            _log.Clear();
            Propose();
            if (_log.Count == 0)
            {
                continue;
            }

            long gain = _value - before;
            bool wanted = gain >= 0 || _random.NextDouble() < Math.Exp(gain / temperature);
            if (!wanted || !Keeps())
            {
                Undo();
            }
            else if (_value > best)
            {
                best = _value;
                bestSets = [.. _sets];
            }
        }

        if (_value < best && bestSets is not null)
        {
            Restore(bestSets);
        }
    }

    /// <summary>What is done in one session.</summary>
    public IEnumerable<Chosen> ChosenIn(string sessionId) =>
        from i in Enumerable.Range(0, _entries.Length)
        where _sets[i] > 0 && _entries[i].Slot.Id == sessionId
        select new Chosen(Who, _entries[i].Slot, _entries[i].Menu, _entries[i].Exercise, _sets[i]);

    /// <summary>
    /// Takes something out of a session: a set of one of these exercises, or one of them, or anything else there, or all of
    /// it; the cheapest of the first of these that keeps the limits. False when nothing can be taken.
    /// </summary>
    public bool Cut(string sessionId, IReadOnlyCollection<string> exercises)
    {
        int[] here =
        [
            .. Enumerable
                .Range(0, _entries.Length)
                .Where(i => _entries[i].Slot.Id == sessionId && _sets[i] > 0 && !_frozen[i]),
        ];
        int[] these = [.. here.Where(i => exercises.Contains(_entries[i].Exercise.Id))];
        return Cheapest(these) || Cheapest(here) || Clear(here);
    }

    private bool Cheapest(int[] entries)
    {
        (int Entry, int Sets)? best = null;
        double least = double.PositiveInfinity;
        foreach (int i in entries)
        {
            foreach (int sets in new[] { _sets[i] - 1, 0 }.Where(n => n == 0 || n >= _entries[i].Min).Distinct())
            {
                long before = Points;
                long seconds = _entries[i].Menu.SecondsOf(_sets[i] - sets);
                _log.Clear();
                Change(i, sets);
                if (_log.Count > 0 && KeepsAllButKit())
                {
                    double cost = (before - Points) / (double)Math.Max(1, seconds);
                    if (cost < least)
                    {
                        least = cost;
                        best = (i, sets);
                    }
                }

                Undo();
            }
        }

        if (best is { } cut)
        {
            _log.Clear();
            Change(cut.Entry, cut.Sets);
            _log.Clear();
            return true;
        }

        return false;
    }

    /// <summary>
    /// The whole session goes. Where something later stood on it (a step that opens, or growth from week to week), later
    /// sessions go with it, one after the other.
    /// </summary>
    private bool Clear(int[] here)
    {
        if (here.Length == 0)
        {
            return false;
        }

        _log.Clear();
        int slot = _entries[here[0]].SlotIndex;
        for (int s = slot; s < _slots; s++)
        {
            foreach (int i in _ofSlot[s].Where(i => _sets[i] > 0 && !_frozen[i]))
            {
                Set(i, 0);
            }

            if (KeepsAllButKit())
            {
                _log.Clear();
                return true;
            }
        }

        Undo();
        return false;
    }

    private static bool IsOpen(MenuItem menu, PlanRequest request, AthleteRequest who, SessionSlot slot)
    {
        Exercise exercise = request.Catalogue.Find(menu.ExerciseId)!;
        double? drop = menu.Dose.DropHeightM;
        bool high = menu.Dose.HighIntensity || exercise.IsHighIntensityAt(drop);
        return !who.RulingsOn(slot.Date).Any(r => r.Effect.Forbids(exercise.FactsAt(drop)))
            && exercise.Kit.All(k => request.CountOf(k.Id) >= k.Count)
            && !request.Fixtures.Any(f =>
                (high && FixtureWindow.IsQuietDay(f, slot.Date, request.Limits))
                || (OrderOfWork.IsTopTier(exercise) && FixtureWindow.Of(f, request).HoursWithin(slot) > 0)
            )
            && !who.Recent.Any(r =>
                OrderOfWork.RecoveryHoursOf(exercise, r.Tissue) > 0
                && slot.StartUtc - r.EndUtc < Duration.FromHours(r.RecoveryHours)
            );
    }

    /// <summary>So many moves in one session, at a low temperature; ends at the best met.</summary>
    public void Climb(int slot, int moves)
    {
        long best = _value;
        int[]? bestSets = null;
        const double Temperature = 0.4 * Scope.PointScale;
        for (int move = 0; move < moves; move++)
        {
            long before = _value;
            _log.Clear();
            Propose(slot);
            long gain = _value - before;
            if (_log.Count == 0)
            {
                continue;
            }

            bool wanted = gain >= 0 || _random.NextDouble() < Math.Exp(gain / Temperature);
            if (!wanted || _log.Exists(l => _entries[l.Entry].SlotIndex != slot) || !Keeps())
            {
                Undo();
            }
            else if (_value > best)
            {
                best = _value;
                bestSets = [.. _sets];
            }
        }

        if (bestSets is not null)
        {
            Restore(bestSets);
        }

        _log.Clear();
    }

    private void Propose() => Propose(_random.Next(_slots));

    private void Propose(int s)
    {
        double which = _random.NextDouble();
        ImmutableArray<int> here = _ofSlot[s];
        if (here.IsEmpty)
        {
            return;
        }

        int i = here[_random.Next(here.Length)];
        if (which < 0.03 || (_count[s] == 0 && which < 0.4))
        {
            Refill(s);
        }
        else if (which < 0.40)
        {
            if (_sets[i] == 0)
            {
                i = Present(s);
            }

            if (i >= 0)
            {
                Change(i, _sets[i] + (_random.Next(2) == 0 ? 1 : -1));
            }
        }
        else if (which < 0.60)
        {
            if (_sets[i] == 0)
            {
                Change(i, _entries[i].Min);
            }
        }
        else if (which < 0.65)
        {
            if (_sets[i] > 0)
            {
                Change(i, 0);
            }
        }
        else if (which < 0.90)
        {
            int out_ = Present(s);
            if (out_ >= 0 && _sets[i] == 0 && !_frozen[out_])
            {
                Change(out_, 0);
                if (_sets[i] == 0)
                {
                    Change(i, Math.Clamp(_entries[i].Min + _random.Next(2), _entries[i].Min, _entries[i].Max));
                }
            }
        }
        else
        {
            // The same exercise on another day, or two sessions' sets exchanged.
            int[] same = _ofExercise[_entries[i].Exercise.Id];
            int j = same[_random.Next(same.Length)];
            if (j != i && _sets[i] != _sets[j])
            {
                int one = _sets[i];
                Change(i, _sets[j]);
                Change(j, one);
            }
        }
    }

    private int Present(int slot)
    {
        if (_count[slot] == 0)
        {
            return -1;
        }

        int nth = _random.Next(_count[slot]);
        foreach (int i in _ofSlot[slot])
        {
            if (_sets[i] > 0 && nth-- == 0)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Empties a session and fills it anew, each entry only if it fits.</summary>
    private void Refill(int slot)
    {
        ImmutableArray<int> here = _ofSlot[slot];
        foreach (int i in here)
        {
            if (_sets[i] > 0 && !_frozen[i])
            {
                Set(i, 0);
            }
        }

        int tries = Math.Max(12, 2 * here.Length);
        for (int n = 0; n < tries && _count[slot] < _most; n++)
        {
            int i = here[_random.Next(here.Length)];
            if (_sets[i] > 0 || (_low[slot] == 0 && _entries[i].NeedsLow))
            {
                continue;
            }

            int mark = _log.Count;
            Change(i, _entries[i].Min);
            if (!Keeps(mark, ignoreLeast: true))
            {
                UndoTo(mark);
            }
        }
    }

    /// <summary>Sets an entry to so many sets; partners of a pair move together.</summary>
    private void Change(int i, int sets)
    {
        Entry entry = _entries[i];
        if (_frozen[i] || sets > entry.Max || sets < 0)
        {
            return;
        }

        if (sets > 0 && sets < entry.Min)
        {
            sets = 0;
        }

        if (entry.Light == -2 && sets > 0)
        {
            return;
        }

        if (sets > 0 && entry.Light >= 0)
        {
            Entry light = _entries[entry.Light];
            sets = Math.Max(sets, light.Min);
            if (sets > Math.Min(entry.Max, light.Max) || _frozen[entry.Light])
            {
                return;
            }

            Set(entry.Light, sets);
        }

        if (entry.Heavy >= 0 && _sets[entry.Heavy] > 0)
        {
            Entry heavy = _entries[entry.Heavy];
            if (_frozen[entry.Heavy])
            {
                return;
            }

            Set(entry.Heavy, sets >= heavy.Min && sets <= heavy.Max ? sets : 0);
        }

        Set(i, sets);
    }

    private void Set(int i, int sets)
    {
        int before = _sets[i];
        if (before == sets)
        {
            return;
        }

        _log.Add((i, before));
        Move(i, before, sets);
    }

    private void Undo() => UndoTo(0);

    private void UndoTo(int mark)
    {
        for (int n = _log.Count - 1; n >= mark; n--)
        {
            (int entry, int before) = _log[n];
            Move(entry, _sets[entry], before);
        }

        _log.RemoveRange(mark, _log.Count - mark);
    }

    private void Move(int i, int before, int after)
    {
        Entry entry = _entries[i];
        int sets = after - before;
        int once = (after > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
        foreach ((int row, int each, int alone) in entry.Rows)
        {
            _rowUse[row] += ((long)each * sets) + (alone * once);
        }

        foreach ((int kit, int each) in entry.Kit)
        {
            _kitUse[kit] += (long)each * sets;
        }

        long points = entry.Points[after] - entry.Points[before];
        if (entry.Goal >= 0)
        {
            long[] table = _goalPoints[entry.Goal];
            int now = _goalSets[entry.Goal];
            points += table[Math.Min(table.Length - 1, now + sets)] - table[Math.Min(table.Length - 1, now)];
            _goalSets[entry.Goal] = now + sets;
        }

        points += once * entry.PairPoints;
        Points += points;
        _value += points - (_price[i] * sets);
        if (once != 0)
        {
            _count[entry.SlotIndex] += once;
            _done += once;
            if (entry.Low)
            {
                _low[entry.SlotIndex] += once;
            }

            for (int t = 0; t < 4; t++)
            {
                if (entry.Level[t] >= 0)
                {
                    _worked[entry.SlotIndex, t, entry.Level[t]] += once;
                }
            }
        }

        _sets[i] = after;
    }

    private bool Keeps() => Keeps(0, ignoreLeast: false);

    private bool KeepsAllButKit() => KeepsRows(0) && KeepsSessions(0, false) && KeepsRecovery(0) && KeepsOpenings();

    private bool Keeps(int from, bool ignoreLeast) =>
        KeepsRows(from)
        && KeepsKit(from)
        && KeepsSessions(from, ignoreLeast)
        && KeepsRecovery(from)
        && (ignoreLeast || KeepsOpenings());

    private bool KeepsRows(int from)
    {
        for (int n = from; n < _log.Count; n++)
        {
            foreach ((int row, _, _) in _entries[_log[n].Entry].Rows)
            {
                if (_rowUse[row] > _rowMost[row])
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool KeepsKit(int from)
    {
        for (int n = from; n < _log.Count; n++)
        {
            foreach ((int kit, _) in _entries[_log[n].Entry].Kit)
            {
                if (_kitUse[kit] > _kitMost[kit])
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool KeepsSessions(int from, bool ignoreLeast)
    {
        for (int n = from; n < _log.Count; n++)
        {
            int slot = _entries[_log[n].Entry].SlotIndex;
            if (_count[slot] > _most || (!ignoreLeast && _count[slot] > 0 && _count[slot] < _least))
            {
                return false;
            }

            if (_low[slot] == 0)
            {
                foreach (int i in _ofSlot[slot])
                {
                    if (_sets[i] > 0 && _entries[i].NeedsLow)
                    {
                        return false;
                    }
                }
            }

            Entry entry = _entries[_log[n].Entry];
            if (entry.Light >= 0 && _sets[_log[n].Entry] > 0 && _sets[entry.Light] != _sets[_log[n].Entry])
            {
                return false;
            }

            if (entry.Heavy >= 0 && _sets[entry.Heavy] > 0 && _sets[entry.Heavy] != _sets[_log[n].Entry])
            {
                return false;
            }
        }

        return true;
    }

    private bool KeepsRecovery(int from)
    {
        for (int n = from; n < _log.Count; n++)
        {
            int i = _log[n].Entry;
            if (_sets[i] == 0)
            {
                continue;
            }

            Entry entry = _entries[i];
            int slot = entry.SlotIndex;
            for (int t = 0; t < 4; t++)
            {
                if (entry.Level[t] < 0)
                {
                    continue;
                }

                long seconds = 3600L * _hours[entry.Level[t]];
                for (int later = slot + 1; later < _slots && _gap[slot, later] < seconds; later++)
                {
                    for (int level = 0; level < _hours.Length; level++)
                    {
                        if (_worked[later, t, level] > 0)
                        {
                            return false;
                        }
                    }
                }

                for (int earlier = slot - 1; earlier >= 0; earlier--)
                {
                    long gap = _gap[earlier, slot];
                    if (_hours.Length == 0 || gap >= 3600L * _hours[^1])
                    {
                        break;
                    }

                    for (int level = _hours.Length - 1; level >= 0 && gap < 3600L * _hours[level]; level--)
                    {
                        if (_worked[earlier, t, level] > 0)
                        {
                            return false;
                        }
                    }
                }
            }
        }

        return true;
    }

    private bool KeepsOpenings()
    {
        foreach (int i in _dependents)
        {
            if (_sets[i] == 0)
            {
                continue;
            }

            foreach ((string exercise, int sessions) in _entries[i].After)
            {
                int before = 0;
                foreach (int p in _ofExercise.GetValueOrDefault(exercise, []))
                {
                    before += _sets[p] > 0 && _dayOf[_entries[p].SlotIndex] < _dayOf[_entries[i].SlotIndex] ? 1 : 0;
                }

                if (before < sessions)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
