using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Prescribing;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Tests.Prescribing;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>What may be done today is answered in one place: nobody is sent to a test that is a jump they may not do, by a profile or a ladder either.</summary>
public class OpenWorkTests(ITestOutputHelper output)
{
    private static readonly Source House = Bibliography.Get("house-rule");
    private static readonly Catalogue Standard = Catalogue.Standard;
    private static readonly ImmutableArray<KitCount> AllKit = [.. KitIds.All.Select(k => new KitCount(k, 9))];

    /// <summary>What the words of each test make an athlete jump, written down a second time.</summary>
    private static readonly Dictionary<QualityTest, string[]> JumpedIn = new()
    {
        [QualityTest.LandingScreen] = ["low-drop-landing"],
        [QualityTest.SingleHop] = ["single-leg-forward-hop"],
        [QualityTest.TwoPlateJumps] = ["countermovement-jump"],
        [QualityTest.SquatAndCountermovementJumps] = ["squat-jump", "countermovement-jump"],
        [QualityTest.DropJumps] = ["low-drop-jump"],
    };

    private static Finding Of(Quality quality, FindingVerdict verdict, QualityTest? asks, Sentence? test) =>
        new(quality, verdict, verdict == FindingVerdict.NotTested ? null : 0.5, $"Said.", test, [], House)
        {
            Asks = asks,
        };

    private static Profile Known(Sentence known, Sentence test, params Finding[] findings) =>
        new("a01", AthleteStory.Today, [.. findings], known, []) { Test = new NamedTest(findings[0].Quality, test) };

    /// <summary>A ladder on which only these stand closed.</summary>
    private static Ladder AllBut(params string[] closed) =>
        new(
            "a01",
            AthleteStory.Today,
            [
                .. Standard.Exercises.Select(e => new Rung(
                    e.Id,
                    closed.Contains(e.Id) ? RungState.Closed : RungState.Open,
                    []
                )),
            ]
        );

    private static OpenWork Under(params RulingEffect[] effects) => On(AllBut(), effects);

    private static OpenWork On(Ladder ladder, params RulingEffect[] effects) =>
        new(ladder, [.. effects.Select(e => new Ruling("rule", e, $"Sore: only low work.", House))], Standard, AllKit);

    private static Exercise Find(string id) => Standard.Find(id)!;

    [Fact]
    public void Exercise_IsClosedByRulingByLadderByKitAndWhereNobodyKnowsIt_EachWithItsSentence()
    {
        Assert.True(Under().Of(Find("depth-jump")).IsOpen);
        Assert.Equal(ClosedBy.Ruling, Under(new NoDepthJumps()).Of(Find("depth-jump")).First!.By);
        Assert.Equal(ClosedBy.Ladder, On(AllBut("depth-jump")).Of(Find("depth-jump")).First!.By);
        Closing noBox = new OpenWork(AllBut(), [], Standard, []).Of(Find("depth-jump")).First!;
        Assert.Equal(ClosedBy.Kit, noBox.By);
        Assert.Contains("drop-box", noBox.Because, StringComparison.Ordinal);
        var bare = new OpenWork(new Ladder("a01", AthleteStory.Today, []), [], Standard, AllKit);
        Assert.All(Standard.Exercises, e => Assert.Equal(ClosedBy.Ladder, bare.Of(e).First!.By));
        // All that closes it is said, what guards health first.
        Assert.Equal(
            [ClosedBy.Ruling, ClosedBy.Ladder, ClosedBy.Kit],
            new OpenWork(AllBut("depth-jump"), [new Ruling("rule", new NoDepthJumps(), $"No.", House)], Standard, [])
                .Of(Find("depth-jump"))
                .Closings.Select(c => c.By)
        );
    }

