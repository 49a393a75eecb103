using CsCheck;
using Jumpwright.Exercises;
using Jumpwright.Progression;

namespace Jumpwright.Tests.Progression;

/// <summary>Owned is earned by clean sessions, and fades.</summary>
public class OwnershipTests
{
    private static readonly AthleteStory New = new();

    [Fact]
    public void TwoCleanSessions_WithinThreeWeeks_Own() =>
        Assert.Equal(RungState.Owned, New.Did("snap-down", 21).Did("snap-down", 0).State("snap-down"));

    [Fact]
    public void TwoCleanSessions_TooFarApart_DoNotOwn() =>
        Assert.Equal(RungState.Open, New.Did("snap-down", 22).Did("snap-down", 0).State("snap-down"));

    [Fact]
    public void TwoEntriesOfOneDay_AreOneSession() =>
        Assert.Equal(RungState.Open, New.Did("snap-down", 2).Did("snap-down", 2).State("snap-down"));

    [Fact]
    public void OneLandingFault_DoesNotCountButDoesNotLoseEither()
    {
        Assert.Equal(RungState.Open, New.Did("snap-down", 6).Did("snap-down", 2, faults: 1).State("snap-down"));
        Assert.Equal(
            RungState.Owned,
            New.Did("snap-down", 9).Did("snap-down", 6).Did("snap-down", 2, faults: 1).State("snap-down")
        );
    }

    [Fact]
    public void TwoLandingFaultsOrPain_StartAnew()
    {
        AthleteStory owned = New.Earned("snap-down", daysAgo: 5);
        Assert.Equal(RungState.Open, owned.Did("snap-down", 2, faults: 2).State("snap-down"));
        Assert.Equal(RungState.Open, owned.Did("snap-down", 2, pain: 3).State("snap-down"));
        Assert.Equal(RungState.Owned, owned.Did("snap-down", 2, pain: 2).State("snap-down"));
        Assert.Contains(
            "pain 3/10 the morning after 2 Jan 2027",
            owned.Did("snap-down", 2, pain: 3).Reason("snap-down", "owned").Sentence,
            StringComparison.Ordinal
        );
    }

    /// <summary>What stops a set spoils its session: above 2 of 10 in the work nothing was done cleanly.</summary>
    [Fact]
    public void PainInTheWork_AboveWhatStopsASet_StartsAnew()
    {
        AthleteStory owned = New.Earned("snap-down", daysAgo: 5);
        Assert.Equal(RungState.Owned, owned.Did("snap-down", 2, during: 2).State("snap-down"));
        Assert.Equal(RungState.Open, owned.Did("snap-down", 2, during: 3).State("snap-down"));
        Assert.Contains(
            "pain 3/10 in the work of 2 Jan 2027",
            owned.Did("snap-down", 2, during: 3).Reason("snap-down", "owned").Sentence,
            StringComparison.Ordinal
        );
    }

    /// <summary>The log says 0, a report of the same day 4: the worse of the two holds, for all that was done that day.</summary>
    [Theory]
    [InlineData("during", 2, 4, RungState.Open)]
    [InlineData("after", 2, 4, RungState.Open)]
    [InlineData("next-morning", 1, 4, RungState.Open)]
    [InlineData("during", 2, 2, RungState.Owned)]
    [InlineData("during", 4, 6, RungState.Owned)]
    public void AReportOfPain_SpeaksForTheLogOfItsDay(string when, int daysAgo, double score, RungState state) =>
        Assert.Equal(
            state,
            New.Earned("snap-down", daysAgo: 5).Did("snap-down", 2).Hurt(score, when, daysAgo).State("snap-down")
        );

    /// <summary>A report can only take away: it names one place, and the log asks for any.</summary>
    [Fact]
    public void ALowReport_NeverStandsForAPainNobodyLogged() =>
        Assert.Equal(
            RungState.Open,
            New.Did("snap-down", 6, pain: null)
                .Did("snap-down", 2, pain: null)
                .Hurt(0, "next-morning", 5)
                .Hurt(0, "next-morning", 1)
                .State("snap-down")
        );

    [Theory]
    [InlineData(null, 0.0)]
    [InlineData(0, null)]
    public void WhatWasNotWrittenDown_CountsForNothing(int? faults, double? pain) =>
        Assert.Equal(
            RungState.Open,
            New.Did("snap-down", 6, faults, pain).Did("snap-down", 2, faults, pain).State("snap-down")
        );

    [Fact]
    public void FewerRepsThanTheLeastDose_DoNotCount() =>
        Assert.Equal(RungState.Open, New.Did("snap-down", 6, sets: 1).Did("snap-down", 2, sets: 1).State("snap-down"));

    [Theory]
    [InlineData(21, RungState.Owned)]
    [InlineData(22, RungState.Open)]
    [InlineData(42, RungState.Open)]
    [InlineData(43, RungState.Closed)]
    public void WithoutIt_OwnedFadesToOpenAndThenToClosed(int daysAgo, RungState state) =>
        Assert.Equal(state, New.Earned("pogo-hop", daysAgo).State("pogo-hop"));

    [Fact]
    public void Faded_AStepBeforeItDoneCleanlyAgain_OpensIt()
    {
        AthleteStory faded = New.Earned("pogo-hop", 60);
        Assert.Equal(RungState.Closed, faded.State("pogo-hop"));
        Assert.Equal(RungState.Open, faded.Earned("low-pogo", 2).State("pogo-hop"));
    }

