using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>A first plan for everybody: what is locked or asked for, and what an earlier plan held.</summary>
internal sealed class Beginning(Squad squad, CancellationToken cancel)
{
    private readonly PlanRequest _request = squad.Request;

    /// <summary>Null when everybody has a first plan, else how it ended.</summary>
    public Found? Begin()
    {
        if (Asked() is { } ended)
        {
            return ended;
        }

        if (!_request.Keeps.IsEmpty)
        {
            var kept = _request.Keeps.Where(k => k.Sets > 0).ToLookup(k => k.AthleteId, StringComparer.Ordinal);
            Seed(id => kept[id].Select(k => (k.SessionId, k.ExerciseId, k.Sets)));
        }

        return null;
    }

    /// <summary>What is locked or wished goes first, by the exact model.</summary>
    private Found? Asked()
    {
        long[] left = [.. squad.Most];
        for (int i = 0; i < squad.Searches.Length; i++)
        {
            string id = squad.Athletes[i].Athlete.Id;
            if (!_request.Locks.Any(l => l.AthleteId == id) && !_request.Wishes.Any(w => w.AthleteId == id))
            {
                continue;
            }

            Scope scope = new()
            {
                Only = [squad.Athletes[i]],
                KitSeconds = Enumerable.Range(0, left.Length).ToImmutableDictionary(k => squad.Kit[k], k => left[k]),
            };
            Solution own = Solution.Of(
                SquadModel.Of(_request, Planning.Asked.All(), scope),
                Math.Max(0.5, _request.Budget.DeterministicTime / 8),
                _request.Budget.WallSeconds,
                0.005
            );
            if (own.Points is null)
            {
                return new WholeSearch(_request, Planning.Asked.All(), cancel).Any(
                    _request.Budget.DeterministicTime * 2
                );
            }

            squad.Searches[i].Begin(own.Chosen, c => Stays(c, id));
            for (int k = 0; k < left.Length; k++)
            {
                left[k] -= squad.Searches[i].KitUsed[k];
            }
        }

        return null;
    }

    private void Seed(Func<string, IEnumerable<(string SessionId, string ExerciseId, int Sets)>> of)
    {
        long[] none = new long[squad.Kit.Length];
        long[] left = squad.Left();
        for (int i = 0; i < squad.Searches.Length; i++)
        {
            AthleteSearch search = squad.Searches[i];
            long[] lent = [.. left.Select((l, k) => l + search.KitUsed[k])];
            search.Lend(lent, none);
            search.Seed(of(squad.Athletes[i].Athlete.Id).ToLookup(o => o.SessionId, o => (o.ExerciseId, o.Sets)));
            for (int k = 0; k < left.Length; k++)
            {
                left[k] = lent[k] - search.KitUsed[k];
            }
        }
    }

    private bool Stays(Chosen item, string id) =>
        _request.Locks.Any(l => l.AthleteId == id && l.SessionId == item.Slot.Id && l.ExerciseId == item.Exercise.Id)
        || _request.Wishes.Any(w =>
            w.AthleteId == id
            && w.ExerciseId == item.Exercise.Id
            && (w.SessionId is null || w.SessionId == item.Slot.Id)
        );
}
