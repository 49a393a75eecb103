using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>The ladder through its ordinary door, under the rules that Safety really has.</summary>
public class LadderUnderSafetyTests
{
    private static readonly LocalDate Today = AthleteStory.Today;

    private static readonly AthleteStory Trained = new AthleteStory()
        .WellTested()
        .Earned("low-drop-jump")
        .Earned("drop-landing")
        .Earned("countermovement-jump");

    private static readonly SymptomReport Fine = new(
        "a01",
        Today.PlusDays(-1),
        "knee",
        Side.Left,
        null,
        null,
        "pain",
        "next-morning",
        0,
        null
    );

    [Fact]
    public void AGrownTrainedAthlete_HasTheDepthJumpOpen() =>
        Assert.Equal(RungState.Open, Ladder(Trained.Athlete, Fine).Find("depth-jump")!.State);

    [Theory]
    [InlineData(2011)]
    [InlineData(null)]
    public void UnderSixteenOrAgeUnknown_HasNoDepthJumpHoweverWellTrained(int? bornIn)
    {
        LocalDate? born = bornIn is { } year ? new LocalDate(year, 6, 1) : null;
        Ladder ladder = Ladder(Trained.Athlete with { BirthDate = born }, Fine);
        Assert.All(
            Catalogue.Standard.Exercises.Where(e => e.IsDepthJump),
            e => Assert.Equal(RungState.Closed, ladder.Find(e.Id)!.State)
        );
        Assert.Equal(RungState.Owned, ladder.Find("countermovement-jump")!.State);
    }

    [Fact]
    public void AfterAnOperation_WithoutARestriction_NothingIsOpenAndNoTestIsProposed()
    {
        Ladder ladder = Ladder(Operated, Fine);
        Assert.All(ladder.Rungs, r => Assert.Equal(RungState.Closed, r.State));
        Assert.All(
            ladder.Rungs.SelectMany(r => r.Reasons).Where(r => r.CheapestTest is not null),
            r => Assert.StartsWith("not now", r.CheapestTest!.ToString(), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void AfterAnOperation_OnlyWhatIsAllowedInWriting_MayStandOnTheLadder()
    {
        var restriction = new Restriction(
            "a01",
            Today.PlusDays(-10),
            Today.PlusDays(20),
            "knee",
            Side.Left,
            ["snap-down", "low-box-jump"],
            [],
            null,
            "Dr Moss",
            "physiotherapist",
            null
        );
        Ladder ladder = Ladder(Operated, Fine, restriction);
        Assert.All(
            ladder.Rungs.Where(r => r.State != RungState.Closed),
            r => Assert.Contains(r.ExerciseId, restriction.Allowed)
        );
        Assert.NotEqual(RungState.Closed, ladder.Find("snap-down")!.State);
    }

    [Fact]
    public void SoreAchillesNextMorning_ClosesHopsAndLeavesPushToABox()
    {
        Ladder ladder = Ladder(Trained.Athlete, Fine with { Site = "achilles", Score = 4 });
        Assert.Equal(RungState.Closed, ladder.Find("pogo-hop")!.State);
        Assert.Equal(RungState.Closed, ladder.Find("depth-jump")!.State);
        Assert.Equal(RungState.Owned, ladder.Find("box-jump")!.State);
    }

    [Fact]
    public void AStopSign_ClosesEverything() =>
        Assert.All(
            Ladder(Trained.Athlete, Fine with { Kind = "giving-way", When = null, Score = null }).Rungs,
            r => Assert.Equal(RungState.Closed, r.State)
        );

    private static Athlete Operated =>
        Trained.Athlete with
        {
            Operation = new Operation(new LocalDate(2026, 9, 4), "knee", Side.Left),
        };

    private static Ladder Ladder(Athlete athlete, SymptomReport symptom, params Restriction[] restrictions)
    {
        var history = new History(athlete, [], Trained.Screens, [symptom], [.. restrictions], Trained.Done);
        var profile = new Profile("a01", Today, [], $"", Trained.Measures);
        return Ladders.For(profile, history, Catalogue.Standard, Today);
    }
}
