using System.Text.Json;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>Pain said on the floor reaches the rules of safety, with or without a set, with or without a place.</summary>
public class FloorPainTests
{
    private static readonly LocalDate Day = new(2027, 1, 4);

    [Theory]
    [InlineData("rest", null)]
    [InlineData("night", null)]
    [InlineData("after", null)]
    [InlineData("during", "pogo-hop")]
    public void WithoutASetOrAPlace_ClosesImpact(string when, string? exercise)
    {
        History history = Read(Pain(6, when, exercise));
        SymptomReport felt = Assert.Single(history.Symptoms);
        Assert.Equal(PainEntry.PlaceNotSaid, felt.Site);
        Assert.Contains(
            SafetyRules.For(history, Day),
            r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 } or NothingPlanned
        );
    }

    [Fact]
    public void AtALoggedSet_IsCarriedByTheWorkDone()
    {
        History history = Read(Pain(6, "during", "pogo-hop"), Set("pogo-hop"));
        Assert.Empty(history.Symptoms);
        Assert.Equal(6, Assert.Single(history.Completed).PainDuring);
        Assert.Contains(SafetyRules.For(history, Day), r => r.Effect is NothingPlanned);
    }

    [Fact]
    public void OfZeroWithoutAPlace_OpensNothing() => Assert.Empty(Read(Pain(0, "rest", null)).Symptoms);

    /// <summary>A trial of a test and a set with the same number are two things, and both cost contacts; the test keeps its own rule.</summary>
    [Fact]
    public void TrialsOfATest_StandBesideTheSetsOfTheSameExercise()
    {
        JournalEntry[] entries = [Set("pogo-hop"), Trial(1, 0.20), Trial(2, 0.32), Pain(3, "during", "pogo-hop")];
        CompletedItem done = Assert.Single(Read(entries).Completed);
        Assert.Equal(12, done.Contacts);
        // What was typed stays with the work done, where the next offer of a test looks for it.
        Assert.Equal(0.26, done.ContactTimeS!.Value, 1e-9);
        Assert.Single(SetsDone.BySet(entries, "2027-01-04-pm", Day));
        var (question, rule, trials) = Assert.Single(SetsDone.Tests(entries, "2027-01-04-pm", Day));
        Assert.Equal("drop height", question);
        Assert.Equal([0.20, 0.32], trials.Select(t => t.ContactTimeS!.Value));

        // Pain said during the exercise stands at its last trial.
        Assert.Equal([null, 3.0], trials.Select(t => t.PainDuring));
        Assert.Contains(
            "pain was 3 of 10",
            Jumpwright.Sessions.Logs.TestStop(rule, trials)!.Sentence,
            StringComparison.Ordinal
        );
    }

    /// <summary>A place said after the number goes to the rules with it: at a tendon a 2 is worked through, at the shin nothing is.</summary>
    [Theory]
    [InlineData("achilles", false)]
    [InlineData("shin", true)]
    [InlineData("a place nobody knows", true)]
    public void WithAPlaceSaidAfterIt_IsJudgedByThatPlace(string site, bool closesImpact)
    {
        JournalEntry pain = Pain(2, "during", "pogo-hop");
        History history = Read(Set("pogo-hop"), pain, Place(pain, "knee", null, 1), Place(pain, site, "left", 2));
        SymptomReport felt = Assert.Single(history.Symptoms);
        Assert.Equal((site, Side.Left, 2.0), (felt.Site, felt.Side, felt.Score!.Value));
        Assert.Equal(
            closesImpact,
            SafetyRules.For(history, Day).Any(r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 })
        );
    }

    /// <summary>A tap from the shin to the tendon opens nothing: where bone may be what hurts, only the pain taken back by name does.</summary>
    [Theory]
    [InlineData("shin")]
    [InlineData("a place nobody knows")]
    public void AtABone_StaysThereWhateverIsTappedLater(string bone)
    {
        JournalEntry pain = Pain(2, "during", "pogo-hop");
        History history = Read(Set("pogo-hop"), pain, Place(pain, bone, "left", 1), Place(pain, "achilles", "left", 2));
        Assert.Equal(bone, Assert.Single(history.Symptoms).Site);
        Assert.Contains(SafetyRules.For(history, Day), r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 });
    }

    /// <summary>A word about another athlete's pain, or about none, fills nothing: without a place the strictest rule stays.</summary>
    [Fact]
    public void APlaceOfSomebodyElsesPain_FillsNothing()
    {
        JournalEntry pain = Pain(2, "rest", null);
        History history = Read(pain, Place(pain, "achilles", null, 1) with { SessionId = "another" });
        Assert.Equal(PainEntry.PlaceNotSaid, Assert.Single(history.Symptoms).Site);
    }

    /// <summary>However little it hurts and whoever carries the score: a new place closes by itself.</summary>
    [Fact]
    public void InANewPlaceAtALoggedSet_ClosesByItself()
    {
        JournalEntry[] entries = [Set("pogo-hop"), NewPlace(1, "pogo-hop")];
        History history = Read(entries);
        Assert.Equal(PainEntry.PlaceNotSaid, Assert.Single(history.Symptoms).Site);
        Assert.NotEmpty(SafetyRules.For(history, Day));
        Assert.True(Assert.Single(SetsDone.BySet(entries, "2027-01-04-pm", Day)).PainSiteNew);
        Assert.Empty(Read(Set("pogo-hop"), Pain(1, "during", "pogo-hop")).Symptoms);
    }

    /// <summary>A new place without a score is worse than any, until somebody says how bad it is; then it stands once.</summary>
    [Fact]
    public void InANewPlaceWithoutAScore_ClosesUntilItIsScored()
    {
        Assert.Null(Assert.Single(Read(NewPlace(null, "pogo-hop")).Symptoms).Score);
        Assert.Contains(
            SafetyRules.For(Read(NewPlace(null, "pogo-hop")), Day),
            r => r.Effect is TierAtMost { Tissue: Tissue.Bone, Tier: 0 } or NothingPlanned
        );
        Assert.Equal(4, Assert.Single(Read(NewPlace(null, "pogo-hop"), NewPlace(4, "pogo-hop")).Symptoms).Score);
    }

    [Fact]
    public void ATestAfterPainInANewPlace_WasToStop()
    {
        JournalEntry[] entries = [Trial(1, 0.20), NewPlace(null, "squat-jump")];
        var (_, rule, trials) = Assert.Single(SetsDone.Tests(entries, "2027-01-04-pm", Day));
        Assert.Contains(
            "it hurt in a new place",
            Jumpwright.Sessions.Logs.TestStop(rule, trials)!.Sentence,
            StringComparison.Ordinal
        );
    }

    /// <summary>Tapped by mistake: whoever takes it back on that day says so with a name, and nothing is left of it to rule on.</summary>
    [Fact]
    public void TakenBackByAPersonThatDay_ClosesNothing_AndBothEntriesStay()
    {
        JournalEntry pain = Pain(8, "during", "pogo-hop");
        JournalEntry[] entries = [Set("pogo-hop"), pain, Back(pain)];
        History history = Read(entries);
        Assert.Empty(history.Symptoms);
        Assert.Null(Assert.Single(history.Completed).PainDuring);
        Assert.Equal(SafetyRules.For(Read(Set("pogo-hop")), Day).Length, SafetyRules.For(history, Day).Length);
        var (entry, word, of, counts) = Assert.Single(WithdrawnPain.Of(entries, DateTimeZone.Utc));
        Assert.True(counts);
        Assert.Equal((entries[2], "Sam Coach", pain), (entry, word.By, of));
        // What else was said stands.
        Assert.Equal(3, Assert.Single(Read([.. entries, Pain(3, "during", "pogo-hop")]).Completed).PainDuring);
    }

    public static TheoryData<string> NotTakenBack =>
        ["another day", "before it", "nobody", "another athlete", "another session", "another pain"];

    /// <summary>Unknown closes, never opens: whatever is not that athlete's pain, taken back by a person after it and on its own day, counts.</summary>
    [Theory]
    [MemberData(nameof(NotTakenBack))]
    public void TakenBackOtherwise_Counts(string how)
    {
        JournalEntry pain = Pain(8, "rest", null);
        JournalEntry back = Back(pain, how == "nobody" ? "  " : "Sam Coach");
        back = how switch
        {
            "another day" => back with { MadeAt = pain.MadeAt + Duration.FromHours(7) },
            "before it" => back with { MadeAt = pain.MadeAt - Duration.FromSeconds(1) },
            "another athlete" => back with { AthleteId = "a02" },
            "another session" => back with { SessionId = "2027-01-06-pm" },
            "another pain" => Back(Pain(8, "rest", null)),
            _ => back,
        };
        Assert.Single(Read(pain, back).Symptoms);
        Assert.DoesNotContain(WithdrawnPain.Of([pain, back], DateTimeZone.Utc), w => w.Counts);
    }

    /// <summary>The day is the squad's, not Greenwich's: a session late in the evening may end on another day there.</summary>
    [Fact]
    public void TakenBackLate_IsOfTheSquadsDay()
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        JournalEntry pain = Pain(8, "rest", null) with { MadeAt = Instant.FromUtc(2027, 1, 4, 23, 50) };
        JournalEntry back = Back(pain) with { MadeAt = Instant.FromUtc(2027, 1, 5, 0, 10) };
        Assert.True(Assert.Single(WithdrawnPain.Of([pain, back], zone)).Counts);
        Assert.False(Assert.Single(WithdrawnPain.Of([pain, back], DateTimeZone.Utc)).Counts);
    }

    private static JournalEntry Back(JournalEntry pain, string by = "Sam Coach") =>
        Entry(EntryKinds.PainWithdrawn, new PainWithdrawnEntry(pain.Id, by));

    private static JournalEntry NewPlace(double? score, string? exercise) =>
        Entry(EntryKinds.Pain, new PainEntry(score, "during", exercise, null, null) { SiteNew = true });

    private static JournalEntry Trial(int number, double contactS) =>
        Entry(
            EntryKinds.Set,
            new
            {
                exercise = "pogo-hop",
                set = number,
                reps = 1,
                contacts = 1,
                test = "drop height",
                contact_time_s = contactS,
                stop = new { contact_above_s = 0.25, pain_above = 2.0 },
            }
        );

    private static History Read(params JournalEntry[] entries) =>
        JournalReading.Of(
            new History(
                new Athlete(
                    "a01",
                    "Ada",
                    new LocalDate(2000, 6, 1),
                    70,
                    1.75,
                    null,
                    TrainingLevel.Advanced,
                    null,
                    null
                ),
                [],
                [],
                [],
                [],
                []
            ),
            entries,
            DateTimeZone.Utc
        );

    private static JournalEntry Pain(double score, string when, string? exercise) =>
        Entry(EntryKinds.Pain, new PainEntry(score, when, exercise, null, null));

    private static JournalEntry Place(JournalEntry pain, string site, string? side, int secondsLater) =>
        Entry(EntryKinds.PainPlace, new PainPlaceEntry(pain.Id, site, side)) with
        {
            MadeAt = pain.MadeAt.Plus(Duration.FromSeconds(secondsLater)),
        };

    private static JournalEntry Set(string exercise) =>
        Entry(
            EntryKinds.Set,
            new
            {
                exercise,
                set = 1,
                reps = 10,
                contacts = 10,
                undone = false,
            }
        );

    private static JournalEntry Entry(string kind, object data) =>
        new(
            Guid.NewGuid().ToString(),
            kind,
            "a01",
            "2027-01-04-pm",
            Instant.FromUtc(2027, 1, 4, 17, 0),
            "Left",
            JsonSerializer.Serialize(data)
        );
}
