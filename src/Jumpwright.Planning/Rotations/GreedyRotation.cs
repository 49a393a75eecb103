using System.Collections.Immutable;

namespace Jumpwright.Planning.Rotations;

/// <summary>
/// Places blocks as they come free, without waiting: fast, and readable on the floor. May miss a time line that exists. It
/// goes forward in time, so that no block placed so far begins after the one that is being placed; kit in use at its first
/// second is therefore the most that is in use while it lasts.
/// </summary>
internal static class GreedyRotation
{
    private const int RandomTries = 24;

    /// <summary>Tries a few orders of preference; null when none of them fits.</summary>
    public static Timeline? Try(ImmutableArray<Block> blocks, Gym gym) =>
        Partial(blocks, gym) is { Left.IsEmpty: true } whole ? whole.Timeline : null;

    /// <summary>The order of preference that leaves the fewest seconds of work without a place, and what it leaves.</summary>
    public static (Timeline Timeline, ImmutableArray<Block> Left) Partial(
        ImmutableArray<Block> blocks,
        Gym gym,
        int randomTries = RandomTries
    )
    {
        if (blocks.IsEmpty)
        {
            return (new([]), []);
        }

        var demand = blocks
            .SelectMany(b => b.Kit.Select(k => (k.Id, Seconds: k.Count * b.Seconds)))
            .GroupBy(k => k.Id, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Sum(k => k.Seconds) / (double)Math.Max(1, gym.CountOf(g.Key)),
                StringComparer.Ordinal
            );
        Floor floor = new(blocks, gym);
        double[] scarcity = [.. blocks.Select(b => b.Kit.Length == 0 ? 0 : b.Kit.Max(k => demand[k.Id]))];
        double[] fresh = [.. blocks.Select(b => b.Phase == 1 ? 100_000.0 : 0)];
        Func<int, int, double>[] preferences =
        [
            (b, left) => fresh[b] + scarcity[b] + left,
            (b, left) => fresh[b] + left,
            (b, left) => fresh[b] + (10 * scarcity[b]) + left,
            (b, left) => scarcity[b] + left,
            (_, left) => left,
            (b, left) => (10 * scarcity[b]) + left,
            (b, left) => scarcity[b] - blocks[b].Seconds,
            (b, left) => left + blocks[b].Seconds,
        ];
        (Timeline Timeline, ImmutableArray<Block> Left)? best = null;
        int bestLeft = int.MaxValue;
        int total = blocks.Sum(b => b.Seconds);
        Random random = new(blocks.Length);
        for (int n = 0; n < preferences.Length + randomTries && bestLeft > 0; n++)
        {
            // Far from fitting, other orders of preference don't help: something has to go.
            if (n == preferences.Length && bestLeft > total / 40)
            {
                break;
            }

            Func<int, int, double> preference;
            if (n < preferences.Length)
            {
                preference = preferences[n];
            }
            else
            {
                double[] noise = [.. blocks.Select(_ => 1200 * random.NextDouble())];
                double weight = 2 * random.NextDouble();
                preference = (b, left) => fresh[b] + (weight * scarcity[b]) + left + noise[b];
            }

            var (timeline, left) = floor.Place(preference);
            int seconds = left.Sum(b => b.Seconds);
            if (seconds < bestLeft)
            {
                bestLeft = seconds;
                best = (timeline, left);
            }
        }

        return best!.Value;
    }

    /// <summary>The blocks in numbers, so that one try takes a fraction of a millisecond.</summary>
    private sealed class Floor
    {
        private readonly ImmutableArray<Block> _blocks;
        private readonly Gym _gym;
        private readonly int[] _athlete;
        private readonly int _athletes;
        private readonly (int Kit, int Count)[][] _kit;
        private readonly int[] _most;
        private readonly int[] _byName;

