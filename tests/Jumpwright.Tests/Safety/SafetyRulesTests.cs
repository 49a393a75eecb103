using CsCheck;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using static Jumpwright.Tests.Safety.Patient;

namespace Jumpwright.Tests.Safety;

public class SafetyRulesTests
{
    public static TheoryData<RuleCase> Cases() => [.. RuleCases.All];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Rule_OnItsCase_ClosesOrLeavesAlone(RuleCase @case)
    {
        Ruling[] rulings = [.. SafetyRules.For(@case.History, Today).Where(r => r.LimitId == @case.Rule)];
        Assert.Equal(@case.Closes, rulings.Length > 0);
        Assert.All(
            rulings,
            r =>
            {
                Assert.False(string.IsNullOrWhiteSpace(r.Because));
                Assert.True(Bibliography.Standard.TryFind(r.Source.Id, out _), r.Source.Id);
            }
        );
    }

    [Fact]
    public void SoreAchilles_NoRunUp_WalkedOnesNeither_ThePushToABoxStays()
    {
        var rulings = SafetyRules.For(Well.Felt("achilles", "pain", "during", 3, 1), Today);
        foreach (Exercise exercise in Catalogue.Standard.Exercises.Where(e => e.Stage == Stage.RunUp))
        {
            Assert.Contains(rulings, r => r.Effect.Forbids(exercise.FactsAt(null)));
        }

        Exercise box = Catalogue.Standard.Find("low-box-jump")!;
        Assert.DoesNotContain(rulings, r => r.Effect.Forbids(box.FactsAt(null)));
    }

