using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Collisions;

/// <summary>
/// Names what collides. The solver's own core is not trusted: sets are shrunk here by leaving out one requirement at a
/// time, and what remains is proven infeasible again, and feasible without any one of its members.
/// </summary>
internal static class CollisionFinder
{
    private const double DeterministicTimeOfOne = 2;

    /// <summary>Disjoint sets, each infeasible by itself while every proper subset can be met.</summary>
    public static ImmutableArray<Collision> Find(PlanRequest request, CancellationToken cancel)
    {
        var texts = AllRequirements(request);
        List<string> pool = [.. texts.Keys.Order(StringComparer.Ordinal)];
        var collisions = ImmutableArray.CreateBuilder<Collision>();
        while (Answer(request, pool, cancel) == PlanStatus.Infeasible)
        {
            List<string> set = Shrink(request, Narrow(request, pool, cancel), cancel);
            collisions.Add(new([.. set.Select(id => texts[id])]));
            if (set.Count == 0)
            {
                break;
            }

            pool.RemoveAll(set.Contains);
        }

        return collisions.ToImmutable();
    }

    /// <summary>Every requirement of a request: the model is built once to see which it meets.</summary>
    internal static Dictionary<string, Requirement> AllRequirements(PlanRequest request)
    {
        Asked all = Asked.All();
        SquadModel.Of(request, all, new Scope { WithObjective = false });
        foreach (SessionSlot slot in request.Slots)
        {
            all.ForRotation(slot.Id);
        }

        return all.Met.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>
    /// Whether these requirements can be met together. Athletes whom none of them names may do nothing, so they are left
    /// out of the question.
    /// </summary>
    internal static PlanStatus Answer(PlanRequest request, IEnumerable<string> ids, CancellationToken cancel)
    {
        string[] asked = [.. ids];
        var words = asked.SelectMany(id => id.Split(':')).ToHashSet(StringComparer.Ordinal);
        PlanRequest few = request with { Athletes = [.. request.Athletes.Where(a => words.Contains(a.Athlete.Id))] };
        return new WholeSearch(few, Asked.Only(asked), cancel).Any(DeterministicTimeOfOne).Status;
    }

    /// <summary>One athlete's requirements alone, if they already collide: far fewer to shrink.</summary>
    private static List<string> Narrow(PlanRequest request, List<string> pool, CancellationToken cancel)
    {
        foreach (AthleteRequest who in request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal))
        {
            List<string> own = [.. pool.Where(id => id.Split(':').Contains(who.Athlete.Id, StringComparer.Ordinal))];
            if (own.Count > 0 && own.Count < pool.Count && Answer(request, own, cancel) == PlanStatus.Infeasible)
            {
                return own;
            }
        }

        return pool;
    }

    /// <summary>
    /// Leaves out as large pieces as it can while the rest stays infeasible, then single requirements. A search that
    /// ran out of time counts as "can be met": then the requirement stays in.
    /// </summary>
    private static List<string> Shrink(PlanRequest request, List<string> set, CancellationToken cancel)
    {
        // Limits are tried first, so that wishes and locks that collide among themselves stay.
        List<string> left =
        [
            .. set.OrderBy(id => id.StartsWith("limit:", StringComparison.Ordinal) ? 0 : 1)
                .ThenBy(id => id, StringComparer.Ordinal),
        ];
        for (int piece = Math.Max(1, left.Count / 2); ; piece = Math.Max(1, piece / 2))
        {
            for (int at = 0; at < left.Count; )
            {
                List<string> fewer = [.. left.Take(at), .. left.Skip(at + piece)];
                if (fewer.Count < left.Count && Answer(request, fewer, cancel) == PlanStatus.Infeasible)
                {
                    left = fewer;
                }
                else
                {
                    at += piece;
                }
            }

            if (piece == 1)
            {
                return left;
            }
        }
    }
}
