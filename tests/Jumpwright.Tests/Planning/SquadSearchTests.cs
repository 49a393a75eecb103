using System.Collections.Immutable;
using Jumpwright.Planning;
using Jumpwright.Planning.Searching;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

/// <summary>Squads over more than one week: local search with a bound from priced relaxations.</summary>
public class SquadSearchTests
{
    private static PlanRequest TwoWeeks(int athletes, int seed, bool shortKit)
    {
        var slots = Slots(45, 0, 1, 3, 7, 8, 10);
        PlanRequest request = Request(
            slots,
            [
                .. Enumerable
                    .Range(1, athletes)
                    .Select(n =>
                    {
                        AthleteRequest who = FullMenu($"a{n:00}", slots, (100 * seed) + n);
                        return who with
                        {
                            Goals = [.. who.Goals, .. who.Goals.Select(g => g with { WeekOf = Monday.PlusDays(7) })],
                            Caps =
                            [
                                new LoadCap(
                                    "weekly-growth",
                                    [.. slots.Take(3).Select(s => s.Id)],
                                    Tissue.Achilles,
                                    120,
                                    $"Made up."
                                ),
                            ],
                            Growths =
                            [
                                new LoadGrowth(
                                    Tissue.Achilles,
                                    [.. slots.Take(3).Select(s => s.Id)],
                                    [.. slots.Skip(3).Select(s => s.Id)],
                                    10,
                                    10
                                ),
                            ],
                            Menu =
                            [
                                .. who.Menu.Select(m =>
                                    m.ExerciseId == "tuck-jump" ? m with { After = [new("box-jump", 2)] } : m
                                ),
                            ],
                        };
                    }),
            ]
        );
        return request with
        {
            Weeks = 2,
            Kit = shortKit ? [.. request.Kit.Select(k => k with { Count = 1 })] : request.Kit,
            Budget = new SolveBudget { DeterministicTime = 1 },
        };
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, true)]
    public void Plan_OfTwoWeeks_KeepsEveryLimitUnderAProvenBound(int seed, bool shortKit)
    {
        PlanRequest request = TwoWeeks(6, seed, shortKit);
        Plan plan = Planner.Solve(request);
        Assert.Equal(PlanStatus.Feasible, plan.Status);
        Assert.Empty(IndependentChecker.Check(plan, request));
        Assert.True(plan.Objective > 0);
        Assert.InRange(plan.Gap!.Value, 0, 0.35);
    }

    /// <summary>One week goes by the same search as many: where kit is short, it goes to those to whom it is worth most.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Plan_OfOneWeekWithShortKit_ComesNearItsBound(int seed)
    {
        var slots = Slots(45, 0, 2, 4);
        PlanRequest request = Request(
            slots,
            [.. Enumerable.Range(1, 12).Select(n => FullMenu($"a{n:00}", slots, (100 * seed) + n))]
        );
        request = request with
        {
            Kit = [.. request.Kit.Select(k => k with { Count = 1 })],
            Budget = new SolveBudget { DeterministicTime = 1 },
        };
        Plan plan = Planner.Solve(request);
        Assert.Empty(IndependentChecker.Check(plan, request));
        Assert.InRange(plan.Gap!.Value, 0, 0.05);
    }

    [Fact]
    public void Plan_MadeTwice_IsTheSame()
    {
        PlanRequest request = TwoWeeks(5, 4, shortKit: true);
        Plan one = Planner.Solve(request);
        Plan two = Planner.Solve(request);
        Assert.Equal(one.Objective, two.Objective);
        Assert.Equal(one.BestBound, two.BestBound);
        Assert.Equal(Items(one), Items(two));
    }

    /// <summary>The bound of the large search must lie above what the exact model of a small squad proves best.</summary>
    [Fact]
    public void Bound_OfTheLargeSearch_LiesAboveTheOptimumOfTheExactOne()
    {
        PlanRequest three = TwoWeeks(3, 5, shortKit: false);
        Plan exact = Planner.Solve(
            three with
            {
                Budget = new SolveBudget { DeterministicTime = 4, GapLimit = 0 },
            }
        );
        var found = new SquadSearch(three, null, CancellationToken.None).Best();
        Assert.True(found.Bound >= exact.Objective, $"bound {found.Bound}, a plan has {exact.Objective}");
        Assert.True(found.Objective <= exact.BestBound, $"plan {found.Objective}, bound {exact.BestBound}");
    }

    [Fact]
    public void Plan_WithALock_KeepsIt()
    {
        PlanRequest request = TwoWeeks(4, 6, shortKit: true);
        LockedItem locked = new(request.Slots[0].Id, "a02", "snap-down", 3);
        Plan plan = Planner.Solve(request with { Locks = [locked] });
        Assert.Empty(IndependentChecker.Check(plan, request with { Locks = [locked] }));
        Assert.Contains(Items(plan), i => i == (locked.SessionId, "a02", "snap-down", 3));
    }

    /// <summary>Weeks made one after the other keep what ties them, and no plan made so lies above the athlete's proven bound.</summary>
    [Theory]
    [InlineData(7)]
    [InlineData(8)]
    public void WeekAfterWeek_KeepsGrowthAndOrderOfSteps_UnderTheBound(int seed)
    {
        Squad squad = new(TwoWeeks(1, seed, shortKit: false));
        AthleteRequest who = squad.Athletes[0];
        using SquadBound bound = new(squad, CancellationToken.None);
        Assert.Null(bound.Price(2, null));
        WeekAfterWeek weeks = new(squad, 0);
        var plan = weeks.Plan(
            bound.Ahead(0),
            WeekBounds.Fine,
            Enumerable.Range(0, squad.Kit.Length).ToImmutableDictionary(k => squad.Kit[k], k => squad.Most[k]),
            ImmutableDictionary<(string, string), long>.Empty,
            eachWeek: 2
        );
        bound.ByWeeks(8);
        Assert.True(weeks.IsWhole);
        Assert.NotEmpty(plan);
        LoadGrowth growth = Assert.Single(who.Growths);
        int Load(ImmutableArray<string> sessions) =>
            plan.Where(c => sessions.Contains(c.Slot.Id)).Sum(c => c.Menu.LoadOf(c.Exercise, growth.Tissue, c.Sets));
        Assert.True(100 * Load(growth.Later) <= ((100 + growth.Percent) * Load(growth.Earlier)) + (100 * growth.Step));
        Assert.All(
            plan.Where(c => c.Exercise.Id == "tuck-jump"),
            c => Assert.True(plan.Count(b => b.Exercise.Id == "box-jump" && b.Slot.Date < c.Slot.Date) >= 2)
        );
        long points = PlanPoints.Of(
            plan.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)),
            squad.Request
        );
        Assert.InRange(points, bound.Points * 0.9, bound.Points);
    }

    /// <summary>
    /// However the prices of what ties weeks together change, what the weeks prove stays above the best plan there is; the best prices
    /// are kept, so it comes no further away.
    /// </summary>
    [Theory]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(11)]
    public void Bound_AtPricesThatTheWeeksFoundThemselves_LiesAboveTheOptimumAndNoHigherThanBefore(int seed)
    {
        PlanRequest request = TwoWeeks(1, seed, shortKit: true);
        long Bound(bool more)
        {
            using SquadBound bound = new(new Squad(request), CancellationToken.None);
            Assert.Null(bound.Price(10, null));
            bound.ByWeeks(3, more);
            return bound.Points;
        }

        Found exact = new WholeSearch(
            request with
            {
                Budget = new SolveBudget { DeterministicTime = 20, GapLimit = 0 },
            },
            Asked.All(),
            CancellationToken.None
        ).Best();
        Assert.NotNull(exact.Objective);
        Assert.InRange(Bound(more: true), exact.Objective.Value, Bound(more: false));
    }

    /// <summary>A week by itself knows what the weeks before can't hold: a step they can't have opened, and demand they can't lead up to.</summary>
    [Fact]
    public void Week_ByItself_KnowsWhatTheWeeksBeforeCannotHold()
    {
        PlanRequest request = TwoWeeks(1, 12, shortKit: false);
        AthleteRequest who = request.Athletes[0];
        var weeks = request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)).OrderBy(w => w.Key).ToList();
        AthleteRequest first = OneWeek.Of(request, who, weeks[0]).Who;
        AthleteRequest second = OneWeek.Of(request, who, weeks[1]).Who;
        Assert.All(first.Menu.Where(m => m.ExerciseId == "tuck-jump"), m => Assert.Equal(2, m.After.Single().Sessions));
        Assert.All(second.Menu, m => Assert.Empty(m.After));
        Assert.Equal(120, Assert.Single(first.Caps).AtMost);
        Assert.Equal(10 + (120 * 110 / 100), Assert.Single(second.Caps).AtMost);
    }

    private static ImmutableArray<(string, string, string, int)> Items(Plan plan) =>
        [
            .. plan.Sessions.SelectMany(s =>
                s.Athletes.SelectMany(a => a.Items.Select(i => (s.Slot.Id, a.AthleteId, i.Dose.ExerciseId, i.Sets)))
            ),
        ];
}
