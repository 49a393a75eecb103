using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Planning;
using Jumpwright.Planning.Searching;
using Jumpwright.Plans;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

public class OptimumTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0, 30)]
    [InlineData(500, 30)]
    public void Solve_TinySquads_FindsTheOptimumThatTryingAllPlansFinds(int firstSeed, int squads)
    {
        int tight = 0;
        for (int seed = firstSeed; seed < firstSeed + squads; seed++)
        {
            PlanRequest request = TinySquads.Of(seed);
            double? best = BruteForce.Best(request);
            Plan plan = Planner.Solve(request);

            Assert.Empty(IndependentChecker.Check(plan, request));
            Assert.True(plan.Objective == best, $"seed {seed}: planned {plan.Objective}, best {best}");
            Assert.True(plan.BestBound == best, $"seed {seed}: bound {plan.BestBound}, best {best}");
            Assert.Equal(PlanStatus.Optimal, plan.Status);
            tight += plan.Objective > 0 ? 1 : 0;
        }

        output.WriteLine($"{tight} of {squads} plans hold something");
        Assert.True(tight > squads * 0.8);
    }

    [Fact]
    public void Solve_AthleteByAthlete_AgreesWithOneModelOfAll()
    {
        for (int seed = 0; seed < 8; seed++)
        {
            PlanRequest request = TinySquads.Of(900 + seed);
            Found split = new SquadSearch(request, null, CancellationToken.None).Best();
            Found whole = new WholeSearch(request, Asked.All(), CancellationToken.None).Best();

            Assert.True(split.Bound >= whole.Objective, $"seed {seed}: bound {split.Bound} under {whole.Objective}");
            Assert.True(split.Objective <= whole.Bound);
        }
    }

    [Fact]
    public void Solve_FewGroupsWeighed_PutsTheSquadIntoFewer()
    {
        int fewer = 0;
        for (int seed = 600; seed < 616; seed++)
        {
            PlanRequest request = Uncounted(TinySquads.Of(seed));
            int Groups(double points)
            {
                Plan plan = Planner.Solve(request with { Limits = request.Limits with { PointsEachGroup = points } });
                return plan.Sessions.Sum(s =>
                    s.Athletes.SelectMany(a => a.Items.Select(i => i.Dose.ExerciseId)).Distinct().Count()
                );
            }

            int free = Groups(0);
            int weighed = Groups(6);
            Assert.True(weighed <= free, $"seed {seed}: {free} groups became {weighed}");
            fewer += weighed < free ? 1 : 0;
        }

        Assert.True(fewer > 0, "the weight never mattered");
    }

    [Fact]
    public void Solve_MoreKit_NeverWorsensTheOptimum()
    {
        int better = 0;
        for (int seed = 100; seed < 120; seed++)
        {
            PlanRequest request = Uncounted(TinySquads.Of(seed));
            double before = Optimum(request);
            double after = Optimum(request with { Kit = [.. request.Kit.Select(k => k with { Count = k.Count + 1 })] });
            Assert.True(after >= before, $"seed {seed}: {before} became {after} with more kit");
            better += after > before ? 1 : 0;
        }

        Assert.True(better > 0, "kit never mattered: the law was not tested");
    }

    [Fact]
    public void Solve_OneMoreDay_NeverWorsensTheOptimum()
    {
        int better = 0;
        for (int seed = 400; seed < 416; seed++)
        {
            PlanRequest request = Uncounted(TinySquads.Of(seed));
            SessionSlot first = request.Slots.OrderBy(s => s.StartUtc).First();
            SessionSlot more = Slots(first.Minutes, 5)[0];
            PlanRequest freer = Each(
                request with
                {
                    Slots = [.. request.Slots, more],
                },
                a =>
                    a with
                    {
                        Menu =
                        [
                            .. a.Menu,
                            .. a.Menu.Where(m => m.SessionId == first.Id).Select(m => m with { SessionId = more.Id }),
                        ],
                    }
            );
            double before = Optimum(request);
            double after = Optimum(freer);
            Assert.True(after >= before, $"seed {seed}: {before} became {after} with one more day");
            better += after > before ? 1 : 0;
        }

        Assert.True(better > 0, "a day more never helped: the law was not tested");
    }

    public static TheoryData<string> Tightenings => ["contacts", "week", "high", "minutes", "exercises", "waiting"];

    [Theory]
    [MemberData(nameof(Tightenings))]
    public void Solve_TighterLimit_NeverImprovesTheOptimum(string what)
    {
        int worse = 0;
        for (int seed = 200; seed < 216; seed++)
        {
            PlanRequest request = Uncounted(TinySquads.Of(seed));
            PlanRequest tighter = what switch
            {
                "contacts" => Each(request, a => a with { ContactsPerSessionAtMost = a.ContactsPerSessionAtMost - 10 }),
                "week" => Each(request, a => a with { ContactsPerWeekAtMost = a.ContactsPerWeekAtMost - 15 }),
                "high" => Each(request, a => a with { HighIntensityContactsPerSessionAtMost = 0 }),
                "exercises" => Each(
                    request,
                    a => a with { ExercisesPerSessionAtMost = a.ExercisesPerSessionAtMost - 1 }
                ),
                "waiting" => request with
                {
                    Limits = request.Limits with { WaitingMinutes = request.Limits.WaitingMinutes + 3 },
                },
                _ => request with { Slots = [.. request.Slots.Select(s => s with { Minutes = s.Minutes - 4 })] },
            };
            double before = Optimum(request);
            double after = Optimum(tighter);
            Assert.True(after <= before, $"seed {seed}: {before} became {after} with a tighter {what}");
            worse += after < before ? 1 : 0;
        }

        Assert.True(worse > 0, $"{what} never bound: the law was not tested");
    }

    [Fact]
    public void Solve_AthletesRenamedAndReordered_LeavesTheOptimum()
    {
        for (int seed = 300; seed < 312; seed++)
        {
            PlanRequest request = TinySquads.Of(seed);
            PlanRequest renamed = Each(
                request,
                a =>
                    a with
                    {
                        Athlete = a.Athlete with { Id = "z" + (9 - int.Parse(a.Athlete.Id[1..])), Name = "other" },
                    }
            );
            Assert.Equal(Optimum(request), Optimum(renamed));
            PlanRequest turned = request with { Athletes = [.. request.Athletes.Reverse()] };
            Assert.Equal(PlannerTests.Written(Planner.Solve(request)), PlannerTests.Written(Planner.Solve(turned)));
        }
    }

    /// <summary>Groups and unevenness cost nothing: with them a freer week may look worse, being less even.</summary>
    private static PlanRequest Uncounted(PlanRequest request) =>
        request with
        {
            Limits = request.Limits with { PointsEachGroup = 0, PointsUnevenStaff = 0, PointsUnevenKit = 0 },
        };

    private static PlanRequest Each(PlanRequest request, Func<AthleteRequest, AthleteRequest> change) =>
        request with
        {
            Athletes = [.. request.Athletes.Select(change)],
        };

    private static double Optimum(PlanRequest request)
    {
        Plan plan = Planner.Solve(request);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        return plan.Objective!.Value;
    }
}
