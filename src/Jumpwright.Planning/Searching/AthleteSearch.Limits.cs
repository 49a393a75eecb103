namespace Jumpwright.Planning.Searching;

/// <content>Whether what was touched still keeps every hard limit.</content>
internal sealed partial class AthleteSearch
{
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
                for (int later = slot + 1; later < _slots && _gap[(slot * _slots) + later] < seconds; later++)
                {
                    for (int level = 0; level < _hours.Length; level++)
                    {
                        if (_worked[At(later, t, level)] > 0)
                        {
                            return false;
                        }
                    }
                }

                for (int earlier = slot - 1; earlier >= 0; earlier--)
                {
                    long gap = _gap[(earlier * _slots) + slot];
                    if (_hours.Length == 0 || gap >= 3600L * _hours[^1])
                    {
                        break;
                    }

                    for (int level = _hours.Length - 1; level >= 0 && gap < 3600L * _hours[level]; level--)
                    {
                        if (_worked[At(earlier, t, level)] > 0)
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
