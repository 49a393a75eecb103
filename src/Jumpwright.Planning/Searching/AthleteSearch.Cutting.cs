namespace Jumpwright.Planning.Searching;

/// <content>What gives way where a session is too full.</content>
internal sealed partial class AthleteSearch
{
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
}
