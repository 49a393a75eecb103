using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Sessions;

/// <summary>What the card says is what the plan holds, in the athlete's words.</summary>
public class CardsTests
{
    private static readonly Plan Ordinary = PlanByHand.Plan(
        PlanByHand.Item(
            "snap-down",
            Sentence.Of($"Landing limits: 3 faults").As(new WantedFor(Quality.Landing, FindingVerdict.Limits))
        ),
        PlanByHand.Item("low-pogo"),
        PlanByHand.Item("depth-jump"),
        PlanByHand.Item("box-jump"),
        PlanByHand.Item("single-leg-pogo")
    );

    [Fact]
    public void Card_OfAPlan_HoldsItsItemsInOrderWithTheirContacts()
    {
        SessionCard card = PlanByHand.Card(Ordinary);
        PlannedItem[] planned = [.. Ordinary.Sessions[0].Athletes[0].Items];
        Assert.Equal(planned.Select(i => i.Dose.ExerciseId), card.Items.Select(i => i.ExerciseId));
        Assert.Equal(planned.Select(i => i.Contacts), card.Items.Select(i => i.Contacts));
        Assert.Equal(planned.Sum(i => i.Contacts), card.TotalContacts);
        Assert.Equal(planned.Select(i => i.Sets), card.Items.Select(i => i.Sets));
        Assert.Equal(PlanByHand.Day, card.Date);
        Assert.Null(card.NothingPlanned);
    }

