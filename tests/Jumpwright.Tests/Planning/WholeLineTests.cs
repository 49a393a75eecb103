using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Tests.Planning;

/// <summary>From histories through profile, ladder, doses and safety to a plan, on the catalogue that ships.</summary>
public class WholeLineTests(ITestOutputHelper output)
{
    private static readonly LocalDate From = new(2027, 1, 4);

    private static readonly Squad Club = new(
        "Club",
        "Europe/Paris",
        [
            new("plyo-box", 3),
            new("drop-box", 2),
            new("seat", 2),
            new("bench", 2),
            new("band", 2),
            new("heavy-dumbbell", 2),
            new("hex-bar", 2),
            new("run-up-lane", 1),
        ],
        [
            new(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45),
            new(IsoDayOfWeek.Wednesday, new LocalTime(17, 0), 45),
            new(IsoDayOfWeek.Friday, new LocalTime(7, 0), 45),
        ],
        [new Fixture(new LocalDate(2027, 1, 9), new LocalTime(15, 0), "cup match")],
        ImmutableDictionary<string, string>.Empty
    );

    [Fact]
    public void Plan_OfAClubOfSixteen_KeepsEveryLimitAndForbidsWhatMustBeForbidden()
    {
        PlanRequest request = Requests
            .For(Club, [.. Enumerable.Range(1, 16).Select(Somebody)], Catalogue.Standard, From, 1)
            .Require();
        Plan plan = Planner.Solve(request);
        output.WriteLine(
            $"{plan.Status} {plan.Objective} of {plan.BestBound}, gap {plan.Gap:0.0000}, {plan.Seconds} s"
        );

        Assert.Empty(IndependentChecker.Check(plan, request));
        Assert.True(plan.Gap < 0.06, $"gap {plan.Gap}");
        Assert.True(ItemsOf("a02", plan).Count >= 9, "an ordinary athlete gets three sessions");

        // a03 is 14: no depth jumps (reading of the house until limits are data).
        Assert.NotEmpty(ItemsOf("a03", plan));
        Assert.DoesNotContain(ItemsOf("a03", plan), i => Of(i).IsDepthJump);

        // a05 was operated on the knee and has no written restriction: nothing, and whom to ask.
        Assert.Empty(ItemsOf("a05", plan));
        Unmet ask = Assert.Single(plan.Unmet, u => u.AthleteId == "a05");
        Assert.Equal("any-exercise", ask.Wanted);
        Assert.Contains(ask.Because, b => b.ToString().StartsWith("Ask ", StringComparison.Ordinal));

        // a07 has knee pain of 4 of 10 whose tissue nobody licensed has named: only the lowest on the patellar tendon.
        Assert.All(ItemsOf("a07", plan), i => Assert.True(Of(i).Demand[Tissue.Patellar] <= 1, i.Dose.ExerciseId));
        Assert.Contains(plan.Unmet, u => u.AthleteId == "a07");

        // Friday 07:00 is within 48 h of Saturday's match: nothing of the top tier, nothing of high intensity.
        PlannedSession friday = plan.Sessions.Single(s => s.Slot.Id == "2027-01-08-am");
        Assert.DoesNotContain(friday.Athletes.SelectMany(a => a.Items), i => i.Dose.HighIntensity);

        // What Friday alone closes is open on Monday or Wednesday: it is not told as what stands in the way.
        Assert.DoesNotContain(
            plan.Unmet,
            u => u.Because.All(b => b.ToString().StartsWith("After 2027-01-08-am", StringComparison.Ordinal))
        );

        // Every item says why.
        Assert.All(plan.Sessions.SelectMany(s => s.Athletes).SelectMany(a => a.Items), i => Assert.NotEmpty(i.Because));
    }

    private static List<PlannedItem> ItemsOf(string id, Plan plan) =>
        [.. plan.Sessions.SelectMany(s => s.Athletes).Where(a => a.AthleteId == id).SelectMany(a => a.Items)];

    private static Exercise Of(PlannedItem item) => Catalogue.Standard.Find(item.Dose.ExerciseId)!;

    /// <summary>An athlete of some level with four clean sessions of everything up to some stage.</summary>
    private static History Somebody(int n)
    {
        Athlete athlete = new(
            $"a{n:00}",
            $"Athlete {n}",
            n == 3 ? new LocalDate(2013, 1, 1) : new LocalDate(2000, 1, 1),
            60 + (n * 3),
            1.8,
            "volleyball",
            (TrainingLevel)(1 + (n % 3)),
            n == 5 ? new Operation(new LocalDate(2026, 9, 1), "knee", Side.Left) : null,
            null
        );
        var done =
            from exercise in Catalogue.Standard.Exercises
            where (int)exercise.Stage <= n % 8
            from daysAgo in new[] { 20, 15, 8, 5 }
            let reps = exercise.Dose.RepsMax
            select new CompletedItem(
                athlete.Id,
                From.PlusDays(-daysAgo),
                "s",
                exercise.Id,
                3,
                reps,
                3 * reps * exercise.ContactsPerRep,
                0,
                0,
                0,
                5,
                exercise.DropRangeM?.MinM,
                null
            );
        return new(
            athlete,
            [],
            [
                new ScreenResult(
                    athlete.Id,
                    From.PlusDays(-5),
                    "landing-screen",
                    Side.Unknown,
                    n % 6,
                    "faults",
                    1,
                    "coach",
                    null
                ),
            ],
            [
                new SymptomReport(
                    athlete.Id,
                    From.PlusDays(-1),
                    "knee",
                    Side.Left,
                    null,
                    null,
                    "pain",
                    "during",
                    n == 7 ? 4 : 0,
                    null
                ),
            ],
            [],
            [.. done]
        );
    }
}
