using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// Looks for the best plan whose every session has a time line. The model chooses items; each session is then put on a
/// time line. Where that is proven impossible, the model learns that those sets can't stand together (which keeps the
/// bound true); where it is only not found, the session's kit minutes are tightened (which does not, so the bound of
/// the last true model stays).
/// </summary>
internal sealed class Search(PlanRequest request, Asked asked, CancellationToken cancel, Action<string>? say = null)
{
    private const int RoundsWithCuts = 4;
    private const int RoundsMost = 14;
    private readonly List<ImmutableArray<(string Athlete, string Session, string Exercise, int Sets)>> _cuts = [];
    private readonly Dictionary<string, double> _kitShare = new(StringComparer.Ordinal);

    /// <summary>What the search ended with.</summary>
    /// <param name="Status">How it ended.</param>
    /// <param name="Objective">Points of the plan.</param>
    /// <param name="Bound">Proven: no plan that keeps all limits has more.</param>
    /// <param name="Chosen">The plan's items.</param>
    /// <param name="Timelines">A time line for each session that holds any.</param>
    public sealed record Found(
        PlanStatus Status,
        long? Objective,
        long? Bound,
        ImmutableArray<Chosen> Chosen,
        ImmutableDictionary<SessionSlot, Timeline> Timelines
    );

    /// <summary>The best plan the budget allows.</summary>
    public Found Best() => Run(withObjective: true, request.Budget.DeterministicTime, request.Budget.GapLimit);

    /// <summary>Any plan at all: answers only whether there is one.</summary>
    public Found Any(double deterministicTime) => Run(withObjective: false, deterministicTime, gap: 0);

    private Found Run(bool withObjective, double deterministicTime, double gap)
    {
        long? bound = null;
        for (int round = 0; round < RoundsMost; round++)
        {
            cancel.ThrowIfCancellationRequested();
            bool truthful = _kitShare.Count == 0;
            SquadModel squad = SquadModel.Of(request, asked, withObjective, _kitShare);
            AddCuts(squad);
            long t0 = System.Diagnostics.Stopwatch.GetTimestamp();
            Solution solution = Solution.Of(squad, deterministicTime, request.Budget.WallSeconds, gap);
            say?.Invoke(
                $"round {round} {solution.Status} {solution.Points}/{solution.Bound} {System.Diagnostics.Stopwatch.GetElapsedTime(t0).TotalSeconds:0.00}s cuts {_cuts.Count} shares {string.Join(' ', _kitShare)}"
            );
            if (truthful && solution.Bound is { } proven)
            {
                bound = Math.Min(bound ?? long.MaxValue, proven);
            }

            if (solution.Points is null)
            {
                bool impossible = truthful && solution.Status == CpSolverStatus.Infeasible;
                return new(
                    impossible ? PlanStatus.Infeasible : PlanStatus.NoneFound,
                    null,
                    null,
                    [],
                    ImmutableDictionary<SessionSlot, Timeline>.Empty
                );
            }

            if (Rotate(solution.Chosen, squad, round) is { } timelines)
            {
                bool optimal = withObjective && bound == solution.Points;
                return new(
                    optimal ? PlanStatus.Optimal : PlanStatus.Feasible,
                    solution.Points,
                    bound,
                    solution.Chosen,
                    timelines
                );
            }
        }

        return new(PlanStatus.NoneFound, null, null, [], ImmutableDictionary<SessionSlot, Timeline>.Empty);
    }

    /// <summary>A time line for every session, or null when some session has none; then the next round knows why.</summary>
    private ImmutableDictionary<SessionSlot, Timeline>? Rotate(
        ImmutableArray<Chosen> chosen,
        SquadModel squad,
        int round
    )
    {
        var timelines = ImmutableDictionary.CreateBuilder<SessionSlot, Timeline>();
        bool all = true;
        foreach (SessionSlot slot in squad.Slots)
        {
            ImmutableArray<Block> blocks = Blocks.Of(request, slot, chosen);
            if (blocks.IsEmpty || !Asks(slot))
            {
                continue;
            }

            Gym gym = Gym.Of(request, slot);
            long t0 = System.Diagnostics.Stopwatch.GetTimestamp();
            Rotating.Result result = Rotating.Of(blocks, gym);
            say?.Invoke(
                $"  {slot.Id} {blocks.Length} blocks: {result.Timeline is not null} proven {result.ProvenImpossible} {System.Diagnostics.Stopwatch.GetElapsedTime(t0).TotalSeconds:0.00}s"
            );
            if (result.Timeline is { } timeline)
            {
                timelines[slot] = timeline;
                continue;
            }

            all = false;
            if (result.ProvenImpossible && round < RoundsWithCuts)
            {
                var who = Rotating.Shrink(blocks, gym).Select(b => b.AthleteId).ToHashSet(StringComparer.Ordinal);
                _cuts.Add([
                    .. chosen
                        .Where(c => c.Slot == slot && who.Contains(c.Who.Athlete.Id))
                        .Select(c => (c.Who.Athlete.Id, slot.Id, c.Exercise.Id, c.Sets)),
                ]);
            }
            else
            {
                _kitShare[slot.Id] = _kitShare.GetValueOrDefault(slot.Id, 1) * 0.9;
            }
        }

        return all ? timelines.ToImmutable() : null;
    }

    private bool Asks(SessionSlot slot) =>
        asked.ForLimit(
            "rotation",
            slot.Id,
            $"Everybody's stations in {slot.Id} fit on one time line with the kit there is."
        );

    private void AddCuts(SquadModel squad)
    {
        foreach (var cut in _cuts)
        {
            squad.Model.AddBoolOr(
                cut.Select(c => squad.Find(c.Athlete, c.Session, c.Exercise)!.AtLeast(c.Sets).Not()).ToArray()
            );
        }
    }
}
