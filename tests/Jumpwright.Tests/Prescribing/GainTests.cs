using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Prescribing;

public class GainTests
{
    private static readonly Measure Jump = new("jump_height_m", 0.40, Unit.Metre, 0.01, "impulse-momentum");

    private static Profile With(params (Quality Quality, FindingVerdict Verdict, double? Probability)[] findings) =>
        new(
            "a01",
            new NodaTime.LocalDate(2027, 1, 4),
            [
                .. findings.Select(f => new Finding(
                    f.Quality,
                    f.Verdict,
                    f.Probability,
                    $"Said.",
                    f.Verdict is FindingVerdict.NotTested or FindingVerdict.Unclear
                        ? Sentence.Of($"Test {f.Quality}")
                        : null,
                    [],
                    Bibliography.Get("house-rule")
                )),
            ],
            $"",
            []
        );

    /// <summary>Markovic 2007: countermovement jump +8.7 % (7.0 to 10.4): 3.48 cm of 40.</summary>
    [Fact]
    public void StandingJump_JumpTraining_IsThePublishedShareOfTheirOwnJump()
    {
        GainRanking ranking = GainRankings.Of(With(), ChosenOutcome.StandingJump, Jump, null).Require();
        Gain gain = ranking.Ranked.Single(g => g.Quality == Quality.StretchShortening);
        Assert.Equal(3.48, gain.Centimetres!.Value, 6);
        Assert.InRange(gain.Low!.Value, 2.7, 2.81);
        Assert.InRange(gain.High!.Value, 4.15, 4.3);
    }

    /// <summary>Effects in SDs need a squad: without one, words.</summary>
    [Fact]
    public void DepthJumps_SmallSquad_GetWordsNotCentimetres()
    {
        GainRanking alone = GainRankings.Of(With(), ChosenOutcome.StandingJump, Jump, null).Require();
        GainRanking squad = GainRankings.Of(With(), ChosenOutcome.StandingJump, Jump, 0.05).Require();
        Assert.Contains(alone.Unranked, g => g.Quality == Quality.ReactiveStrength);
        Assert.Equal(4.25, squad.Ranked.Single(g => g.Quality == Quality.ReactiveStrength).Centimetres!.Value, 6);
    }