        public Floor(ImmutableArray<Block> blocks, Gym gym)
        {
            _blocks = blocks;
            _gym = gym;
            string[] ids =
            [
                .. blocks.Select(b => b.AthleteId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            ];
            _athletes = ids.Length;
            _athlete = [.. blocks.Select(b => Array.BinarySearch(ids, b.AthleteId, StringComparer.Ordinal))];
            string[] kits =
            [
                .. blocks
                    .SelectMany(b => b.Kit.Select(k => k.Id))
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ];
            _kit =
            [
                .. blocks.Select(b =>
                    b.Kit.Select(k => (Array.BinarySearch(kits, k.Id, StringComparer.Ordinal), k.Count)).ToArray()
                ),
            ];
            _most = [.. kits.Select(gym.CountOf)];
            // Between equals the name decides, then the athlete.
            _byName =
            [
                .. Enumerable
                    .Range(0, blocks.Length)
                    .OrderBy(b => blocks[b].Name, StringComparer.Ordinal)
                    .ThenBy(b => blocks[b].AthleteId, StringComparer.Ordinal),
            ];
        }

        public (Timeline Timeline, ImmutableArray<Block> Left) Place(Func<int, int, double> preference)
        {
            int[] free = [.. Enumerable.Repeat(_gym.Opens, _athletes)];
            int[] left = new int[_athletes];
            int[] low = new int[_athletes];
            bool[] waiting = [.. Enumerable.Repeat(true, _blocks.Length)];
            for (int b = 0; b < _blocks.Length; b++)
            {
                left[_athlete[b]] += _blocks[b].Seconds + _gym.ChangeOver;
                low[_athlete[b]] += _blocks[b].AsWaiting;
            }

            List<(int Block, int Start)> placed = [];
            SortedSet<int> moments = [];
            var busy = new List<(int End, int Count)>[_most.Length];
            for (int k = 0; k < busy.Length; k++)
            {
                busy[k] = [];
            }

            int count = _blocks.Length;
            int now = _gym.Opens;
            while (count > 0)
            {
                int start = now + _gym.ChangeOver;
                int next = -1;
                double most = double.NegativeInfinity;
                foreach (int b in _byName)
                {
                    if (!waiting[b] || free[_athlete[b]] > now)
                    {
                        continue;
                    }

                    Block block = _blocks[b];
                    if (
                        block.ComesAfter(low[_athlete[b]])
                        || start + block.Seconds > _gym.Closes
                        || (block.Phase == 1 && start > _gym.FreshUntil)
                        || !Fits(b, start, busy)
                    )
                    {
                        continue;
                    }

                    double its = preference(b, left[_athlete[b]]);
                    if (its > most)
                    {
                        most = its;
                        next = b;
                    }
                }

                if (next >= 0)
                {
                    int end = start + _blocks[next].Seconds;
                    placed.Add((next, start));
                    waiting[next] = false;
                    count--;
                    free[_athlete[next]] = end;
                    left[_athlete[next]] -= _blocks[next].Seconds + _gym.ChangeOver;
                    low[_athlete[next]] -= _blocks[next].AsWaiting;
                    foreach ((int kit, int needed) in _kit[next])
                    {
                        busy[kit].Add((end, needed));
                    }

                    moments.Add(end);
                    moments.Add(end - _gym.ChangeOver);
                    continue;
                }

                // Next moment at which something changes: somebody is free, or kit is (less the walk to it).
                moments.RemoveWhere(t => t <= now);
                if (moments.Count == 0 || moments.Min >= _gym.Closes)
                {
                    break;
                }

                now = moments.Min;
                foreach (var uses in busy)
                {
                    uses.RemoveAll(u => u.End <= now);
                }
            }

            return (
                new([.. placed.Select(p => (_blocks[p.Block], p.Start))]),
                [.. Enumerable.Range(0, _blocks.Length).Where(b => waiting[b]).Select(b => _blocks[b])]
            );
        }

        private bool Fits(int block, int start, List<(int End, int Count)>[] busy)
        {
            foreach ((int kit, int needed) in _kit[block])
            {
                int inUse = needed;
                foreach ((int end, int count) in busy[kit])
                {
                    inUse += end > start ? count : 0;
                }

                if (inUse > _most[kit])
                {
                    return false;
                }
            }

            return true;
        }
    }
}
