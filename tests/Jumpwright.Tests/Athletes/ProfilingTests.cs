using System.Text.RegularExpressions;
using CsCheck;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Athletes;

public class ProfilingTests
{
    private const string Contact = MeasureNames.ContactTime;
    private const string Rsi = MeasureNames.ReactiveStrengthIndex;

    /// <summary>As many trials on one day as are named settle it where the mean stays; one fewer does not.</summary>
    [Fact]
    public void TrialsToSettle_AsManyAsNamed_SettleIt()
    {
        Finding once = Story.Untested.Screened("landing-screen", 4)[Quality.Landing];
        int trials = Assert.NotNull(once.TrialsToSettle);
        Assert.StartsWith($"{trials} trials on one day, ", once.NextTest, StringComparison.Ordinal);
        Assert.InRange(trials, 3, 13);
        Assert.Equal(FindingVerdict.Unclear, After(trials - 1).Verdict);
        Assert.Equal(FindingVerdict.Sound, After(trials).Verdict);

        static Finding After(int trials) =>
            Story.Untested.Times(trials, s => s.Screened("landing-screen", 4))[Quality.Landing];
    }

    /// <summary>A difference within twice its doubt names no leg as the stronger one; the number and its ± stay.</summary>
    [Theory]
    [InlineData(0.6, "Neither leg is shown to push more: the left by 1 ± ")]
    [InlineData(-2.9, "Neither leg is shown to push more: the right by 3 ± ")]
    [InlineData(-14.1, "The right leg pushes more: 14 ± ")]
    public void Push_OfOneLeg_IsNamedOnlyWhereItIsShown(double pct, string said) =>
        Assert.StartsWith(
            said,
            Story
                .Untested.Jumped(JumpTask.CountermovementJump, [(MeasureNames.AsymmetryPropulsiveImpulse, pct, 1.5)])[
                    Quality.SingleLeg
                ]
                .Sentence,
            StringComparison.Ordinal
        );

