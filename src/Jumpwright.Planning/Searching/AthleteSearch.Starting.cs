using System.Collections.Immutable;

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
}
