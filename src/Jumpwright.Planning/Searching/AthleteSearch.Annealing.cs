using Jumpwright.Planning.Rotations;

namespace Jumpwright.Planning.Searching;

/// <content>Simulated annealing.</content>
internal sealed partial class AthleteSearch
{
    /// <summary>So many moves at a temperature that falls evenly on the scale of logarithms; ends at the best plan met.</summary>
    public void Anneal(int moves, double hot, double cold)
    {
        if (_entries.IsEmpty)
        {
            return;
        }

        long best = _value;
        int[]? bestSets = null;
        int[] begun = [.. _sets];
        Stand[]? bestStands = _floors is null ? null : Stands();
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
            if (!wanted || !Keeps() || (_floors is not null && !HasPlaces()))
            {
                Undo();
            }
            else if (_value > best)
            {
                best = _value;
                bestSets = [.. _sets];
                bestStands = _floors is null ? null : Stands();
            }
        }

        if (_value < best)
        {
            Restore(bestSets ?? begun);
            for (int s = 0; bestStands is not null && s < _slots; s++)
            {
                _floors![s].Put(_place, bestStands[s]);
            }
        }
    }
}
