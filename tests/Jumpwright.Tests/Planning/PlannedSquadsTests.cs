using System.Collections.Immutable;
using Jumpwright.Planning;
using Jumpwright.Plans;

namespace Jumpwright.Tests.Planning;

public class PlannedSquadsTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1000, 15, 3)]
    [InlineData(2000, 15, 7)]
    public void Solve_RandomSquads_KeepEveryHardLimitByACheckerOfItsOwn(int firstSeed, int squads, int athletesMost)
    {
        int items = 0;
        for (int seed = firstSeed; seed < firstSeed + squads; seed++)
        {
            PlanRequest request = RandomSquads.Of(seed, athletesMost);
            Plan plan = Planner.Solve(request);

            List<string> wrong = IndependentChecker.Check(plan, request);
            Assert.True(wrong.Count == 0, $"seed {seed}: {string.Join("; ", wrong)}");
            Assert.True(plan.Status is PlanStatus.Optimal or PlanStatus.Feasible, $"seed {seed}: {plan.Status}");
            items += plan.Sessions.Sum(s => s.Athletes.Sum(a => a.Items.Length));
            output.WriteLine(
                $"{seed}: {request.Athletes.Length} athletes, {request.Slots.Length} sessions, {plan.Status} {plan.Objective}/{plan.BestBound} gap {plan.Gap:0.0000} in {plan.Seconds} s"
            );

            // What was planned stays feasible when some of it is locked.
            LockedItem[] locks =
            [
                .. plan
                    .Sessions.SelectMany(s =>
                        s.Athletes.SelectMany(a =>
                            a.Items.Select(i => new LockedItem(s.Slot.Id, a.AthleteId, i.Dose.ExerciseId, i.Sets))
                        )
                    )
                    .Where((_, n) => n % 7 == seed % 7),
            ];
            if (locks.Length > 0 && seed % 3 == 0)
            {
                PlanRequest locked = request with { Locks = [.. locks] };
                Plan again = Planner.Solve(locked);
                Assert.Empty(IndependentChecker.Check(again, locked));
                Assert.NotNull(again.Objective);
                Assert.True(again.ObjectiveEmpty > 0 && again.ObjectiveEmpty <= again.Objective);
            }
        }

        Assert.True(items > squads * 3, "too few items to have tested anything");
    }

    [Fact]
    public void Checker_ThatIsGivenABrokenPlan_Objects()
    {
        // A checker that never objects would pass any plan: take good plans and spoil them.
        int spoiled = 0;
        for (int seed = 1000; seed < 1006; seed++)
        {
            PlanRequest request = RandomSquads.Of(seed, 3);
            Plan plan = Planner.Solve(request);
            foreach (PlannedSession session in plan.Sessions.Where(s => s.Rotation.Length > 1))
            {
                RotationEntry first = session.Rotation[0];
                Plan late = plan with
                {
                    Sessions = plan.Sessions.Replace(
                        session,
                        session with
                        {
                            Rotation = session.Rotation.Replace(
                                first,
                                first with
                                {
                                    EndMin = session.Slot.Minutes + 1,
                                }
                            ),
                        }
                    ),
                };
                Assert.NotEmpty(IndependentChecker.Check(late, request));
                Assert.NotEmpty(Judge.Check(late, request));
                Plan greedy = plan with
                {
                    Sessions = plan.Sessions.Replace(
                        session,
                        session with
                        {
                            Athletes = session.Athletes.Replace(
                                session.Athletes[0],
                                session.Athletes[0] with
                                {
                                    Items = [.. session.Athletes[0].Items.Select(i => i with { Sets = i.Sets + 40 })],
                                }
                            ),
                        }
                    ),
                };
                Assert.NotEmpty(IndependentChecker.Check(greedy, request));
                Assert.NotEmpty(Judge.Check(greedy, request));
                spoiled++;
            }
        }

        Assert.True(spoiled > 3);
    }
}
