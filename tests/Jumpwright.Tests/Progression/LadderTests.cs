using System.Collections.Immutable;
using CsCheck;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Progression;

public class LadderTests
{
    private static readonly string[] FirstSteps = ["snap-down", "low-pogo", "low-box-jump"];

    [Fact]
    public void NoTestsAtAll_OpensTheFirstStepsOnly()
    {
        Ladder ladder = new AthleteStory().Ladder();
        Assert.Equal(Catalogue.Standard.Exercises.Length, ladder.Rungs.Length);
        Assert.Equal(
            Catalogue.Standard.Exercises.Where(e => e.Entry.IsEmpty).Select(e => e.Id),
            ladder.Rungs.Where(r => r.State == RungState.Open).Select(r => r.ExerciseId)
        );
        Assert.All(FirstSteps, id => Assert.Equal(RungState.Open, ladder.Find(id)!.State));
        Assert.DoesNotContain(ladder.Rungs, r => r.State == RungState.Owned);
    }

    [Fact]
    public void EveryClosedRung_SaysWhyAndWhatWouldSettleIt()
    {
        Ladder ladder = new AthleteStory().Ladder();
        Assert.All(
            ladder.Rungs.Where(r => r.State == RungState.Closed),
            r =>
            {
                Assert.NotEqual(CriterionVerdict.Met, r.Reasons[0].Verdict);
                Assert.NotNull(r.Reasons[0].CheapestTest);
                Assert.DoesNotContain(r.Reasons, x => x.CriterionId == "owned");
            }
        );
    }

    [Fact]
    public void DepthJump_AllTestedAndEarned_IsOpen()
    {
        Rung rung = Ready().Ladder().Find("depth-jump")!;
        Assert.Equal(RungState.Open, rung.State);
        RungReason contact = rung.Reasons.Single(r => r.CriterionId == "drop-jump-contact");
        Assert.Equal(CriterionVerdict.Met, contact.Verdict);
        Assert.Equal(new LocalDate(2027, 1, 1), contact.Date);
        Assert.Contains("200 ± 10 ms on 1 Jan 2027", contact.Sentence, StringComparison.Ordinal);
        Assert.Null(contact.CheapestTest);
    }

    [Theory]
    // Contact 0.25 s at most, performance (0.75). With a doubt of 0.01 s, one z of 0.674 is 0.0067 s.
    [InlineData(0.243, CriterionVerdict.Met)]
    [InlineData(0.244, CriterionVerdict.Unclear)]
    [InlineData(0.256, CriterionVerdict.Unclear)]
    [InlineData(0.257, CriterionVerdict.NotMet)]
    public void Performance_NearTheThreshold_IsMetUnclearOrNot(double contact, CriterionVerdict verdict)
    {
        AthleteStory story = Ready() with { Measures = [] };
        story = story.WellTested().Measured("contact_time_s", JumpTask.DropJump, contact, 0.01, "s", daysAgo: 1);
        RungReason reason = story.Reason("depth-jump", "drop-jump-contact");
        Assert.Equal(verdict, reason.Verdict);
        Assert.Equal(verdict == CriterionVerdict.Met, story.State("depth-jump") == RungState.Open);
        Assert.Equal(verdict == CriterionVerdict.Met, reason.CheapestTest is null);
    }

    [Theory]
    // Landing screen, 1 point of error for one rating (Everard), half a point of grace: at most 4 means below 4.5.
    [InlineData(3, CriterionVerdict.Met)] // P = Φ(1.5) = 0.933
    [InlineData(4, CriterionVerdict.Unclear)] // P = Φ(0.5) = 0.691
    [InlineData(6, CriterionVerdict.NotMet)] // P = Φ(-1.5) = 0.067
    public void Safety_NeedsNineInTen(double faults, CriterionVerdict verdict)
    {
        AthleteStory story = Ready().Screened("landing-screen", faults, "faults", daysAgo: 1);
        Assert.Equal(verdict, story.Reason("depth-jump", "landing-screen-at-most-4").Verdict);
    }

