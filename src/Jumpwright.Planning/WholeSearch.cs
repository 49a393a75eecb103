using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// The whole squad in one model: exact, for small squads and for the question whether anything can be done at all.
/// Where a session's items are proven not to fit on one time line, the model learns it and is solved again, so that the
/// bound stays true; where no time line was found, the session's kit is tightened, and the bound of the last true model
/// stays.
/// </summary>
internal sealed class WholeSearch(PlanRequest request, Asked asked, CancellationToken cancel)
{
    private const int RoundsMost = 60;
    private const int RoundsWithCuts = 45;

    /// <summary>The best plan the budget allows.</summary>
    public Found Best() => Run(withObjective: true, request.Budget.DeterministicTime, request.Budget.GapLimit);

    /// <summary>Any plan at all: answers only whether there is one.</summary>
    public Found Any(double deterministicTime) => Run(withObjective: false, deterministicTime, gap: 0);

    private Found Run(bool withObjective, double deterministicTime, double gap)
    {
        long? bound = null;
        bool truthful = true;
        Scope scope = new() { WithObjective = withObjective };
        for (int round = 0; round < RoundsMost; round++)
        {
            cancel.ThrowIfCancellationRequested();
            SquadModel squad = SquadModel.Of(request, asked, scope);
            Solution solution = Solution.Of(squad, deterministicTime, request.Budget.WallSeconds, gap);
            if (truthful && solution.Bound is { } proven)
            {
                bound = Math.Min(bound ?? long.MaxValue, proven);
            }

            if (solution.Points is not { } points)
            {
                bool impossible = truthful && solution.Status == CpSolverStatus.Infeasible;
                return Found.Nothing(impossible ? PlanStatus.Infeasible : PlanStatus.NoneFound);
            }

            SquadRotation rotation = SquadRotation.Of(request, solution.Chosen, asked);
            if (rotation.Complete)
            {
                bool optimal = withObjective && bound == points;
                return new(
                    optimal ? PlanStatus.Optimal : PlanStatus.Feasible,
                    points,
                    bound,
                    solution.Chosen,
                    rotation.Timelines
                );
            }

            foreach (SessionSlot slot in rotation.Unknown.Concat(rotation.Impossible.Select(i => i.Slot)))
            {
                bool cut = round < RoundsWithCuts && !rotation.Unknown.Contains(slot);
                if (cut)
                {
                    scope = scope with { Cuts = scope.Cuts.Add(CutOf(slot, rotation, solution)) };
                }
                else
                {
                    truthful = false;
                    scope = scope with { KitSeconds = Tightening.Of(scope.KitSeconds, slot, request, solution.Chosen) };
                }
            }
        }

        return Found.Nothing(PlanStatus.NoneFound);
    }

    private ImmutableArray<Chosen> CutOf(SessionSlot slot, SquadRotation rotation, Solution solution)
    {
        ImmutableArray<Block> blocks = rotation.Impossible.First(i => i.Slot == slot).Blocks;
        var who = Rotating
            .Shrink(blocks, Gym.Of(request, slot))
            .Select(b => b.AthleteId)
            .ToHashSet(StringComparer.Ordinal);
        return [.. solution.Chosen.Where(c => c.Slot == slot && who.Contains(c.Who.Athlete.Id))];
    }
}