    [Fact]
    public void ForbiddenDrops_TakeTheTestOfReactiveStrength_AndLeaveThePush()
    {
        Profile profile = Known(
            $"Jumps 30 cm. Nothing tested is shown to limit them; reactive strength isn't settled.",
            $"Three drop jumps from 0.30 m or lower.",
            Of(Quality.ReactiveStrength, FindingVerdict.Unclear, QualityTest.DropJumps, $"Three drop jumps"),
            Of(Quality.Push, FindingVerdict.Unclear, QualityTest.SquatAndCountermovementJumps, $"Three squat jumps")
        );
        Profile told = Under(new TierAtMost(Tissue.Achilles, 1)).In(profile);
        Assert.Equal("not now: Sore: only low work", told.Findings[0].NextTest);
        Assert.True(told.Findings[0].TestWaits);
        Assert.Equal($"{profile.Known} Its test waits: it is not for now.", told.Summary);
        Assert.Equal("Three squat jumps", told.Findings[1].NextTest);
        // What is known is not taken back.
        Assert.Equal(profile.Findings[0].Verdict, told.Findings[0].Verdict);
        Assert.Equal(profile.Summary, Under().In(profile).Summary);
    }

    /// <summary>Squat jumps mean nothing without countermovement jumps: who may not do the one is not sent to the other.</summary>
    [Fact]
    public void ATestOfTwoJumps_WaitsWhereEitherIsClosed()
    {
        Finding push = Of(
            Quality.Push,
            FindingVerdict.NotTested,
            QualityTest.SquatAndCountermovementJumps,
            $"Squat jumps and countermovement jumps"
        );
        Assert.False(Under(new NotExercises(["countermovement-jump"])).Of(push).IsOpen);
        Assert.False(Under(new NotExercises(["squat-jump"])).Of(push).IsOpen);
        Assert.True(Under(new NotExercises(["box-jump"])).Of(push).IsOpen);
    }

    [Fact]
    public void ATestThatNobodyNames_IsClosed() =>
        Assert.False(Under().Of(Of(Quality.Push, FindingVerdict.NotTested, null, $"Something")).IsOpen);

    /// <summary>A word against landing on one leg says nothing against a jump off two plates and back.</summary>
    [Fact]
    public void NoLandingsOnOneLeg_TakesTheHop_AndLeavesTheJumpOnTwoPlates()
    {
        Finding plates = Of(
            Quality.SingleLeg,
            FindingVerdict.Unclear,
            QualityTest.TwoPlateJumps,
            $"4 trials of countermovement jumps on two plates"
        );
        Finding hop = plates with { Asks = QualityTest.SingleHop, NextTest = $"A single hop for distance" };
        OpenWork today = Under(new NoSingleLegLandings());
        Assert.True(today.Of(plates).IsOpen);
        Assert.False(today.Of(hop).IsOpen);
        // The knee that bears no jump at all bears this one neither.
        Assert.False(Under(new TierAtMost(Tissue.Patellar, 1)).Of(plates).IsOpen);
        Assert.False(Under(new NoJumps()).Of(plates).IsOpen);
    }

    /// <summary>The finding, the ladder and the offered tests ask the same hop: the highest that is open, and never rebounds at full effort.</summary>
    [Fact]
    public void Hops_AreTestedWithTheHopThatIsOpen_WhoeverAsks()
    {
        Finding hops = Of(Quality.AnkleStiffness, FindingVerdict.Unclear, QualityTest.Hops, $"Four trials of ten hops");
        Assert.Equal("pogo-hop", Under().Of(hops).With!.Value.Id);
        Assert.Equal("pogo-hop", Under(new NoHighIntensity()).Of(hops).With!.Value.Id);
        Assert.Equal("low-pogo", On(AllBut("pogo-hop", "rebound-hops")).Of(hops).With!.Value.Id);
        Assert.Equal("low-pogo", Under(new TierAtMost(Tissue.Achilles, 1)).Of(hops).With!.Value.Id);
        Assert.False(Under(new NoAnkleSprings()).Of(hops).IsOpen);
        Assert.Equal(
            "Low pogo hop: four trials of ten hops",
            On(AllBut("pogo-hop")).In(Known($"Known.", $"Test.", hops)).Findings[0].NextTest
        );

        // The same on a real ladder: low pogo hops earned, nothing above them.
        AthleteStory story = new AthleteStory().Earned("snap-down").Did("low-pogo", 3);
        Assert.Equal(RungState.Closed, story.State("pogo-hop"));
        Assert.Equal(
            "contacts on a plate, a mat or before a camera, as low pogo hop",
            story.Reason("low-drop-jump", "quick-contact-on-record").CheapestTest
        );
        Assert.Equal("low-pogo", On(story.Ladder()).Of(hops).With!.Value.Id);
    }