    /// <summary>What each leg does by itself is seen when it works by itself: an even push off both legs is no test of it.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(4.5)]
    public void SingleLeg_FromJumpsOffBothLegsAlone_IsNotTested_AndTheHopWouldSettleIt(double pct)
    {
        Finding finding = OffBothLegs(pct)[Quality.SingleLeg];
        Assert.Equal(FindingVerdict.NotTested, finding.Verdict);
        Assert.Null(finding.Probability);
        Assert.Equal(QualityTest.SingleHop, finding.Asks);
        Assert.StartsWith("A single hop for distance", finding.NextTest, StringComparison.Ordinal);
        Assert.Contains("in jumps off both legs", finding.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("What each leg does by itself is not tested.", finding.Sentence, StringComparison.Ordinal);
        Assert.Single(finding.Evidence);
    }

    /// <summary>A push that is surely uneven closes all the same, and the hop is still asked for.</summary>
    [Fact]
    public void SingleLeg_SurelyUnevenOffBothLegs_HoldsThemBack_AndEachLegStaysUntested()
    {
        Finding finding = OffBothLegs(-14.1)[Quality.SingleLeg];
        Assert.Equal(FindingVerdict.Limits, finding.Verdict);
        Assert.Equal(QualityTest.SingleHop, finding.Asks);
        Assert.Contains("What each leg does by itself is not tested.", finding.Sentence, StringComparison.Ordinal);
    }

    /// <summary>Where both stand, the hop speaks; an uneven push is heard where it is the more careful, an even one changes nothing.</summary>
    [Theory]
    [InlineData(1.79, 0.3, FindingVerdict.Sound, "Single hop")]
    [InlineData(1.79, -14.1, FindingVerdict.Limits, "The right leg pushes more")]
    [InlineData(1.40, 0.3, FindingVerdict.Limits, "Single hop")]
    [InlineData(1.40, -14.1, FindingVerdict.Limits, "Single hop")]
    public void SingleLeg_HopAndPush_TheMoreCarefulSpeaks(
        double rightM,
        double pct,
        FindingVerdict verdict,
        string first
    )
    {
        Finding finding = OffBothLegs(pct, Hops(1.80, rightM))[Quality.SingleLeg];
        Assert.Equal(verdict, finding.Verdict);
        Assert.StartsWith(first, finding.Sentence, StringComparison.Ordinal);
        Assert.Equal(3, finding.Evidence.Length);
        // One verdict is said, not two.
        Assert.Single(Regex.Matches(finding.Sentence, "holds them back"));
    }

    /// <summary>Hops that are out of date leave it not tested, whatever a fresh jump off both legs shows.</summary>
    [Fact]
    public void SingleLeg_OldHopAndFreshEvenPush_IsNotTested() =>
        Assert.Equal(
            FindingVerdict.NotTested,
            OffBothLegs(
                0.3,
                Story
                    .Untested.Screened("single-hop", 1.8, Side.Left, daysAgo: 60)
                    .Screened("single-hop", 1.8, Side.Right, daysAgo: 60)
            )[Quality.SingleLeg].Verdict
        );

    /// <summary>A strong calf is not yet a stiff spring; a weak one holds it back.</summary>
    [Theory]
    [InlineData(30, FindingVerdict.NotTested)]
    [InlineData(20, FindingVerdict.NotTested)]
    [InlineData(9, FindingVerdict.Limits)]
    public void AnkleStiffness_FromHeelRaisesAlone_IsNeverSound_AndHopsWouldSettleIt(
        double reps,
        FindingVerdict verdict
    )
    {
        Finding finding = Story
            .Untested.Screened("heel-raises", 30, Side.Left)
            .Screened("heel-raises", reps, Side.Right)[Quality.AnkleStiffness];
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(QualityTest.Hops, finding.Asks);
        Assert.NotNull(finding.NextTest);
        Assert.Contains("not tested without hops", finding.Sentence, StringComparison.Ordinal);
        Assert.Equal(2, finding.Evidence.Length);
    }

    /// <summary>Heights of two days are not compared: the latest day that has both jumps speaks, and without one the quality is not tested.</summary>
    [Fact]
    public void SquatJump_IsComparedWithTheCountermovementJumpOfItsOwnDay()
    {
        Story together = Story.Untested.Times(4, s => s.Counter(0.36, daysAgo: 10).Squat(0.27, daysAgo: 10));
        Finding later = together.Counter(0.50, daysAgo: 2)[Quality.Push];
        Assert.Equal(together[Quality.Push].Sentence, later.Sentence);
        Finding apart = Story.Untested.Times(4, s => s.Counter(0.36, daysAgo: 10).Squat(0.27, daysAgo: 2))[
            Quality.Push
        ];
        Assert.Equal(FindingVerdict.NotTested, apart.Verdict);
        Assert.Contains("of the same day", apart.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void RunUpJump_IsComparedWithTheStandingJumpOfItsOwnDay()
    {
        Story together = RunUp(0.36, 0.46);
        Finding apart = together.Counter(0.20, daysAgo: 1)[Quality.RunUp];
        Assert.Equal(together[Quality.RunUp].Sentence, apart.Sentence);
        Assert.Contains(
            "of the same day",
            Story
                .Untested.Counter(0.36, daysAgo: 9)
                .Jumped(JumpTask.ApproachJump, [(MeasureNames.JumpHeight, 0.46, 0.004)])[Quality.RunUp]
                .Sentence,
            StringComparison.Ordinal
        );
    }

    /// <summary>What guards health and was not tested is said beside whatever limits.</summary>
    [Fact]
    public void Summary_SaysWhatGuardsHealthAndIsNotTested()
    {
        Assert.EndsWith(
            "Not tested: landing, single-leg ability.",
            Rebounds(0.26).Profile.Known,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "Not tested: single-leg ability.",
            Rebounds(0.198).Times(3, s => s.Screened("landing-screen", 2)).Profile.Known,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "Not tested",
            Rebounds(0.26, Hops(1.8, 1.79)).Times(3, s => s.Screened("landing-screen", 2)).Profile.Known,
            StringComparison.Ordinal
        );
    }

    /// <summary>Who is told that something is not tested is told which test it wants: what guards health first.</summary>
    [Fact]
    public void Summary_NamesTheTestOfWhatIsNotTested()
    {
        Profile profile = Rebounds(0.26).Profile;
        Assert.Equal(Quality.Landing, profile.Test?.Quality);
        Finding landing = profile.Findings.First(f => f.Quality == Quality.Landing);
        Assert.StartsWith("To test landing: ", profile.Test?.Said, StringComparison.Ordinal);
        Assert.EndsWith(landing.NextTest!.ToString()[1..] + ".", profile.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void Untested_EveryQuality_SaysNotTestedAndNamesTheCheapestTest()
    {
        Profile profile = Story.Untested.Profile;
        Assert.Equal(Enum.GetValues<Quality>().Order(), profile.Findings.Select(f => f.Quality).Order());
        Assert.All(
            profile.Findings,
            f =>
            {
                Assert.Equal(FindingVerdict.NotTested, f.Verdict);
                Assert.Null(f.Probability);
                Assert.False(string.IsNullOrWhiteSpace(f.NextTest));
            }
        );
        Assert.Contains("not known", profile.Summary, StringComparison.Ordinal);
        Assert.Empty(profile.Current);
    }

    public static TheoryData<Quality, FindingVerdict> EveryVerdictOfEveryQuality() =>
        new MatrixTheoryData<Quality, FindingVerdict>(Enum.GetValues<Quality>(), Enum.GetValues<FindingVerdict>());

    [Theory]
    [MemberData(nameof(EveryVerdictOfEveryQuality))]
    public void Quality_ToldByTheRightNumbers_GetsThatVerdict(Quality quality, FindingVerdict verdict)
    {
        Story story = (quality, verdict) switch
        {
            (_, FindingVerdict.NotTested) => Story.Untested,
            (Quality.Landing, FindingVerdict.Sound) => Story.Untested.Times(3, s => s.Screened("landing-screen", 2)),
            (Quality.Landing, FindingVerdict.Unclear) => Story.Untested.Screened("landing-screen", 4),
            (Quality.Landing, _) => Story.Untested.Screened("landing-screen", 7),
            (Quality.SingleLeg, FindingVerdict.Sound) => Hops(1.80, 1.79),
            (Quality.SingleLeg, FindingVerdict.Unclear) => Hops(1.80, 1.65),
            (Quality.SingleLeg, _) => Hops(1.80, 1.40),
            (Quality.AnkleStiffness, FindingVerdict.Sound) => Rebounds(0.16),
            (Quality.AnkleStiffness, FindingVerdict.Unclear) => Rebounds(0.198),
            (Quality.AnkleStiffness, _) => Rebounds(0.24),
            (Quality.ReactiveStrength, FindingVerdict.Sound) => Drops(0.19, 2.2),
            (Quality.ReactiveStrength, FindingVerdict.Unclear) => Drops(0.248, 1.9),
            (Quality.ReactiveStrength, _) => Drops(0.34, 0.9),
            (Quality.Push, FindingVerdict.Sound) => Heights(0.36, 0.33),
            (Quality.Push, FindingVerdict.Unclear) => Heights(0.36, 0.31),
            (Quality.Push, _) => Heights(0.36, 0.27),
            (Quality.StretchShortening, FindingVerdict.Sound) => Heights(0.36, 0.31),
            (Quality.StretchShortening, FindingVerdict.Unclear) => Heights(0.36, 0.34),
            (Quality.StretchShortening, _) => Heights(0.36, 0.37),
            (Quality.RunUp, FindingVerdict.Sound) => RunUp(0.36, 0.46),
            (Quality.RunUp, FindingVerdict.Unclear) => RunUp(0.36, 0.38),
            _ => RunUp(0.36, 0.35),
        };
        Finding finding = story[quality];
        Assert.True(verdict == finding.Verdict, $"{finding.Verdict} ({finding.Probability:0.00}): {finding.Sentence}");
        Assert.True(verdict == FindingVerdict.Unclear || finding.TrialsToSettle is null);
        if (verdict == FindingVerdict.Unclear)
        {
            Assert.Matches("more than so far|[Aa]nother day|further trials", finding.NextTest);
        }

        if (verdict is not FindingVerdict.NotTested)
        {
            Assert.NotEmpty(finding.Evidence);
            Assert.Contains("±", finding.Sentence, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Height_ByTwoMethodsOrDevices_IsNeverAveraged()
    {
        Story story = Story
            .Untested.Counter(0.40)
            .Jumped(
                JumpTask.CountermovementJump,
                [(MeasureNames.JumpHeightFlightTime, 0.46, 0.02)],
                device: Device.Camera,
                method: "flight-time"
            )
            .Counter(0.30, device: Device.ForcePlate);
        Assert.Equal(
            [0.46, 0.40, 0.30],
            story
                .Profile.Current.Where(e => e.Measure.Name.StartsWith("jump_height", StringComparison.Ordinal))
                .OrderByDescending(e => e.Measure.Value)
                .Select(e => e.Measure.Value)
        );
    }

    [Fact]
    public void Current_SeveralTrialsOfADay_IsTheirMean_NotTheBest()
    {
        Evidence height = Story.Untested.Counter(0.30).Counter(0.33).Counter(0.36).Profile.Current.Single();
        Assert.Equal(0.33, height.Measure.Value, 9);
        Assert.True(height.Measure.StandardUncertainty > 0.004, "trial-to-trial error must be in the doubt");
    }

    [Fact]
    public void Current_DropJumpsFromSeveralBoxes_TakesTheOneNearest30Centimetres()
    {
        Story story = Story
            .Untested.Jumped(JumpTask.DropJump, [(Contact, 0.18, 0.002)], dropM: 0.20)
            .Jumped(JumpTask.DropJump, [(Contact, 0.22, 0.002)], dropM: 0.30)
            .Jumped(JumpTask.DropJump, [(Contact, 0.30, 0.002)], dropM: 0.45);
        Assert.Equal(0.22, story.Profile.Current.Single().Measure.Value, 9);
    }

    [Fact]
    public void SquatJumpWithADip_DoesNotEnterTheRatio() =>
        Assert.Equal(
            FindingVerdict.NotTested,
            Story.Untested.Counter(0.36).Squat(0.27, dipPct: 14)[Quality.Push].Verdict
        );

    [Fact]
    public void DoubtfulMeasure_IsNotDecidedFrom() =>
        Assert.Equal(
            FindingVerdict.NotTested,
            Story
                .Untested.Jumped(JumpTask.RepeatedHops, [(Contact, 0.24, 0.002)], doubtful: [Contact])[
                    Quality.AnkleStiffness
                ]
                .Verdict
        );

    [Fact]
    public void OldTest_CountsAsNotTested_AndSaysSo()
    {
        Assert.Equal(
            FindingVerdict.Limits,
            Story.Untested.Screened("landing-screen", 8, daysAgo: 42)[Quality.Landing].Verdict
        );
        Finding stale = Story.Untested.Screened("landing-screen", 8, daysAgo: 43)[Quality.Landing];
        Assert.Equal(FindingVerdict.NotTested, stale.Verdict);
        Assert.Contains("older than 42 days", stale.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void AfterAnOperation_TestsGoOutOfDateIn14Days()
    {
        Story story = Story.Untested.Screened("landing-screen", 8, daysAgo: 15);
        Story operated = new(
            story.History with
            {
                Athlete = story.History.Athlete with { Operation = new Operation(null, "knee", Side.Left) },
            }
        );
        Assert.Equal(FindingVerdict.Limits, story[Quality.Landing].Verdict);
        Assert.Equal(FindingVerdict.NotTested, operated[Quality.Landing].Verdict);
    }

    /// <summary>Landings that are clean on both legs say nothing for an operated leg that the jumps lean off; towards it, or evenly, they speak.</summary>
    [Theory]
    [InlineData(-12, Side.Left, FindingVerdict.NotTested)]
    [InlineData(-12, Side.Unknown, FindingVerdict.NotTested)]
    [InlineData(12, Side.Left, FindingVerdict.Sound)]
    [InlineData(12, Side.Right, FindingVerdict.NotTested)]
    [InlineData(0, Side.Left, FindingVerdict.Sound)]
    [InlineData(-12, null, FindingVerdict.Sound)]
    public void CleanLandings_ThatLeanOffAnOperatedLeg_DoNotSpeakForIt(double pct, Side? side, FindingVerdict verdict)
    {
        Story clean = OffBothLegs(pct, Story.Untested.Times(3, s => s.Screened("landing-screen", 1)));
        Story told = new(
            clean.History with
            {
                Athlete = clean.History.Athlete with
                {
                    Operation = side is { } operated ? new Operation(null, "knee", operated) : null,
                },
            }
        );
        Finding landing = told[Quality.Landing];
        Assert.Equal(verdict, landing.Verdict);
        Assert.Equal(
            verdict == FindingVerdict.NotTested,
            landing.Sentence.ToString().Contains("says nothing for that leg", StringComparison.Ordinal)
        );
    }

    /// <summary>So doubtful a share that it may lie off the operated leg closes too, and nobody is told that it did.</summary>
    [Fact]
    public void ALeanThatCannotBeTold_IsNotSaidToBeOne()
    {
        Story doubtful = Story
            .Untested.Times(3, s => s.Screened("landing-screen", 1))
            .Jumped(JumpTask.CountermovementJump, [(MeasureNames.AsymmetryPropulsiveImpulse, 1, 8)]);
        Story operated = new(
            doubtful.History with
            {
                Athlete = doubtful.History.Athlete with { Operation = new Operation(null, "knee", Side.Left) },
            }
        );
        Finding landing = operated[Quality.Landing];
        Assert.Equal(FindingVerdict.NotTested, landing.Verdict);
        Assert.Contains("leaned off the operated leg can't be told", landing.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("the left pushed", landing.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void LoggedLandingFaults_OutrankAGoodScreen()
    {
        Story good = Story.Untested.Times(3, s => s.Screened("landing-screen", 1));
        Story logged = new(
            good.History with
            {
                Completed =
                [
                    new CompletedItem(
                        "a01",
                        Story.Today.PlusDays(-2),
                        "s",
                        "box-jump",
                        3,
                        4,
                        12,
                        3,
                        0,
                        0,
                        null,
                        null,
                        null
                    ),
                ],
            }
        );
        Assert.Equal(FindingVerdict.Sound, good[Quality.Landing].Verdict);
        Assert.Equal(FindingVerdict.Limits, logged[Quality.Landing].Verdict);
        Assert.Equal(Quality.Landing, logged.Profile.Findings[0].Quality);
    }

    [Fact]
    public void Future_IsNotKnownYet() =>
        Assert.Equal(
            FindingVerdict.NotTested,
            Story.Untested.Screened("landing-screen", 8, daysAgo: -1)[Quality.Landing].Verdict
        );

    [Fact]
    public void Summary_TwoQualitiesCloseTogether_SaysTheRankingIsNotSettled() =>
        Assert.Contains("isn't settled", Rebounds(0.26, Drops(0.36, 0.8)).Profile.Summary, StringComparison.Ordinal);

    [Fact]
    public void Summary_BadLanding_ComesFirstAsACondition() =>
        Assert.Contains(
            "Landing comes first",
            Rebounds(0.26).Screened("landing-screen", 9).Profile.Summary,
            StringComparison.Ordinal
        );

    [Fact]
    public void CheapKit_ReachAndHop_SpeakWithoutAnyDevice()
    {
        Story story = Hops(1.8, 1.75).Screened("standing-reach", 2.20).Screened("best-touch", 2.62);
        Assert.Contains("42 ± 2 cm by reach", story.Profile.Summary, StringComparison.Ordinal);
        Assert.NotEqual(FindingVerdict.NotTested, story[Quality.SingleLeg].Verdict);
    }

    [Fact]
    public void LeftAndRight_Swapped_SwapsTheSideNamedAndNothingElse() =>
        Gen.Double[1.0, 2.2]
            .SelectMany(_ => Gen.Double[1.0, 2.2], (left, right) => (left, right))
            .Sample(hop =>
            {
                Finding one = Hops(hop.left, hop.right)[Quality.SingleLeg];
                Finding other = Hops(hop.right, hop.left)[Quality.SingleLeg];
                Assert.Equal(one.Verdict, other.Verdict);
                Assert.Equal(one.Probability!.Value, other.Probability!.Value, 12);
                Assert.Equal(
                    one.Sentence.ToString().Contains("the left reaches", StringComparison.Ordinal),
                    other.Sentence.ToString().Contains("the right reaches", StringComparison.Ordinal)
                );
            });

    [Fact]
    public void MoreNoise_NeverMakesAFindingSurer() =>
        Gen.Double[0.12, 0.30]
            .SelectMany(_ => Gen.Double[0.001, 0.02], (contact, u) => (contact, u))
            .Sample(t =>
            {
                double quiet = Math.Abs(Hop(t.contact, t.u)[Quality.AnkleStiffness].Probability!.Value - 0.5);
                double noisy = Math.Abs(Hop(t.contact, 2 * t.u)[Quality.AnkleStiffness].Probability!.Value - 0.5);
                Assert.True(noisy <= quiet + 1e-12);
            });

    [Fact]
    public void OrderOfTrials_ChangesNothing() =>
        Gen.Double[0.25, 0.50]
            .Array[2, 6]
            .Sample(heights =>
            {
                Story forward = heights.Aggregate(Story.Untested, (s, h) => s.Counter(h));
                Story backward = new(forward.History with { Trials = [.. forward.History.Trials.Reverse()] });
                Assert.Equal(forward.Profile.Summary, backward.Profile.Summary);
                Assert.Equal(forward.Profile.Current[0].Measure.Value, backward.Profile.Current[0].Measure.Value, 12);
            });

    private static Story OffBothLegs(double pct, Story? before = null) =>
        (before ?? Story.Untested).Jumped(
            JumpTask.CountermovementJump,
            [(MeasureNames.AsymmetryPropulsiveImpulse, pct, 1.5)]
        );

    private static Story Hops(double left, double right) =>
        Story.Untested.Times(
            3,
            s => s.Screened("single-hop", left, Side.Left).Screened("single-hop", right, Side.Right)
        );

    private static Story Hop(double contactS, double u) =>
        Story.Untested.Jumped(JumpTask.RepeatedHops, [(Contact, contactS, u)]);

    private static Story Rebounds(double contactS, Story? before = null) =>
        (before ?? Story.Untested).Times(3, s => s.Jumped(JumpTask.RepeatedHops, [(Contact, contactS, 0.002)]));

    private static Story Drops(double contactS, double index) =>
        Story.Untested.Times(
            3,
            s => s.Jumped(JumpTask.DropJump, [(Contact, contactS, 0.002), (Rsi, index, 0.03)], dropM: 0.30)
        );

    private static Story Heights(double counterM, double squatM) =>
        Story.Untested.Times(4, s => s.Counter(counterM).Squat(squatM));

    private static Story RunUp(double standingM, double approachM) =>
        Story.Untested.Times(
            4,
            s => s.Counter(standingM).Jumped(JumpTask.ApproachJump, [(MeasureNames.JumpHeight, approachM, 0.004)])
        );
}
