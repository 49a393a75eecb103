using System.Collections.Immutable;
using Jumpwright.Planning;
using Jumpwright.Planning.Collisions;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

public class CollisionTests(ITestOutputHelper output)
{
    [Fact]
    public void Solve_LockThatARulingForbids_NamesBothInWords()
    {
        var slots = Slots(45, 1);
        AthleteRequest who = Athlete(
            "a01",
            Item(slots[0].Id, "snap-down", 5, 1),
            Item(slots[0].Id, "depth-jump", 9, 3)
        ) with
        {
            RulingsByDay = ImmutableDictionary<NodaTime.LocalDate, ImmutableArray<Ruling>>.Empty.Add(
                slots[0].Date,
                [
                    new Ruling(
                        "under-16",
                        new NoDepthJumps(),
                        $"15 years old: no depth jumps.",
                        new Source("house-rule", "made up", SourceKind.House)
                    ),
                ]
            ),
        };
        Plan plan = Planner.Solve(
            Request(slots, who) with
            {
                Locks = [new LockedItem(slots[0].Id, "a01", "depth-jump", 3)],
            }
        );

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Null(plan.Objective);
        Assert.Empty(plan.Sessions);
        Collision collision = Assert.Single(plan.Collisions);
        Assert.Equal(["limit", "lock"], collision.Requirements.Select(r => r.Kind));
        Assert.Contains("15 years old", collision.Requirements[0].Text);
    }

    [Fact]
    public void Solve_WishForWhatIsNotOpen_CollidesWithTheMenu()
    {
        var slots = Slots(45, 1);
        Plan plan = Planner.Solve(
            Request(slots, Athlete("a01", Item(slots[0].Id, "snap-down", 5, 1))) with
            {
                Wishes = [new Wish("a01", "depth-jump")],
            }
        );

        Collision collision = Assert.Single(plan.Collisions);
        Assert.Equal(["limit", "wish"], collision.Requirements.Select(r => r.Kind).Order());
    }

    [Fact]
    public void Solve_WishesThatCanBeMet_AreMetEvenWhenWorthNothing()
    {
        var slots = Slots(45, 1, 3);
        PlanRequest request = Request(
            slots,
            Athlete(
                "a01",
                [
                    .. slots.SelectMany(s =>
                        new[]
                        {
                            Item(s.Id, "snap-down", 5, 1),
                            Item(s.Id, "box-jump", 0, 0),
                            Item(s.Id, "tuck-jump", 9, 9),
                        }
                    ),
                ]
            )
        ) with
        {
            Wishes = [new Wish("a01", "box-jump", TimesAtLeast: 2, SetsAtLeast: 3)],
        };
        Plan plan = Planner.Solve(request);

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Empty(IndependentChecker.Check(plan, request));
        Assert.All(
            plan.Sessions,
            s => Assert.Contains(s.Athletes[0].Items, i => i.Dose.ExerciseId == "box-jump" && i.Sets >= 3)
        );
    }

    [Fact]
    public void Solve_ImpossibleLocksAndWishes_NameSetsThatAreMinimalAndDisjoint()
    {
        int cases = 0,
            sets = 0,
            large = 0;
        for (int seed = 0; cases < 20 && seed < 200; seed++)
        {
            PlanRequest request = TinySquads.Impossible(seed);
            Plan plan = Planner.Solve(request);
            if (plan.Status != PlanStatus.Infeasible)
            {
                continue;
            }

            cases++;
            Assert.NotEmpty(plan.Collisions);
            var all = plan.Collisions.SelectMany(c => c.Requirements.Select(r => r.Id)).ToList();
            Assert.Equal(all.Count, all.Distinct(StringComparer.Ordinal).Count());
            foreach (Collision collision in plan.Collisions)
            {
                sets++;
                string[] ids = [.. collision.Requirements.Select(r => r.Id)];
                large += ids.Length > 2 ? 1 : 0;
                Assert.All(collision.Requirements, r => Assert.NotEqual("", r.Text));
                Assert.Equal(PlanStatus.Infeasible, Answer(request, ids));
                foreach (string one in ids)
                {
                    Assert.True(
                        Answer(request, ids.Where(i => i != one)) == PlanStatus.Feasible,
                        $"seed {seed}: without {one} still impossible: {string.Join(", ", ids)}"
                    );
                }
            }
        }

        output.WriteLine($"{cases} cases, {sets} sets, {large} of them of more than two");
        Assert.Equal(20, cases);
        Assert.True(large > 3);
    }

    [Fact]
    public void Solve_LargerSquadWithLocksThatShareOneBox_NamesTheBoxAndTheLocks()
    {
        // One drop box for half of 40 min: two athletes' 4 sets of 3 min are 24 min.
        var slots = Slots(45, 1);
        PlanRequest request = Request(
            slots,
            [
                .. Enumerable
                    .Range(1, 6)
                    .Select(n =>
                        Athlete($"a{n:00}", Item(slots[0].Id, "snap-down", 5, 1), Item(slots[0].Id, "depth-jump", 9, 3))
                    ),
            ]
        ) with
        {
            Kit = [new("drop-box", 1)],
            Locks =
            [
                new LockedItem(slots[0].Id, "a02", "depth-jump", 4),
                new LockedItem(slots[0].Id, "a05", "depth-jump", 4),
                new LockedItem(slots[0].Id, "a06", "snap-down", 2),
            ],
        };
        Plan plan = Planner.Solve(request);

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Collision collision = Assert.Single(plan.Collisions);
        Assert.Equal(["limit", "lock", "lock"], collision.Requirements.Select(r => r.Kind).Order());
        Assert.Contains(collision.Requirements, r => r.Text.ToString().Contains("drop-box", StringComparison.Ordinal));
    }

    private static PlanStatus Answer(PlanRequest request, IEnumerable<string> ids) =>
        CollisionFinder.Answer(request, ids, CancellationToken.None);
}