    [Fact]
    public void Unclear_OneRatingOfFour_IsSettledByMoreRatings()
    {
        AthleteStory story = Ready().Screened("landing-screen", 4, "faults", daysAgo: 1);
        // Margin 0.5, doubt 1, z 1.2816: (1.2816 / 0.5)² = 6.57 ratings in all, so 6 more.
        Assert.Equal(
            "6 more trials of the landing screen (a low box, a phone, five minutes), if they come out the same",
            story.Reason("depth-jump", "landing-screen-at-most-4").CheapestTest
        );
        for (int i = 0; i < 6; i++)
        {
            story = story.Screened("landing-screen", 4, "faults", daysAgo: 1);
        }

        Assert.Equal(CriterionVerdict.Met, story.Reason("depth-jump", "landing-screen-at-most-4").Verdict);
    }

    [Fact]
    public void NotTested_ATestOfAnotherTask_DoesNotCount()
    {
        AthleteStory story = Ready();
        story = story with { Measures = [.. story.Measures.Where(m => m.Task != JumpTask.DropJump)] };
        RungReason reason = story.Reason("depth-jump", "drop-jump-contact");
        Assert.Equal(CriterionVerdict.NotTested, reason.Verdict);
        Assert.Null(reason.Probability);
        Assert.Equal(RungState.Closed, story.State("depth-jump"));
    }

    [Theory]
    [InlineData(42, RungState.Open)]
    [InlineData(43, RungState.Closed)]
    public void Stale_AfterSixWeeks_Closes(int daysAgo, RungState state)
    {
        AthleteStory story = (Ready() with { Measures = [], Screens = [] }).WellTested(daysAgo);
        Assert.Equal(state, story.State("depth-jump"));
        if (state == RungState.Closed)
        {
            Assert.Equal(CriterionVerdict.Stale, story.Reason("depth-jump", "drop-jump-contact").Verdict);
        }
    }

    [Theory]
    [InlineData(14, CriterionVerdict.Met)]
    [InlineData(15, CriterionVerdict.Stale)]
    public void Stale_AfterAnOperation_ComesAfterTwoWeeks(int daysAgo, CriterionVerdict verdict)
    {
        AthleteStory story = (Ready() with { Measures = [], Screens = [] }).WellTested(daysAgo);
        story = story with
        {
            Athlete = story.Athlete with { Operation = new Operation(new LocalDate(2026, 9, 1), "knee", Side.Left) },
        };
        Assert.Equal(verdict, story.Reason("depth-jump", "drop-jump-contact").Verdict);
    }

