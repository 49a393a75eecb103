namespace Jumpwright.Planning.Searching;

/// <content>A move carried out, and taken back.</content>
internal sealed partial class AthleteSearch
{
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

    /// <summary>From now on what is done side by side with others is counted, and what it costs; null: no longer.</summary>
    public void Share(Sharing? sharing)
    {
        _sharing = sharing;
        for (int i = 0; sharing is not null && i < _entries.Length; i++)
        {
            _group[i] = sharing.GroupOf(_entries[i].SlotIndex, _entries[i].Exercise.Id);
            if (_sets[i] > 0)
            {
                Share(sharing, i, _sets[i], 1);
            }
        }
    }

    private void Share(Sharing sharing, int i, int sets, int once)
    {
        Entry entry = _entries[i];
        if (once != 0)
        {
            sharing.Do(entry.SlotIndex, _group[i], once);
        }

        foreach ((int kit, int each) in entry.Kit)
        {
            sharing.Use(kit, (long)each * sets);
        }
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
        if (_sharing is { } sharing)
        {
            long cost = sharing.Cost;
            Share(sharing, i, sets, once);
            _value -= sharing.Cost - cost;
        }

        if (once != 0)
        {
            _count[entry.SlotIndex] += once;
            if (entry.Low)
            {
                _low[entry.SlotIndex] += once;
            }

            for (int t = 0; t < 4; t++)
            {
                if (entry.Level[t] >= 0)
                {
                    _worked[At(entry.SlotIndex, t, entry.Level[t])] += once;
                }
            }
        }

        _sets[i] = after;
    }
}