    [Fact]
    public void QualitiesWithoutAPublishedEffect_SaySoInWords()
    {
        GainRanking ranking = GainRankings.Of(With(), ChosenOutcome.StandingJump, Jump, 0.05).Require();
        foreach (Quality quality in new[] { Quality.AnkleStiffness, Quality.RunUp, Quality.SingleLeg })
        {
            Gain gain = ranking.Unranked.Single(g => g.Quality == quality);
            Assert.Null(gain.Centimetres);
            Assert.Contains("no published effect", gain.Sentence, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Ranking_OverlappingIntervals_IsNotSettledAndNamesTheTest()
    {
        GainRanking ranking = GainRankings
            .Of(
                With((Quality.ReactiveStrength, FindingVerdict.NotTested, null)),
                ChosenOutcome.StandingJump,
                Jump,
                0.05
            )
            .Require();
        Assert.False(ranking.Settled);
        Assert.Equal("Test ReactiveStrength", ranking.NextTest);
        Assert.Equal("Would help to settle it: test ReactiveStrength.", ranking.WhatSettles);
        Assert.Contains(
            "No test of this athlete",
            (ranking with { NextTest = null }).WhatSettles,
            StringComparison.Ordinal
        );
        Assert.Null((ranking with { Settled = true }).WhatSettles);
        Assert.Contains("can't be told apart", ranking.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Landing_NotMetOrNotTested_StandsFirstAsAConditionAndIsNotRanked()
    {
        GainRanking ranking = GainRankings
            .Of(
                With(
                    (Quality.Landing, FindingVerdict.Limits, 0.9),
                    (Quality.SingleLeg, FindingVerdict.NotTested, null)
                ),
                ChosenOutcome.StandingJump,
                Jump,
                0.05
            )
            .Require();
        Assert.Equal(2, ranking.Conditions.Length);
        Assert.StartsWith("Conditions come first", ranking.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(ranking.Ranked, g => g.Quality is Quality.Landing or Quality.SingleLeg);
    }

    /// <summary>Ankle stiffness limits and the dip does not: whatever the mean of groups says, the dip is not what to train first.</summary>
    [Fact]
    public void WhatLimits_ComesFirst_AndWhatDoesNotComesLast()
    {
        GainRanking ranking = GainRankings
            .Of(
                With(
                    (Quality.AnkleStiffness, FindingVerdict.Limits, 0.95),
                    (Quality.StretchShortening, FindingVerdict.Sound, 0.05),
                    (Quality.ReactiveStrength, FindingVerdict.NotTested, null),
                    (Quality.Push, FindingVerdict.Limits, 0.80)
                ),
                ChosenOutcome.StandingJump,
                Jump,
                0.02
            )
            .Require();
        Assert.Equal(
            [Quality.Push, Quality.ReactiveStrength, Quality.StretchShortening],
            ranking.Ranked.Select(g => g.Quality)
        );
        Assert.Equal(
            "Ankle stiffness limits them, so that training it comes first; how much that brings in the standing jump is not published.",
            ranking.Sentence
        );
        Assert.Null(ranking.WhatSettles);
    }

    /// <summary>Where nothing limits, only what may is weighed; what is shown not to limit stands below.</summary>
    [Fact]
    public void WhereNothingLimits_WhatMayIsNamed()
    {
        GainRanking ranking = GainRankings
            .Of(With((Quality.StretchShortening, FindingVerdict.Sound, 0.05)), ChosenOutcome.StandingJump, Jump, 0.02)
            .Require();
        Assert.DoesNotContain("dip", ranking.Sentence, StringComparison.Ordinal);
        Assert.Equal(Quality.StretchShortening, ranking.Ranked[^1].Quality);
    }

    /// <summary>Two are shown not to limit, the third was never tested: its test settles what comes first.</summary>
    [Fact]
    public void WhereOneAloneMayLimit_ItsTestIsAskedFor()
    {
        GainRanking ranking = GainRankings
            .Of(
                With(
                    (Quality.StretchShortening, FindingVerdict.Sound, 0.05),
                    (Quality.Push, FindingVerdict.Sound, 0.1),
                    (Quality.ReactiveStrength, FindingVerdict.NotTested, null)
                ),
                ChosenOutcome.StandingJump,
                Jump,
                0.02
            )
            .Require();
        Assert.Equal(
            "Reactive strength comes first if it limits them, which isn't known: typically 1.7 cm in the standing jump.",
            ranking.Sentence
        );
        Assert.Equal("Would help to settle it: test ReactiveStrength.", ranking.WhatSettles);
    }

    /// <summary>Whoever may not do depth jumps is not told first what depth jumps brought others: it comes after what can be trained, and says why.</summary>
    [Fact]
    public void WhatIsClosedToThem_ComesAfterWhatCanBeTrained_AndSaysSo()
    {
        GainRanking Ranked(bool open) =>
            GainRankings
                .Of(With(), ChosenOutcome.StandingJump, Jump, 0.066, id => open || id != "depth-jump")
                .Require();

        Assert.Equal(Quality.ReactiveStrength, Ranked(open: true).Ranked[0].Quality);
        GainRanking closed = Ranked(open: false);
        Assert.Equal(Quality.ReactiveStrength, closed.Ranked[^1].Quality);
        Assert.Contains(
            "The SD put in is this squad's, 6.6 cm: where ages or sexes are mixed, that is too much. Closed to them now, so nothing of it can be had yet: depth jump.",
            closed.Ranked[^1].Sentence,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Reactive", closed.Sentence, StringComparison.Ordinal);
    }

    /// <summary>What limits them stays first, closed or not: what leads to it is trained.</summary>
    [Fact]
    public void WhatLimits_ComesFirst_EvenWhereItsExerciseIsClosed() =>
        Assert.Equal(
            Quality.ReactiveStrength,
            GainRankings
                .Of(
                    With((Quality.ReactiveStrength, FindingVerdict.Limits, 0.95)),
                    ChosenOutcome.StandingJump,
                    Jump,
                    0.066,
                    _ => false
                )
                .Require()
                .Ranked[0]
                .Quality
        );

    [Fact]
    public void OneFootAndSymmetricLanding_NothingPublished_NoCentimetres()
    {
        Assert.Empty(GainRankings.Of(With(), ChosenOutcome.ApproachJumpOneFoot, Jump, 0.05).Require().Ranked);
        Assert.Empty(GainRankings.Of(With(), ChosenOutcome.SymmetricLanding, null, null).Require().Ranked);
    }

    [Fact]
    public void Outcome_NotMeasured_IsRefusedWithTheTestToDo() =>
        Assert.False(GainRankings.Of(With(), ChosenOutcome.StandingJump, null, 0.05).TryGet(out _, out _));

    [Fact]
    public void EveryEffect_HasASourceThatResolves() =>
        Assert.All(PublishedEffects.All, e => Assert.Same(Bibliography.Get(e.Source.Id), e.Source));
}
