using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Planning;
using Jumpwright.Plans;
using NodaTime;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

public class PlannerTests(ITestOutputHelper output)
{
    [Fact]
    public void Solve_OneAthleteOneSession_TakesTheItemsWorthMost()
    {
        var slots = Slots(45, 1);
        Plan plan = Planner.Solve(
            Request(
                slots,
                Athlete(
                    "a01",
                    Item(slots[0].Id, "snap-down", 10, 2),
                    Item(slots[0].Id, "box-jump", 20, 5),
                    Item(slots[0].Id, "depth-jump", 30, 9)
                )
            )
        );

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.Equal(
            ["snap-down", "depth-jump", "box-jump"],
            plan.Sessions[0].Athletes[0].Items.Select(i => i.Dose.ExerciseId)
        );
        // Four sets of each: 10+2+2+2, 20+5+5+5, 30+9+9+9.
        Assert.Equal(16 + 35 + 57, plan.Objective);
        Assert.Equal(0, plan.Gap);
        Assert.Equal(0, plan.ObjectiveEmpty);
    }

    [Fact]
    public void Solve_DayBeforeAMatch_HoldsOnlyWorkThatIsRecoveredFromByThen()
    {
        // 17:00 to 17:45 on the eve, kick-off at 15:00: 21 hours and a quarter.
        var slots = Slots(45, 1);
        PlanRequest request = Request(
            slots,
            Athlete(
                "a01",
                Item(slots[0].Id, "snap-down", 10, 2),
                Item(slots[0].Id, "pogo-hop", 10, 2),
                Item(slots[0].Id, "tuck-jump", 20, 5)
            )
        );
        Fixture match = new(slots[0].Date.PlusDays(1), new LocalTime(15, 0), "the match");
        string[] Eve(PlanRequest asked) =>
            [
                .. Planner
                    .Solve(asked)
                    .Sessions[0]
                    .Athletes.SelectMany(a => a.Items)
                    .Select(i => i.Dose.ExerciseId)
                    .Order(StringComparer.Ordinal),
            ];

        Assert.Equal(["pogo-hop", "snap-down", "tuck-jump"], Eve(request));
        Assert.Equal(["pogo-hop", "snap-down"], Eve(request with { Fixtures = [match] }));
        // A coach who answers for it may ask for half of the hours.
        Assert.Equal(
            ["pogo-hop", "snap-down", "tuck-jump"],
            Eve(request with { Fixtures = [match], Limits = request.Limits with { RecoveryShareBeforeFixture = 0.5 } })
        );
        Plan plan = Planner.Solve(request with { Fixtures = [match] });
        Unmet left = Assert.Single(plan.Unmet);
        Assert.Equal("tuck-jump", left.Wanted);
        Assert.Contains("asks for 24 h of recovery", left.Because[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_SixteenAthletesThreeSessions_SmallGapAndTheSamePlanWhateverTheOrderOfAthletes()
    {
        var slots = Slots(45, 0, 1, 3);
        PlanRequest request = Request(
            slots,
            [.. Enumerable.Range(1, 16).Select(n => FullMenu($"a{n:00}", slots, n))]
        ) with
        {
            Budget = new SolveBudget(),
        };

        Plan plan = Planner.Solve(request);
        output.WriteLine(
            $"{plan.Status} {plan.Objective} of {plan.BestBound}, gap {plan.Gap:0.0000}, {plan.Seconds} s, {plan.Sessions.Sum(s => s.Athletes.Sum(a => a.Items.Length))} items, {Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(Written(plan))))[..12]}"
        );

        Assert.NotNull(plan.Objective);
        Assert.True(plan.Gap < 0.05, $"gap {plan.Gap}");
        Plan again = Planner.Solve(request with { Athletes = [.. request.Athletes.Reverse()] });
        Assert.Equal(plan.Objective, again.Objective);
        Assert.Equal(Written(plan), Written(again));
    }

    internal static string Written(Plan plan) =>
        string.Join(
            '\n',
            plan.Sessions.SelectMany(s =>
                s.Athletes.Select(a =>
                        $"{s.Slot.Id} {a.AthleteId} {string.Join(' ', a.Items.Select(i => $"{i.Dose.ExerciseId}x{i.Sets}"))}"
                    )
                    .Concat(
                        s.Rotation.Select(r =>
                            $"{s.Slot.Id} {r.Station} {r.ExerciseId} {r.StartMin}-{r.EndMin} {string.Join(',', r.AthleteIds)}"
                        )
                    )
            )
        );
}
