using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <content>Every session a move touches must still have its time line.</content>
internal sealed partial class AthleteSearch
{
    /// <summary>From now on a move is kept only if every session it touches still has a time line; null: no longer.</summary>
    public void StandOn(SessionFloor[]? floors, int place, IReadOnlyList<string> kits)
    {
        _floors = floors;
        _place = place;
        if (floors is null || _alone.Length > 0)
        {
            return;
        }

        FloorBlock Made(Block block) => FloorBlock.Of(block, kits);
        Chosen ChosenOf(int i, int sets) => new(Who, _entries[i].Slot, _entries[i].Menu, _entries[i].Exercise, sets);
        _alone =
        [
            .. _entries.Select(
                (e, i) => Enumerable.Range(0, e.Max + 1).Select(n => Made(Blocks.Single(ChosenOf(i, n)))).ToArray()
            ),
        ];
        _paired =
        [
            .. _entries.Select(
                (e, i) =>
                    e.Light < 0
                        ? []
                        : Enumerable
                            .Range(0, Math.Min(e.Max, _entries[e.Light].Max) + 1)
                            .Select(n =>
                                Made(
                                    Blocks.PairBlock(
                                        Who.Pairs.First(p =>
                                            p.SessionId == e.Slot.Id && p.HeavyExerciseId == e.Exercise.Id
                                        ),
                                        ChosenOf(i, n),
                                        ChosenOf(e.Light, n)
                                    )
                                )
                            )
                            .ToArray()
            ),
        ];
    }

    /// <summary>
    /// What the plan holds finds its places on floors where it has none yet, with fewer sets or not at all where there is no
    /// room; false when what must stay finds none.
    /// </summary>
    public bool StandAnew()
    {
        var held = Chosen.ToLookup(c => c.Slot.Id, c => (c.Exercise.Id, c.Sets));
        for (int i = 0; i < _entries.Length; i++)
        {
            Set(i, _frozen[i] ? _sets[i] : 0);
        }

        _log.Clear();
        for (int s = 0; s < _slots; s++)
        {
            if (!PlaceIn(s))
            {
                return false;
            }
        }

        Seed(held);
        return true;
    }

    /// <summary>Puts sets and their places back that stood together before.</summary>
    public void Return(int[] sets, Stand[] stands)
    {
        Restore(sets);
        for (int s = 0; s < _slots; s++)
        {
            _floors![s].Put(_place, stands[s]);
        }
    }

    /// <summary>Where what is done now stands on every floor.</summary>
    public Stand[] Stands() => [.. _floors!.Select(f => f.Of(_place))];

    /// <summary>Places the sessions that the last move touched; false, and the floors as they were, when one is full.</summary>
    private bool HasPlaces()
    {
        foreach ((int entry, _) in _log)
        {
            _moved[_entries[entry].SlotIndex] = true;
        }

        bool fits = true;
        for (int s = 0; s < _slots; s++)
        {
            if (!_moved[s] || !fits)
            {
                continue;
            }

            _stood[s] = _floors![s].Of(_place);
            fits = PlaceIn(s);
            if (!fits)
            {
                _moved[s] = false;
                for (int before = 0; before < s; before++)
                {
                    if (_moved[before])
                    {
                        _floors[before].Put(_place, _stood[before]);
                    }
                }
            }
        }

        Array.Clear(_moved);
        return fits;
    }

    /// <summary>Places one session's blocks on its floor.</summary>
    public bool PlaceIn(int slot)
    {
        int count = 0;
        foreach (int i in _ofSlot[slot])
        {
            int sets = _sets[i];
            Entry entry = _entries[i];
            if (sets == 0 || (entry.Heavy >= 0 && _sets[entry.Heavy] > 0))
            {
                continue;
            }

            _blocks[count++] = entry.Light >= 0 && !IsTaken(entry.Light, i, slot) ? _paired[i][sets] : _alone[i][sets];
        }

        return _floors![slot].Place(_place, _blocks.AsSpan(0, count));
    }

    /// <summary>Two heavy exercises may know the same light one: it is done in turn with the first of them only.</summary>
    private bool IsTaken(int light, int by, int slot)
    {
        foreach (int i in _ofSlot[slot])
        {
            if (i == by)
            {
                return false;
            }

            if (_sets[i] > 0 && _entries[i].Light == light)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The blocks done in one session, for a time line made elsewhere to be put on the floor.</summary>
    public void PutOn(int slot, Timeline timeline)
    {
        var own = timeline.Placed.Where(p => p.Block.AthleteId == Who.Athlete.Id).OrderBy(p => p.Start).ToList();
        var made = _ofSlot[slot]
            .Where(i => _sets[i] > 0)
            .SelectMany(i =>
                (FloorBlock[])(
                    _entries[i].Light >= 0 ? [_paired[i][_sets[i]], _alone[i][_sets[i]]] : [_alone[i][_sets[i]]]
                )
            )
            .ToLookup(b => b.Block.Name, StringComparer.Ordinal);
        _floors!
            [slot]
            .Put(_place, new([.. own.Select(p => made[p.Block.Name].First())], [.. own.Select(p => p.Start)]));
    }
}