    /// <summary>Heel raises are no jump, but who does them until the calf fails on a sore tendon loads just that.</summary>
    [Theory]
    [InlineData(Tissue.Achilles, false)]
    [InlineData(Tissue.Patellar, true)]
    public void HeelRaises_WaitWhileTheAchillesIsSore(Tissue sore, bool open)
    {
        OpenWork today = Under(new TierAtMost(sore, 1), new NoAnkleSprings());
        var ladder = new AthleteStory().Ladder([.. today.Rulings]);
        Assert.Equal(
            open ? "single-leg heel raises, each side" : "not now: Sore: only low work",
            ladder
                .Find("single-leg-forward-hop")!
                .Reasons.Single(r => r.CriterionId == "heel-raises-each-side")
                .CheapestTest
        );
    }

    /// <summary>Whoever has not shown how they land is not sent to drop jumps, nor to anything else that the ladder closes.</summary>
    [Fact]
    public void SomebodyUntested_IsSentToTheFirstSteps_NotToTestsThatTheLadderCloses()
    {
        AthleteStory unknown = new();
        var history = new History(unknown.Athlete, [], [], [], [], []);
        Profile told = On(unknown.Ladder()).In(Profiling.Of(history, AthleteStory.Today));
        Finding reactive = told.Findings.Single(f => f.Quality == Quality.ReactiveStrength);
        Assert.Matches(
            "^closed for now: low drop jump is closed on the ladder; first two clean sessions .*snap-down",
            reactive.NextTest
        );
        Assert.StartsWith("First: two clean sessions ", told.Test!.Said, StringComparison.Ordinal);
        Assert.Equal(
            [Quality.AnkleStiffness],
            told.Findings.Where(f => f.NextTest is not null && !f.TestWaits).Select(f => f.Quality)
        );
        // The ladder itself says the same of its conditions.
        Assert.All(
            unknown.Ladder().Rungs.SelectMany(r => r.Reasons).Select(r => r.CheapestTest).OfType<Sentence>(),
            test => Assert.DoesNotContain("landing screen", test, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ATestWithoutItsKit_Waits()
    {
        Finding landing = Of(
            Quality.Landing,
            FindingVerdict.NotTested,
            QualityTest.LandingScreen,
            $"The landing screen"
        );
        Profile told = new OpenWork(AllBut(), [], Standard, [new KitCount("plyo-box", 2)]).In(
            Known($"Known.", $"First: the landing screen.", landing)
        );
        Assert.Equal(
            "closed for now: Low drop landing needs 1 × drop-box, which the squad's kit does not have",
            told.Findings[0].NextTest
        );
        Assert.DoesNotContain("screen", told.Summary, StringComparison.Ordinal);
    }

    /// <summary>Air and floor close for everybody, on the athlete's page as in the plan.</summary>
    [Fact]
    public void ADayTooHotToTrain_ClosesEverythingForEverybody()
    {
        DrawnSquad drawn = TestedSquad.Draw(1);
        History history = drawn.Athletes[0];
        Squad hot = drawn.Squad with { Weather = [new(drawn.Day, 36, 60)] };
        var open = OpenWork.On(drawn.Day, hot, history, Profiling.Of(history, drawn.Day), Standard);
        Assert.All(Standard.Exercises, e => Assert.Contains(open.Of(e).Closings, c => c.Ruling?.LimitId == "heat"));
    }

    /// <summary>
    /// Over 500 squads every test that a profile still names is judged by ladder, rulings and kit read again; and no test is offered whose
    /// quality's own test the page says is closed.
    /// </summary>
    [Fact]
    public void TestsOfManySquads_AreOpenOnTheLadderUnderTheRulingsAndWithTheKit()
    {
        HashSet<string> ids = [.. Standard.Exercises.Select(e => e.Id)];
        int named = 0;
        int byLadder = 0;
        int byRuling = 0;
        int hops = 0;
        for (int squad = 0; squad < 500; squad++)
        {
            DrawnSquad drawn = TestedSquad.Draw(squad);
            // Nobody's ankle was tested, so that hops are asked for.
            foreach (
                History history in drawn.Athletes.Select(a =>
                    a with
                    {
                        Trials = [.. a.Trials.Where(t => t.Trial.Task != JumpTask.RepeatedHops)],
                        Screens = [.. a.Screens.Where(t => t.Test != "heel-raises")],
                    }
                )
            )
            {
                Profile profile = Profiling.Of(history, drawn.Day);
                Ladder ladder = Ladders.For(profile, history, Standard, drawn.Day);
                ImmutableArray<Ruling> rulings = SafetyRules.For(history, drawn.Day, ids);
                var open = new OpenWork(ladder, rulings, Standard, drawn.Squad.Kit);
                Profile told = open.In(profile);
                foreach (Finding finding in told.Findings.Where(f => f.NextTest is not null))
                {
                    if (finding.TestWaits)
                    {
                        byLadder += open.Of(finding).First!.By == ClosedBy.Ladder ? 1 : 0;
                        byRuling += open.Of(finding).First!.By == ClosedBy.Ruling ? 1 : 0;
                        continue;
                    }

                    named++;
                    foreach (string id in JumpedIn.GetValueOrDefault(finding.Asks!.Value) ?? [])
                    {
                        Exercise jump = Find(id);
                        string where = $"squad {squad} {history.Athlete.Id}: {finding.NextTest}";
                        Assert.True(ladder.Find(id)!.State != RungState.Closed, where);
                        Assert.False(rulings.Any(r => r.Effect.Forbids(jump.Facts)), where);
                        Assert.All(jump.Kit, k => Assert.Contains(drawn.Squad.Kit, has => has.Id == k.Id));
                    }
                }

                var gate = new TestGate(history, open, drawn.Squad, drawn.Day);
                var curves = AthleteCurves.Of(history, Standard, rulings, drawn.Day, drawn.Squad.Kit);
                foreach (TestOffer offer in NextTests.For(history, profile, gate, Standard, curves, drawn.Day))
                {
                    if (
                        offer.Test.TryGet(out TestProposal? test, out _)
                        && test.ExerciseId is "pogo-hop" or "low-pogo" or "rebound-hops"
                        && told.Findings.First(f => f.Quality == Quality.AnkleStiffness) is { NextTest: { } said } ankle
                    )
                    {
                        hops++;
                        Assert.False(ankle.TestWaits, $"squad {squad} {history.Athlete.Id}: {said}");
                        // The day may have no room for the higher hop; it never has room for one that is closed.
                        Assert.True(
                            test.ExerciseId == "low-pogo" || open.Of(ankle).With is { Id: "pogo-hop" },
                            $"squad {squad} {history.Athlete.Id}: {test.ExerciseId}"
                        );
                    }
                }
            }
        }

        output.WriteLine(
            $"{named} named, {byLadder} closed by the ladder, {byRuling} by a ruling, {hops} hops offered"
        );
        Assert.True(named > 300 && byLadder > 300 && byRuling > 300 && hops > 30);
    }
}
