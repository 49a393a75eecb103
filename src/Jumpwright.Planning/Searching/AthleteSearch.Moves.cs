using System.Collections.Immutable;

namespace Jumpwright.Planning.Searching;

/// <content>What a move may be.</content>
internal sealed partial class AthleteSearch
{
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
}