    [Fact]
    public void Sides_OneLegTested_IsNotTestedOnTheOther()
    {
        AthleteStory story = new AthleteStory().Earned("pogo-hop").Screened("heel-raises", 30, "reps", Side.Left);
        RungReason reason = story.Reason("single-leg-pogo", "heel-raises-each-side");
        Assert.Equal(CriterionVerdict.NotTested, reason.Verdict);
        Assert.Contains("right", reason.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Screen_InAnotherUnit_IsNotReadAndSaysSo()
    {
        AthleteStory story = Ready() with { Screens = [] };
        RungReason reason = story.Screened("hex-bar-load", 220, "lb").Reason("hex-bar-jump", "hex-bar-tested");
        Assert.Equal(CriterionVerdict.NotTested, reason.Verdict);
        Assert.Contains("the result of 1 Jan 2027 is in 'lb', not in kg", reason.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_TheWorseLegSpeaks()
    {
        AthleteStory story = new AthleteStory()
            .Earned("pogo-hop")
            .Screened("heel-raises", 30, "reps", Side.Left)
            .Screened("heel-raises", 9, "reps", Side.Right);
        RungReason reason = story.Reason("single-leg-pogo", "heel-raises-each-side");
        Assert.Equal(CriterionVerdict.NotMet, reason.Verdict);
        Assert.Contains("right 9", reason.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Alternative_AFlightTimeHeight_SettlesAJumpHeightForWhoHasOnlyACamera()
    {
        AthleteStory story = Ready();
        story = story with { Measures = [.. story.Measures.Where(m => m.Measure.Name != "jump_height_m")] };
        Assert.Equal(RungState.Closed, story.State("depth-jump"));
        story = story.Measured("jump_height_flight_time_m", JumpTask.CountermovementJump, 0.35, 0.02, "m");
        Assert.Equal(RungState.Open, story.State("depth-jump"));
    }

    [Fact]
    public void BodyMass_Unknown_ClosesWhatIsJudgedByIt()
    {
        AthleteStory story = Ready().Earned("hex-bar-lift");
        Assert.Equal(RungState.Open, story.State("hex-bar-jump"));
        AthleteStory unweighed = story with { Athlete = story.Athlete with { BodyMassKg = null } };
        Assert.Equal(RungState.Closed, unweighed.State("hex-bar-jump"));
        Assert.Equal("weighing", unweighed.Reason("hex-bar-jump", "hex-bar-tested").CheapestTest);
    }

    [Fact]
    public void AfterToday_DoesNotCount()
    {
        AthleteStory story = Ready();
        Ladder before = story.On(AthleteStory.Today.PlusDays(-60));
        Assert.DoesNotContain(before.Rungs, r => r.State == RungState.Owned);
        Assert.Equal(RungState.Closed, before.Find("depth-jump")!.State);
    }

    [Fact]
    public void Safety_ARuling_ClosesWithItsOwnSentence()
    {
        var ruling = new Ruling(
            "youth",
            new NoDepthJumps(),
            $"Under 16: no depth jumps.",
            Bibliography.Get("house-rule")
        );
        Rung rung = Ready().Ladder(ruling).Find("depth-jump")!;
        Assert.Equal(RungState.Closed, rung.State);
        Assert.Equal("youth", rung.Reasons[0].CriterionId);
        Assert.Equal("Under 16: no depth jumps.", rung.Reasons[0].Sentence);
    }

    [Theory]
    // A cap on the drop closes an exercise only if even its lowest drop is above it; the dose obeys the cap.
    [InlineData(0.46, RungState.Open)]
    [InlineData(0.30, RungState.Open)]
    [InlineData(0.25, RungState.Closed)]
    public void Safety_ACapOnTheDrop_ClosesWhatStartsAboveIt(double capM, RungState state)
    {
        var ruling = new Ruling("drop", new DropAtMost(capM), $"A cap.", Bibliography.Get("house-rule"));
        Assert.Equal(state, Ready().Ladder(ruling).Find("depth-jump")!.State);
    }

    [Fact]
    public void SoreAchilles_TurnsTheUsualOrderRound_PushToABoxComesBeforeHops()
    {
        var sore = new Ruling("achilles", new TierAtMost(Tissue.Achilles, 1), $"Sore.", Bibliography.Get("house-rule"));
        Ladder ladder = new AthleteStory()
            .Earned("snap-down")
            .Earned("jump-and-stick")
            .Earned("low-box-jump")
            .Earned("box-jump-no-dip")
            .Ladder(sore);
        Assert.Equal(RungState.Closed, ladder.Find("pogo-hop")!.State);
        Assert.Equal(RungState.Open, ladder.Find("seated-box-jump")!.State);
        Assert.Equal(RungState.Open, ladder.Find("box-jump")!.State);
        Assert.Equal(RungState.Open, ladder.Find("squat-jump")!.State);
    }

    [Fact]
    public void CheapestTest_OfAFarStep_IsTheNearestOneThatIsOpen()
    {
        AthleteStory story = new AthleteStory().Earned("snap-down");
        Assert.Equal(
            "two clean sessions within 21 days: snap-down to one leg",
            story.Reason("single-leg-forward-hop", "owns-low-hop-and-stick").CheapestTest
        );
    }

    [Fact]
    public void CheapestTest_ThatIsADropJump_IsNotProposedBeforeALowDropWasLanded()
    {
        AthleteStory beginner = new AthleteStory().Earned("snap-down");
        Assert.Equal(
            "the landing screen (a low box, a phone, five minutes)",
            beginner.Reason("depth-jump", "drop-jump-contact").CheapestTest
        );
        AthleteStory ready = Ready() with { Measures = [.. Ready().Measures.Where(m => m.Task != JumpTask.DropJump)] };
        Assert.Equal(
            "contacts on a plate, a mat or before a camera",
            ready.Reason("depth-jump", "drop-jump-contact").CheapestTest
        );
    }

    [Fact]
    public void CheapestTest_BehindARuling_SendsNobodyToTrainWhatIsForbidden()
    {
        var ruling = new Ruling("hops", new NotExercises(["pogo-hop"]), $"No hops.", Bibliography.Get("house-rule"));
        Ladder ladder = new AthleteStory().Earned("low-pogo").Ladder(ruling);
        Assert.All(
            ladder.Rungs.SelectMany(r => r.Reasons).Where(r => r.CriterionId == "owns-pogo-hop"),
            r => Assert.Equal("not now: No hops", r.CheapestTest)
        );
    }

    [Fact]
    public void CheapestTest_ThatALimitForbids_IsNotProposed()
    {
        // A drop-jump test is itself a depth jump: who may not do the one may not be sent to the other.
        AthleteStory untested = Ready() with
        {
            Measures = [],
        };
        var ruling = new Ruling("youth", new NoDepthJumps(), $"Under 16.", Bibliography.Get("house-rule"));
        RungReason reason = untested
            .Ladder(ruling)
            .Find("depth-jump")!
            .Reasons.Single(r => r.CriterionId == "drop-jump-contact");
        Assert.Equal("not now: Under 16", reason.CheapestTest);
        Assert.Contains(
            "camera",
            untested.Reason("depth-jump", "drop-jump-contact").CheapestTest,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void CheapestTest_WhereTwoWouldDo_NamesBoth() =>
        Assert.Equal(
            "jumps on a force plate or jumps on a mat, in a light gate or before a camera",
            (Ready() with { Measures = [] }).Reason("depth-jump", "standing-jump-height").CheapestTest
        );

    [Fact]
    public void Safety_NothingPlanned_ClosesEvenTheFirstSteps()
    {
        var ruling = new Ruling("stop", new NothingPlanned($"a clinician"), $"Stop.", Bibliography.Get("house-rule"));
        Assert.All(Ready().Ladder(ruling).Rungs, r => Assert.Equal(RungState.Closed, r.State));
    }

    [Fact]
    public void Unknown_ForgettingAMeasure_NeverOpensARung() =>
        Gen.Select(Gen.Double[0.15, 0.35].Array[1, 4], Gen.Int[0, 3])
            .Sample(
                (contacts, drop) =>
                {
                    AthleteStory story = Ready();
                    foreach (double contact in contacts)
                    {
                        story = story.Measured("contact_time_s", JumpTask.DropJump, contact, 0.02, "s");
                    }

                    AthleteStory forgotten = story with
                    {
                        Measures = [.. story.Measures.Where(m => m.Measure.Name != "contact_time_s").Skip(drop % 2)],
                    };
                    ILookup<string, RungState> with = story.Ladder().Rungs.ToLookup(r => r.ExerciseId, r => r.State);
                    return forgotten.Ladder().Rungs.All(r => r.State <= with[r.ExerciseId].Single());
                },
                iter: 30
            );

    private static AthleteStory Ready() =>
        new AthleteStory().WellTested().Earned("low-drop-jump").Earned("drop-landing").Earned("countermovement-jump");
}
