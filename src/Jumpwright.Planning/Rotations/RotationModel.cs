using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Jumpwright.Planning.Rotations;

/// <summary>The rotation as a scheduling model: finds a time line where there is one, or proves that there is none.</summary>
internal static class RotationModel
{
    /// <summary>The time line; null with <paramref name="proven"/> true when there is none, false when time ran out.</summary>
    public static Timeline? Solve(ImmutableArray<Block> blocks, Gym gym, double deterministicTime, out bool proven)
    {
        if (blocks.Any(b => gym.Opens + gym.ChangeOver > LatestOf(b, gym)))
        {
            proven = true;
            return null;
        }

        CpModel model = new();
        var starts = blocks
            .Select(b => model.NewIntVar(gym.Opens + gym.ChangeOver, LatestOf(b, gym), $"{b.AthleteId}/{b.Name}"))
            .ToArray();

        foreach (
            var one in Enumerable.Range(0, blocks.Length).GroupBy(i => blocks[i].AthleteId, StringComparer.Ordinal)
        )
        {
            model.AddNoOverlap(
                one.Select(i =>
                    model.NewFixedSizeIntervalVar(
                        starts[i] - gym.ChangeOver,
                        blocks[i].Seconds + gym.ChangeOver,
                        $"{blocks[i].AthleteId}/{blocks[i].Name}"
                    )
                )
            );
            foreach (int i in one)
            {
                foreach (int j in one.Where(j => blocks[i].Rank < blocks[j].Rank))
                {
                    model.Add(starts[i] + blocks[i].Seconds + gym.ChangeOver <= starts[j]);
                }
            }
        }

        foreach (
            var kit in Enumerable
                .Range(0, blocks.Length)
                .SelectMany(i => blocks[i].Kit.Select(k => (k.Id, k.Count, Index: i)))
                .GroupBy(k => k.Id, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
        )
        {
            CumulativeConstraint cumulative = model.AddCumulative(gym.CountOf(kit.Key));
            foreach ((string _, int count, int i) in kit)
            {
                cumulative.AddDemand(
                    model.NewFixedSizeIntervalVar(starts[i], blocks[i].Seconds, $"{kit.Key}/{i}"),
                    count
                );
            }
        }

        CpSolver solver = new()
        {
            StringParameters = Parameters.Of(deterministicTime, wallSeconds: 200 * Math.Max(1, deterministicTime)),
        };
        CpSolverStatus status = solver.Solve(model);
        proven = status is CpSolverStatus.Infeasible;
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return null;
        }

        var order = Enumerable
            .Range(0, blocks.Length)
            .OrderBy(i => solver.Value(starts[i]))
            .ThenBy(i => i)
            .Select(i => (blocks[i], (int)solver.Value(starts[i])));
        return new([.. order]);
    }

    private static int LatestOf(Block block, Gym gym) =>
        block.Phase == 1 ? Math.Min(gym.FreshUntil, gym.Closes - block.Seconds) : gym.Closes - block.Seconds;
}