    /// <summary>Pain of 4: in an arm it leaves the legs free, but only where every word of the place is understood.</summary>
    [Theory]
    [InlineData("left upper arm", false)]
    [InlineData("shoulder", false)]
    [InlineData("Schulter", false)]
    [InlineData("arm and coccyx", true)]
    [InlineData("Arm und Rücken", true)]
    [InlineData("somewhere", true)]
    // A place in the second language goes by the same rules.
    [InlineData("Ferse", true)]
    [InlineData("Schienbein", true)]
    public void PainSomewhere_ClosesImpact_UnlessItIsSurelyOfAnArm(string place, bool closes) =>
        Assert.Equal(
            closes,
            SafetyRules
                .For(Well.Felt(place, "pain", "during", 4, 1), Today)
                .Any(r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 })
        );

    [Fact]
    public void SoreAchilles_SaysWhatEndsIt_AndThatEndsIt()
    {
        History sore = Well.Felt("achilles", "pain", "during", 4, 10, "tendon", "Dana Example, physiotherapist");
        Ruling Low(History history) =>
            SafetyRules.For(history, Today).FirstOrDefault(r => r.Effect is TierAtMost { Tissue: Tissue.Achilles })!;
        Assert.Contains("a later report of 0", Low(sore).Because, StringComparison.Ordinal);
        Assert.Contains("14 days", Low(sore).Because, StringComparison.Ordinal);
        // A 2 answers nothing; a 0 next morning does.
        Assert.NotNull(Low(sore.Felt("achilles", "pain", "during", 2, 1)));
        Assert.Null(Low(sore.Felt("achilles", "pain", "next morning", 0, 1)));
    }

    [Fact]
    public void EveryRule_HasACaseThatClosesAndOneThatDoesNot() =>
        Assert.All(
            SafetyRules.All,
            rule =>
            {
                Assert.Contains(RuleCases.All, c => c.Rule == rule.Id && c.Closes);
                Assert.Contains(RuleCases.All, c => c.Rule == rule.Id && !c.Closes);
            }
        );

    [Fact]
    public void WellAdult_OfKnownAgeAndMass_HasNoRuling() => Assert.Empty(SafetyRules.For(Well, Today));

    [Theory]
    [InlineData("depth-jump")]
    [InlineData("pogo-hop")]
    [InlineData("hex-bar-pull")]
    [InlineData("snap-down")]
    public void StopSign_ForbidsEvenThis(string exercise) =>
        Assert.True(Forbids(Well.Felt("knee", "swelling", null, 3, 2), exercise));

    [Fact]
    public void SoreAchilles_MayPushToABox_ButNotHop()
    {
        History sore = Well.Felt("achilles", "pain", "during", 4, 2, "achilles tendon", "physiotherapist");
        Assert.All(
            Catalogue.Standard.Exercises.Where(e => e.Stage == Stage.AnkleStiffness),
            e => Assert.True(Forbids(sore, e.Id), e.Id)
        );
        Assert.True(
            Catalogue.Standard.Exercises.Any(e => e.Stage == Stage.AnkleStiffness && e.Demand[Tissue.Achilles] <= 1)
        );
        Assert.True(Forbids(sore, "depth-jump"), "depth jumps");
        Assert.False(Forbids(sore, "seated-box-jump"), "a push from the seat onto a box");
        Assert.False(Forbids(sore, "low-box-jump"), "a low box");
    }

    [Fact]
    public void Under16_OnTheDay_NoDepthJumpWhateverTheHeight()
    {
        History young = Well.Aged(Today.PlusYears(-15));
        Assert.All(
            Catalogue.Standard.Exercises.Where(e => e.IsDepthJump),
            e => Assert.Contains(SafetyRules.For(young, Today), r => r.Effect.Forbids(e.FactsAt(e.DropRangeM?.MinM)))
        );
    }

    [Fact]
    public void Birthday_InsideThePlannedWeek_OpensThatDay()
    {
        History young = Well.Aged(Today.PlusYears(-16).PlusDays(2));
        Assert.Contains(SafetyRules.For(young, Today), r => r.LimitId == "youth");
        Assert.DoesNotContain(SafetyRules.For(young, Today.PlusDays(2)), r => r.LimitId == "youth");
    }

    [Theory]
    [InlineData(0.46, false)]
    [InlineData(0.47, true)]
    public void Over100Kilograms_DropAtTheCapOrAbove(double dropM, bool forbidden)
    {
        Exercise depth = Catalogue.Standard.Find("depth-jump")!;
        Assert.Equal(
            forbidden,
            SafetyRules.For(Well.Weighing(104), Today).Any(r => r.Effect.Forbids(depth.FactsAt(dropM)))
        );
    }

    [Fact]
    public void AfterAnOperation_OnlyWhatIsWritten()
    {
        History patient = Well.Operated(Today.PlusMonths(-4)).Restricted("snap-down;seated-box-jump");
        string[] open = [.. Catalogue.Standard.Exercises.Select(e => e.Id).Where(id => !Forbids(patient, id))];
        Assert.True(
            open.ToHashSet(StringComparer.Ordinal).IsSubsetOf(["snap-down", "seated-box-jump"]),
            string.Join(", ", open)
        );
        Assert.Contains("snap-down", open);
    }

    [Fact]
    public void AfterAnOperation_WithoutAWord_SaysWhomToAsk()
    {
        Ruling ruling = SafetyRules.For(Well.Operated(null), Today).Single(r => r.LimitId == "after-operation");
        Assert.Contains("ask", ruling.Because, StringComparison.Ordinal);
        Assert.False(string.IsNullOrWhiteSpace(Assert.IsType<NothingPlanned>(ruling.Effect).WhomToAsk));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(-1, true)]
    public void Restriction_OnItsLastDayHolds_AndTheDayAfterClosesAll(int untilInDays, bool closesAll)
    {
        History limited = Well.Restricted(forbidden: "depth-jump", untilInDays: untilInDays);
        Assert.True(Forbids(limited, "depth-jump"));
        Assert.Equal(closesAll, Forbids(limited, "snap-down"));
        Assert.Equal(
            closesAll,
            SafetyRules
                .For(limited, Today)
                .Any(r => r.Because.ToString().Contains("expired: ask", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("all")]
    [InlineData("jumps")]
    public void RestrictionThatForbidsAllOrJumps_LeavesNoSnapDown(string word) =>
        Assert.True(Forbids(Well.Restricted(forbidden: word), "snap-down"));

    [Fact]
    public void RestrictionNamingAnExerciseNobodyKnows_ClosesEverything()
    {
        HashSet<string> known = [.. Catalogue.Standard.Exercises.Select(e => e.Id)];
        History odd = Well.Restricted(forbidden: "no-such-exercise");
        Assert.Contains(SafetyRules.For(odd, Today, known), r => r.Effect is NothingPlanned);
    }

    /// <summary>Where nobody ever asked, a first report may open: asking is what the rule waits for. All else only closes.</summary>
    [Fact]
    public void AddingASymptomOrARestriction_NeverOpensAnything() =>
        Gen.Select(
                OneOf([
                    .. RuleCases
                        .All.Where(c => c.Rule != "symptom-report-missing" && !c.History.Symptoms.IsEmpty)
                        .Select(c => c.History),
                ]),
                OneOf("knee", "achilles", "shin", "hip", "wrist", "", "foot"),
                OneOf("pain", "swelling", "stiffness", "giving-way", "illness", "other", "nonsense"),
                OneOf("rest", "night", "during", "after", "next-morning", ""),
                Gen.Int[1, 10],
                Gen.Int[0, 20]
            )
            .Sample(
                (history, site, kind, when, score, daysAgo) =>
                {
                    History more = history.Felt(site, kind, when, score, daysAgo);
                    OpensNothing(history, more);
                    OpensNothing(more, more.Restricted(forbidden: "single-leg-landing"));
                    OpensNothing(more, more.Aged(null));
                    OpensNothing(more, more.Weighing(null));
                    OpensNothing(more, more.Operated(null));
                },
                iter: 300
            );

    /// <summary>At one place, more pain never leaves open what less pain closes.</summary>
    [Theory]
    [InlineData("achilles", null, null)]
    [InlineData("knee", null, null)]
    [InlineData("knee", "patellar tendon", "physiotherapist")]
    [InlineData("shin", null, null)]
    [InlineData("back", null, null)]
    [InlineData("wrist", null, null)]
    [InlineData("", null, null)]
    public void MorePain_NeverOpens(string site, string? tissue, string? namedBy)
    {
        for (int score = 1; score < 10; score++)
        {
            foreach (string when in new[] { "during", "after", "next-morning" })
            {
                OpensNothing(
                    Well.Felt(site, "pain", when, score, 2, tissue, namedBy),
                    Well.Felt(site, "pain", when, score + 1, 2, tissue, namedBy)
                );
            }
        }

        OpensNothing(
            Well.Felt(site, "pain", "during", 10, 2, tissue, namedBy),
            Well.Felt(site, "pain", "during", null, 2, tissue, namedBy)
        );
    }

    /// <summary>More logged pain never opens either.</summary>
    [Fact]
    public void MoreLoggedPain_NeverOpens()
    {
        for (int score = 0; score < 10; score++)
        {
            OpensNothing(Well.Logged(score, 0), Well.Logged(score + 1, 0));
            OpensNothing(Well.Logged(0, score), Well.Logged(0, score + 1));
        }
    }

    private static void OpensNothing(History before, History after)
    {
        (string, double?)[] opened = [.. Open(after).Except(Open(before))];
        Assert.True(
            opened.Length == 0,
            $"opened {string.Join(", ", opened)}\nbefore:\n{Sentences(before)}\nafter:\n{Sentences(after)}"
        );
    }

    private static string Sentences(History history) =>
        string.Join('\n', SafetyRules.For(history, Today).Select(r => $"  {r.Effect}: {r.Because}"));

    private static Gen<T> OneOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static bool Forbids(History history, string exercise)
    {
        Exercise found = Catalogue.Standard.Find(exercise) ?? throw new KeyNotFoundException(exercise);
        return SafetyRules.For(history, Today).Any(r => r.Effect.Forbids(found.FactsAt(found.DropRangeM?.MinM)));
    }

    /// <summary>What no ruling forbids, at the lowest and the highest drop.</summary>
    private static HashSet<(string, double?)> Open(History history)
    {
        System.Collections.Immutable.ImmutableArray<Ruling> rulings = SafetyRules.For(history, Today);
        return
        [
            .. Catalogue
                .Standard.Exercises.SelectMany(e =>
                    new[] { e.DropRangeM?.MinM, e.DropRangeM?.MaxM }
                        .Distinct()
                        .Select(drop => (Exercise: e, Drop: drop))
                )
                .Where(x => !rulings.Any(r => r.Effect.Forbids(x.Exercise.FactsAt(x.Drop))))
                .Select(x => (x.Exercise.Id, x.Drop)),
        ];
    }
}