    /// <summary>A stop sign is written after the plan was made: the card of that day and of later ones plans nothing, until there is another.</summary>
    [Fact]
    public void Card_AfterAStopSign_PlansNothing_AndSaysWhoAloneChangesIt()
    {
        SessionCard card = Cards.Since(PlanByHand.Card(Ordinary), [StopSign], PlanByHand.Day);
        Assert.Empty(card.Items);
        Assert.Equal(0, card.TotalContacts);
        Assert.True(card.IsShut);
        Assert.Contains(
            "has to be looked at before you jump",
            card.NothingPlanned!.ToString(),
            StringComparison.Ordinal
        );
        Assert.Contains("only a licensed person", card.NothingInShort!.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A sheet that is printed after a stop sign names nobody's work that the sign closed: no item, no turn, and the reason beside the name.</summary>
    [Fact]
    public void Sheet_AfterAStopSign_HoldsNeitherWorkNorATurnOfThem()
    {
        SessionCard before = PlanByHand.Card(Ordinary);
        CoachSheet planned = PlanByHand.Sheet(Ordinary, [before]);
        Assert.Contains(planned.Stations, s => s.AthleteNames.Contains(before.AthleteName));
        Assert.DoesNotContain("Closed since", planned.Lines[0].Watch?.ToString() ?? "", StringComparison.Ordinal);

        CoachSheet since = PlanByHand.Sheet(Ordinary, [Cards.Since(before, [StopSign], PlanByHand.Day)]);
        CoachLine line = Assert.Single(since.Lines);
        Assert.Equal((0, "Nothing planned"), (line.Contacts, Assert.Single(line.Items).ToString()));
        Assert.StartsWith(
            "Closed since this was planned: a stop sign",
            line.Watch!.ToString(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(since.Stations, s => s.AthleteNames.Contains(before.AthleteName));
    }

    /// <summary>What closes a part closes later cards until there is another plan; of the day itself the floor has its own stops.</summary>
    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, false)]
    public void Card_AfterARulingOfPain_WaitsForAnotherPlan_OnLaterDays(int days, bool waits)
    {
        Ruling pain = new(
            "tendon-pain",
            new NoHighIntensity(),
            Sentence.Of($"Achilles pain 4 of 10."),
            StopSign.Source
        );
        SessionCard made = PlanByHand.Card(Ordinary);
        SessionCard card = Cards.Since(made, [pain], PlanByHand.Day.PlusDays(days));
        Assert.Equal(waits ? 0 : made.Items.Length, card.Items.Length);
        Assert.Equal(waits, card.IsShut);
    }

    [Fact]
    public void Card_OfADayThatIsOver_StaysAsItWas() =>
        Assert.Equal(
            PlanByHand.Card(Ordinary).Items.Length,
            Cards.Since(PlanByHand.Card(Ordinary), [StopSign], PlanByHand.Day.PlusDays(1)).Items.Length
        );

    private static Ruling StopSign { get; } =
        new(
            "stop-sign",
            new NothingPlanned(Sentence.Of($"a clinician")),
            Sentence.Of($"Chest pain."),
            LimitBook.Standard.Find("pain-window").Source
        );

    [Fact]
    public void Card_WithWhatLimits_SaysItToTheAthleteAndHidesTheNumbers()
    {
        CardItem item = PlanByHand.Card(Ordinary).Items[0];
        Assert.StartsWith("Holds you back: landings that are not clean yet. ", item.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("3 faults", item.Why, StringComparison.Ordinal);
    }

    /// <summary>What holds somebody back is said as what there is too little of, so that nobody takes the quality itself for the fault.</summary>
    [Theory]
    [InlineData(Quality.AnkleStiffness, "too little spring in the ankles")]
    [InlineData(Quality.Push, "too little push from a standstill")]
    [InlineData(Quality.StretchShortening, "too little gain from the dip")]
    [InlineData(Quality.ReactiveStrength, "too little rebound, or too long on the ground")]
    [InlineData(Quality.SingleLeg, "one leg does less than the other")]
    [InlineData(Quality.RunUp, "too little gain from the run-up")]
    public void WhatLimits_IsSaidAsALack(Quality quality, string lack)
    {
        Assert.StartsWith($"Holds you back: {lack}. ", Why(quality, FindingVerdict.Limits), StringComparison.Ordinal);
        Assert.StartsWith(
            $"May hold you back: {lack}. ",
            Why(quality, FindingVerdict.Unclear),
            StringComparison.Ordinal
        );
        Assert.StartsWith("Keeps up what you have: ", Why(quality, FindingVerdict.Sound), StringComparison.Ordinal);
        Assert.DoesNotContain(lack, Why(quality, FindingVerdict.Sound), StringComparison.Ordinal);
    }

    /// <summary>
    /// Beside what every exercise stops at, each has an end of its own: a bar that slows, a knee that falls in, a foot at the edge. It stands on the card.
    /// </summary>
    [Theory]
    [InlineData("hex-bar-jump", "visibly lower")]
    [InlineData("continuous-tuck-jumps", "knee collapse")]
    [InlineData("band-resisted-jump", "visibly lower")]
    public void EveryExercise_SaysItsOwnEnd(string exercise, string end) =>
        Assert.Contains(
            end,
            PlanByHand.Card(PlanByHand.Plan(PlanByHand.Item(exercise, $"open"))).Items[0].OwnStop,
            StringComparison.Ordinal
        );

    /// <summary>The catalogue says whether a stop rule is an end of its own; how it is worded decides nothing. A distance or 0.25 s is no number of a dose.</summary>
    [Theory]
    [InlineData("countermovement-jump", "")]
    [InlineData("single-tuck-jump", "")]
    [InlineData("depth-jump", "")]
    [InlineData("standing-long-jump", "the distance falls by 10 %")]
    [InlineData("rebound-hops", "contact passes 0.25 s")]
    public void AnEndThatTheDoseSaysInNumbers_IsNotSaidTwice_AndAnyOtherIsSaid(string exercise, string end)
    {
        string said = PlanByHand.Card(PlanByHand.Plan(PlanByHand.Item(exercise, $"open"))).Items[0].OwnStop;
        Assert.Equal(end.Length == 0, said.Length == 0);
        Assert.Contains(end, said, StringComparison.Ordinal);
    }

    /// <summary>Where nothing is said, all of the rule is of what every dose stops at: height, contact, landings with a fault.</summary>
    [Fact]
    public void WhatIsNoEndOfItsOwn_SpeaksOfHeightContactAndFaultsAlone() =>
        Assert.All(
            Catalogue.Standard.Exercises.Where(e => !e.HasOwnStop),
            e =>
                Assert.Matches(
                    @"^Stop when (?:height falls by 10 %, |contact grows by 10 % )*(?:or at the second landing with a fault|(?:contact grows by 10 % )?or a landing has a fault)(?:; if unsure, one box lower)?\.$",
                    e.StopRule
                )
        );

    /// <summary>The kind of a reason decides, however it is worded.</summary>
    [Fact]
    public void AReasonWithoutAKind_SaysNothingOfWhatHoldsBack() =>
        Assert.DoesNotContain(
            "hold",
            PlanByHand
                .Card(PlanByHand.Plan(PlanByHand.Item("low-pogo", $"Ankle stiffness limits: 237 ms")))
                .Items[0]
                .Why,
            StringComparison.OrdinalIgnoreCase
        );

    /// <summary>In words, and enough of them to find the plan again: version, plan, session, and whose card it is.</summary>
    [Fact]
    public void TheFoot_SaysWhatMadeTheCard_WithoutIds()
    {
        SessionCard card = PlanByHand.Card(Ordinary);
        Assert.Equal(
            $"Made by Jumpwright {ProductVersion.Current}: plan from 4 Jan 2027, session on 5 Jan 2027 at 17:00",
            card.MadeBy
        );
        Assert.DoesNotContain(card.SessionId, card.MadeBy, StringComparison.Ordinal);
        Assert.DoesNotContain(card.AthleteId, card.MadeBy, StringComparison.Ordinal);
    }

    private static string Why(Quality quality, FindingVerdict known) =>
        PlanByHand
            .Card(
                PlanByHand.Plan(PlanByHand.Item("low-pogo", Sentence.Of($"237 ms").As(new WantedFor(quality, known))))
            )
            .Items[0]
            .Why;

    [Fact]
    public void Card_OfADepthJump_SaysWhatIsSteppedOffInCm()
    {
        CardItem item = PlanByHand.Card(Ordinary).Items.Single(i => i.ExerciseId == "depth-jump");
        double drop = Catalogue.Standard.Find("depth-jump")!.DropRangeM!.Value.MaxM;
        Assert.Equal($"step off {100 * drop:0} cm", item.HeightOrLoad);
    }

    [Fact]
    public void Card_OfEachLeg_SaysSoAndCountsBothLegs()
    {
        CardItem item = PlanByHand.Card(Ordinary).Items.Single(i => i.ExerciseId == "single-leg-pogo");
        Exercise exercise = Catalogue.Standard.Find("single-leg-pogo")!;
        Assert.Equal("each", exercise.Limb);
        Assert.Equal($"{exercise.Dose.SetsMax} × {exercise.Dose.RepsMax} each leg", item.Dose);
        Assert.Equal(2 * exercise.Dose.SetsMax * exercise.Dose.RepsMax * exercise.ContactsPerRep, item.Contacts);
    }

    [Fact]
    public void Card_OnTop_AsksThreeQuestionsAndEveryAnswerDoesSomething()
    {
        SessionCard card = PlanByHand.Card(Ordinary);
        Assert.Equal(3, card.Questions.Length);
        Assert.All(card.Questions, q => Assert.True(q.Answers.Length >= 2));
        Assert.All(card.Questions.SelectMany(q => q.Answers), a => Assert.NotEmpty(a.Then.ToString()));
        Assert.Contains(
            card.Questions[0].Answers,
            a =>
                a.Answer.ToString().Contains("shin bone", StringComparison.Ordinal)
                && a.Then.ToString().StartsWith("stop", StringComparison.Ordinal)
        );
    }

    /// <summary>Where any pain stops, no number of the scale says "go on", and nothing is named instead.</summary>
    [Fact]
    public void Card_OfWhoMayHaveASoreBone_GoesOnWithNoPainAtAll()
    {
        PlannedItem item = PlanByHand.Item("low-pogo");
        SessionCard card = PlanByHand.Card(
            PlanByHand.Plan(
                PlanByHand.Item("snap-down"),
                item with
                {
                    Dose = item.Dose with { Stop = item.Dose.Stop with { PainDuringAbove = 0 } },
                }
            )
        );
        Assert.Equal(
            ["None: go on.", "Any, whatever the number: stop. No jumps today. Tell the coach."],
            card.Questions[0].Answers.Select(a => $"{a.Answer}: {a.Then}")
        );
        Assert.Equal(0, card.PainStopsAbove);
        Assert.Equal("at any pain: stop, nothing stands instead", card.Items[1].InsteadIfSore);
        Assert.EndsWith("anything hurts.", card.Items[1].StopWhen.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The bone stands before the numbers, which are of other places.</summary>
    [Fact]
    public void Card_OfAnybodyElse_SaysTheBoneBeforeTheNumbers()
    {
        SessionCard card = PlanByHand.Card(Ordinary);
        Assert.Equal(
            ["Any pain in the shin bone or a foot bone", "Elsewhere 0 to 2", "3 to 5", "More than 5"],
            card.Questions[0].Answers.Select(a => a.Answer.ToString())
        );
        Assert.Equal(5, card.PainStopsAbove);
    }

    [Fact]
    public void Card_WhereNothingStandsInstead_SaysToLeaveEverythingOut()
    {
        PlannedItem[] items =
        [
            .. Ordinary.Sessions[0].Athletes[0].Items.Select(i => i with { Dose = i.Dose with { Instead = null } }),
        ];
        string middling = PlanByHand.Card(PlanByHand.Plan(items)).Questions[0].Answers[2].Then;
        Assert.Equal("leave every exercise out: today there is nothing to do instead. Tell the coach.", middling);
        Assert.StartsWith(
            "do only the 'instead'",
            PlanByHand.Card(Ordinary).Questions[0].Answers[2].Then.ToString(),
            StringComparison.Ordinal
        );
    }

    /// <summary>Who may change it is who the rule names: never the coach where it takes a licensed person.</summary>
    [Theory]
    [InlineData("stop-sign", "only a licensed person does, in writing.")]
    [InlineData("after-operation", "only a licensed person does, in writing.")]
    [InlineData("restriction", "before whoever the card names has been asked.")]
    [InlineData("logged-pain", "before whoever the card names has been asked.")]
    [InlineData(null, "before the coach has said so.")]
    public void NothingPlanned_IsSaidOnTheFloorWithWhoAloneMayChangeIt(string? rule, string who)
    {
        Ruling[] shut = rule is null ? [] : [.. new[] { "logged-pain", rule }.Distinct().Select(id => Shut(id))];
        SessionCard card = PlanByHand.Card(PlanByHand.Plan(), null, shut);
        Assert.EndsWith(who, card.NothingInShort!.ToString(), StringComparison.Ordinal);
        Assert.Equal(rule is not null, card.IsShut);
        Assert.NotNull(card.WhyNothing);
    }

    private static Ruling Shut(string id) =>
        new(id, new NothingPlanned($"somebody"), $"Closed.", Jumpwright.Quantities.Bibliography.Get("house-rule"));

    [Fact]
    public void Card_OfEveryExercise_SaysEverythingAHandNeeds()
    {
        foreach (Exercise exercise in Catalogue.Standard.Exercises)
        {
            CardItem item = Assert.Single(PlanByHand.Card(PlanByHand.Plan(PlanByHand.Item(exercise.Id))).Items);
            string[] said =
            [
                item.Name,
                item.Why,
                item.SetUp,
                item.Cue,
                item.Dose,
                item.Rest,
                item.StopWhen,
                item.InsteadIfSore,
            ];
            Assert.All(said, s => Assert.False(string.IsNullOrWhiteSpace(s), exercise.Id));
            Assert.True(item.Why.ToString().EndsWith('.') && item.SetUp.EndsWith('.'), exercise.Id);
            Assert.StartsWith(item.Why.ToString().TrimEnd('.'), exercise.Purpose, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Card_WithoutAnEasierExercise_SaysToLeaveItOut()
    {
        PlannedItem item = PlanByHand.Item("low-pogo");
        Plan plan = PlanByHand.Plan(item with { Dose = item.Dose with { Instead = null } });
        Assert.Contains("leave this one out", PlanByHand.Card(plan).Items[0].InsteadIfSore, StringComparison.Ordinal);
    }

    /// <summary>What is done instead has its sets, reps, height and rest as everything else on the card: nobody has to make them up while it hurts.</summary>
    [Fact]
    public void Card_WhatIsDoneInstead_HasItsOwnDoseAndRest()
    {
        PlannedItem item = PlanByHand.Item("depth-jump");
        Dose easier = PlanByHand.Item("box-jump").Dose with
        {
            Reps = 3,
            BoxHeightM = 0.3,
            RestBetweenRepsS = 0,
            RestBetweenSetsS = 90,
        };
        CardItem Printed(int sets) =>
            PlanByHand
                .Card(PlanByHand.Plan(item with { Sets = sets, Dose = item.Dose with { Reps = 5, Instead = easier } }))
                .Items[0];

        Assert.Equal(
            "at pain 3 to 5: Box jump with a dip, 2 × 3, box 30 cm, rest 1 min 30 s",
            Printed(4).InsteadIfSore.ToString()
        );
        // Half of two or three sets is one, of one half the reps; the rest comes before whatever is next.
        Assert.EndsWith(
            "Box jump with a dip, 1 × 3, box 30 cm, rest 1 min 30 s",
            Printed(3).InsteadIfSore,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "Box jump with a dip, 1 × 2, box 30 cm, rest 1 min 30 s",
            Printed(1).InsteadIfSore,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Card_WithNothingPlanned_SaysWhomToAskAndAsksNoQuestions()
    {
        var shut = new Ruling(
            "after-operation",
            new NothingPlanned($"the surgeon or physiotherapist who looks after you"),
            $"Operated on 2026-09-01, no written permission.",
            Jumpwright.Quantities.Bibliography.Get("house-rule")
        );
        SessionCard card = PlanByHand.Card(PlanByHand.Plan(), null, shut);
        Assert.Empty(card.Items);
        Assert.Empty(card.Questions);
        Assert.Equal(0, card.TotalContacts);
        Assert.Contains("the surgeon or physiotherapist", card.NothingPlanned, StringComparison.Ordinal);
        // Health details are the coach's to know, not for a paper that lies about.
        Assert.DoesNotContain("2026-09-01", card.NothingPlanned, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfAPlan_HasALineAnAthleteWithWhatToWatch()
    {
        var careful = new Ruling(
            "youth",
            new NoDepthJumps(),
            $"Under 16 on 2027-01-05: no depth jumps.",
            Jumpwright.Quantities.Bibliography.Get("house-rule")
        );
        CoachSheet sheet = PlanByHand.Sheet(Ordinary, careful);
        CoachLine line = Assert.Single(sheet.Lines);
        Assert.Equal(Ordinary.Sessions[0].Athletes[0].Items.Sum(i => i.Contacts), line.Contacts);
        Assert.Equal(5, line.Items.Length);
        Assert.Equal("Under 16 on 2027-01-05: no depth jumps.", line.Watch);
        Assert.Equal(5, sheet.Stations.Length);
    }
}
