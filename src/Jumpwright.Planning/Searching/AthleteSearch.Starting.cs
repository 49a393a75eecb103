using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;

namespace Jumpwright.Planning.Searching;

/// <content>What a search begins from, and what kit it is lent.</content>
internal sealed partial class AthleteSearch
{
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

    /// <summary>
    /// Takes over what can stand of another plan, session by session: with fewer sets where the wanted ones find no room, or
    /// not at all.
    /// </summary>
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
            Stand? stood = _floors?[slot].Of(_place);
            foreach (int i in here.OrderBy(i => _entries[i].Low ? 0 : 1))
            {
                foreach (
                    (_, int sets) in bySession[_entries[i].Slot.Id].Where(o => o.ExerciseId == _entries[i].Exercise.Id)
                )
                {
                    Add(i, Math.Clamp(sets, _entries[i].Min, _entries[i].Max));
                }
            }

            if (!Keeps())
            {
                Undo();
                if (stood is { } before)
                {
                    _floors![slot].Put(_place, before);
                }
            }
        }

        _log.Clear();
    }

    /// <summary>Another plan instead of the one that stands, for so many moves; it stays only if it ends with more.</summary>
    public void Instead(ILookup<string, (string ExerciseId, int Sets)> bySession, int moves, double hot, double cold)
    {
        long value = _value;
        int[] sets = [.. _sets];
        Stand[]? stands = _floors is null ? null : Stands();
        for (int i = 0; i < _entries.Length; i++)
        {
            Set(i, _frozen[i] ? _sets[i] : 0);
        }

        if (!Keeps() || (_floors is not null && !HasPlaces()))
        {
            Undo();
            return;
        }

        Seed(bySession);
        Anneal(moves, hot, cold);
        if (_value <= value)
        {
            Restore(sets);
            for (int s = 0; stands is not null && s < _slots; s++)
            {
                _floors![s].Put(_place, stands[s]);
            }
        }
    }

    /// <summary>Sets by session and exercise of a plan made by so many moves without floors; what stands is left as it is.</summary>
    public Dictionary<(string Session, string Exercise), int> Sketch(int moves, double hot, double cold)
    {
        int[] stood = State;
        SessionFloor[]? floors = _floors;
        Sharing? sharing = _sharing;
        (_floors, _sharing) = (null, null);
        Anneal(moves, hot, cold);
        var made = Chosen.ToDictionary(c => (c.Slot.Id, c.Exercise.Id), c => c.Sets);
        Restore(stood);
        (_floors, _sharing) = (floors, sharing);
        return made;
    }

    private void Add(int i, int wanted)
    {
        int mark = _log.Count;
        for (int sets = wanted; sets >= _entries[i].Min; sets--)
        {
            Change(i, sets);
            if (_log.Count == mark)
            {
                return;
            }

            if (Keeps(mark, ignoreLeast: true) && (_floors is null || PlaceIn(_entries[i].SlotIndex)))
            {
                return;
            }

            UndoTo(mark);
        }
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
}