    [Fact]
    public void TheFirstSteps_NeverFadeShut() =>
        Assert.Equal(RungState.Open, New.Earned("snap-down", 300).State("snap-down"));

    [Fact]
    public void AHarderNeighbour_KeepsItAliveAndEarnsItToo()
    {
        Assert.Equal(RungState.Owned, New.Earned("low-pogo", 40).Did("pogo-hop", 3).State("low-pogo"));
        AthleteStory through = New.Earned("jump-and-stick", 3);
        Assert.Equal(RungState.Owned, through.State("snap-down"));
        Assert.Contains(
            "through low jump and stick",
            through.Reason("snap-down", "owned").Sentence,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void AFlawInTheEasierOne_IsNotMendedByAnEarlierHarderOne() =>
        Assert.Equal(
            RungState.Open,
            New.Earned("jump-and-stick", 6).Did("snap-down", 3, faults: 2).Did("snap-down", 2).State("snap-down")
        );

    [Fact]
    public void LoggedLandingFaults_HoldEverythingBeyondLandingBack()
    {
        AthleteStory story = New.Earned("snap-down", 5).Earned("low-box-jump", 5).Earned("low-pogo", 5);
        Assert.Equal(RungState.Open, story.State("pogo-hop"));
        AthleteStory sloppy = story.Did("jump-and-stick", 1, faults: 2);
        Assert.Equal(RungState.Closed, sloppy.State("pogo-hop"));
        Assert.Contains(
            "2 landing faults logged on 3 Jan 2027",
            sloppy.Reason("pogo-hop", "landing-hold").Sentence,
            StringComparison.Ordinal
        );
        Assert.Equal(RungState.Open, sloppy.State("jump-and-stick"));
        Assert.Equal(RungState.Open, sloppy.Did("snap-down", 0).State("pogo-hop"));
    }

    [Fact]
    public void AFailedLandingScreen_HoldsWhateverTheNumbers()
    {
        AthleteStory story = New.WellTested().Earned("low-box-jump").Earned("low-pogo").Earned("snap-down");
        Assert.Equal(RungState.Open, story.State("box-jump-no-dip"));
        AthleteStory failed = story.Screened("landing-screen", 8, "faults", daysAgo: 1);
        Assert.Equal(RungState.Closed, failed.State("box-jump-no-dip"));
        Assert.Equal(RungState.Closed, failed.State("pogo-hop"));
        Assert.Equal(RungState.Owned, failed.State("low-pogo"));
    }

    [Fact]
    public void TimeOff_OfMoreThanTwoWeeks_BeginsOneStageLowerUntilTwoSessionsAreDone()
    {
        AthleteStory story = New.Earned("countermovement-jump", 15).Earned("box-jump", 15);
        Assert.Equal(RungState.Closed, story.State("countermovement-jump"));
        Assert.Equal(RungState.Owned, story.State("box-jump"));
        Assert.Contains(
            "15 days without a good session",
            story.Reason("countermovement-jump", "time-off-hold").Sentence,
            StringComparison.Ordinal
        );
        AthleteStory back = story.Did("box-jump", 2).Did("box-jump", 0);
        Assert.Equal(RungState.Owned, back.State("countermovement-jump"));
        Assert.NotNull(story.Ladder().ComingBack);
        Assert.Null(back.Ladder().ComingBack);
    }

    [Fact]
    public void Illness_BeginsOneStageLowerUntilTwoSessionsAreDone()
    {
        AthleteStory story = New.Earned("countermovement-jump", 5).Felt("illness", 4);
        Assert.Equal(RungState.Closed, story.State("countermovement-jump"));
        Assert.Equal(RungState.Owned, story.Did("box-jump", 3).Did("box-jump", 1).State("countermovement-jump"));
    }

    [Fact]
    public void AFlawedSession_WhateverCameBefore_NeverRaisesARung()
    {
        string[] ids = [.. Catalogue.Standard.Exercises.Select(e => e.Id)];
        Gen<(string Id, int DaysAgo, int Faults, int Pain)> session = Gen.Select(
            Gen.Int[0, ids.Length - 1].Select(i => ids[i]),
            Gen.Int[0, 60],
            Gen.Frequency((4, Gen.Const(0)), (1, Gen.Const(1))),
            Gen.Int[0, 2]
        );
        Gen<(int Faults, int Pain)> flaw = Gen.OneOf(
            Gen.Select(Gen.Int[2, 5], Gen.Int[0, 8]),
            Gen.Select(Gen.Int[0, 1], Gen.Int[3, 8])
        );
        Gen.Select(session.Array[0, 40], session, flaw, Gen.Bool)
            .Sample(
                (log, last, wrong, tested) =>
                {
                    AthleteStory story = tested ? New.WellTested() : New;
                    foreach ((string id, int daysAgo, int faults, int pain) in log)
                    {
                        // Twice in a week, so that exercises are earned often enough to be lost.
                        story = story.Did(id, daysAgo, faults, pain).Did(id, daysAgo + 4, faults, pain);
                    }

                    Ladder before = story.Ladder();
                    Ladder after = story.Did(last.Id, last.DaysAgo, wrong.Faults, wrong.Pain).Ladder();
                    return after.Rungs.All(r => r.State <= before.Find(r.ExerciseId)!.State);
                },
                iter: 300
            );
    }
}
