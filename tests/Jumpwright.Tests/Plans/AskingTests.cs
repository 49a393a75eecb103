using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Plans.Asking;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Safety;
using NodaTime;

namespace Jumpwright.Tests.Plans;

/// <summary>The parts of a request that need no athlete's profile: sessions, caps, earlier work.</summary>
public class AskingTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);

    private static Squad Club(string zone, params TrainingWindow[] windows) =>
        new("Club", zone, [], [.. windows], [], ImmutableDictionary<string, string>.Empty);

    private static History Of(Athlete athlete, params CompletedItem[] done) => new(athlete, [], [], [], [], [.. done]);

    private static Athlete Somebody(TrainingLevel level, LocalDate? born, Operation? operation = null) =>
        new("a01", "Somebody", born, 70, 1.8, null, level, operation, null);

    [Fact]
    public void Slots_WindowsOfAWeek_BecomeSessionsInTimeOrderWithIdsOfTheirOwn()
    {
        Squad squad = Club(
            "UTC",
            new(IsoDayOfWeek.Tuesday, new LocalTime(17, 0), 45),
            new(IsoDayOfWeek.Tuesday, new LocalTime(9, 0), 45),
            new(IsoDayOfWeek.Tuesday, new LocalTime(19, 0), 30),
            new(IsoDayOfWeek.Thursday, LocalTime.Noon, 45)
        );
        var slots = SlotsOfWindows.Of(squad, DateTimeZone.Utc, Monday, 1);
        Assert.Equal(["2027-01-05-am", "2027-01-05-pm", "2027-01-05-pm-2", "2027-01-07-pm"], slots.Select(s => s.Id));
        Assert.Equal(slots.OrderBy(s => s.StartUtc), slots);
    }

    [Theory]
    // Two sessions: the week may hold 250 contacts, and each of them 100.
    [InlineData(2, 60)]
    // Three: an even share is 83.
    [InlineData(3, 49)]
    // Five: 50.
    [InlineData(5, 30)]
    public void Caps_TwoDaysBeforeAFixture_HoldSixTenthsOfASessionsShareOfTheWeek(int sessions, int contacts)
    {
        var slots = Planning.Gymnasium.Slots(45, [.. Enumerable.Range(0, sessions)]);
        PlanRequest request = Planning.Gymnasium.Request(slots, []) with
        {
            Fixtures = [new Fixture(slots[^1].Date.PlusDays(2), null, "Cup match")],
        };
        WeeklyLoads weekly = new(
            Of(Somebody(TrainingLevel.Intermediate, null)),
            Club("UTC"),
            request,
            LimitBook.Standard,
            perSession: 100
        );
        LoadCap cap = weekly.Caps().Single(c => c.LimitId == "taper-before-fixture" && c.SessionIds[0] == slots[^1].Id);
        Assert.Single(cap.SessionIds);
        Assert.Null(cap.Tissue);
        Assert.Equal(contacts, cap.AtMost);
        Assert.Contains("Cup match", cap.Because, StringComparison.Ordinal);
        Assert.Equal(sessions > 2, cap.Because.ToString().Contains("shared evenly", StringComparison.Ordinal));
    }

    /// <summary>A rule of pain leaves 40 contacts a session: an eve with 49 would be no shorter than any other day.</summary>
    [Fact]
    public void Caps_TwoDaysBeforeAFixtureUnderARuling_HoldSixTenthsOfWhatItLeaves()
    {
        var slots = Planning.Gymnasium.Slots(45, 0, 1, 2);
        PlanRequest request = Planning.Gymnasium.Request(slots, []) with
        {
            Fixtures = [new Fixture(slots[^1].Date.PlusDays(2), null, "Cup match")],
        };
        WeeklyLoads weekly = new(
            Of(Somebody(TrainingLevel.Intermediate, null)),
            Club("UTC"),
            request,
            LimitBook.Standard,
            perSession: 100
        )
        {
            RuledOn = day => day == slots[^1].Date ? 40 : 100,
        };
        LoadCap cap = weekly.Caps().Single(c => c.LimitId == "taper-before-fixture" && c.SessionIds[0] == slots[^1].Id);
        Assert.Equal(24, cap.AtMost);
        Assert.Contains("that a ruling leaves", cap.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("achilles", "tendon", 4, Tissue.Achilles)]
    [InlineData("knee", null, 2, Tissue.Patellar)]
    public void Menu_EveOfAMatchWithASoreTissue_HoldsNothingThatLandsOnTheFloorWithIt(
        string site,
        string? tissue,
        double score,
        Tissue sore
    )
    {
        History history = Patient.Well.Felt(site, "pain", "during", score, 1, tissue, "a physiotherapist");
        Squad squad = Club(
            "UTC",
            new(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45),
            new TrainingWindow(IsoDayOfWeek.Friday, new LocalTime(17, 0), 45)
        ) with
        {
            Kit = [new KitCount("seat", 2), new KitCount("plyo-box", 2)],
            Fixtures = [new Fixture(Monday.PlusDays(5), new LocalTime(15, 0), "Cup match")],
        };
        PlanRequest request = Requests.For(squad, [history], Catalogue.Standard, Monday, 1).Require();
        AthleteRequest who = request.Athletes.Single();
        MenuItem[] On(int slot) => [.. who.Menu.Where(m => m.SessionId == request.Slots[slot].Id)];
        bool Lands(string id) => Catalogue.Standard.Find(id)! is { Landing: "floor" } e && e.Demand[sore] > 0;

        Assert.Contains(On(0), m => Lands(m.ExerciseId));
        Assert.DoesNotContain(On(1), m => Lands(m.ExerciseId));
        Assert.Contains(On(1), m => Catalogue.Standard.Find(m.ExerciseId)!.Stage == Stage.PushToBox);
        Assert.DoesNotContain(
            On(1),
            m => m.Dose.ReplacesIfSore is { } id && Catalogue.Standard.Find(id)!.Landing == "floor"
        );
        // A house that keeps five days free for this athlete has none on Monday either.
        LimitOverride tighter = new("sore-landing-days-before-fixture", "a01", 5, "Sam Coach", "asked to", null, null);
        AthleteRequest held = Requests
            .For(squad with { Overrides = [tighter] }, [history], Catalogue.Standard, Monday, 1)
            .Require()
            .Athletes.Single();
        Assert.Equal(5, held.SoreLandingDaysBeforeFixture);
        Assert.DoesNotContain(held.Menu, m => Lands(m.ExerciseId));
    }

    [Fact]
    public void Slots_SessionMoved_IsCalledByItsNewDay_AndMayLeaveTheWeeksOrEnterThem()
    {
        Squad squad = Club(
            "UTC",
            new(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45),
            new TrainingWindow(IsoDayOfWeek.Wednesday, new LocalTime(17, 0), 45)
        );
        string[] Ids(params MovedSession[] moved) =>
            [.. SlotsOfWindows.Of(squad, DateTimeZone.Utc, Monday, 1, [.. moved]).Require().Select(s => s.Id)];
        Assert.Equal(["2027-01-04-pm", "2027-01-06-pm"], Ids());
        Assert.Equal(
            ["2027-01-06-pm", "2027-01-07-am"],
            Ids(new MovedSession("2027-01-04-pm", new(2027, 1, 7), new(9, 0)))
        );
        // Moved again, under the name that it has now.
        Assert.Equal(
            ["2027-01-05-pm", "2027-01-06-pm"],
            Ids(
                new MovedSession("2027-01-04-pm", new(2027, 1, 7), new(9, 0)),
                new MovedSession("2027-01-07-am", new(2027, 1, 5), new(17, 0))
            )
        );
        Assert.Equal(["2027-01-06-pm"], Ids(new MovedSession("2027-01-04-pm", new(2027, 1, 12), new(9, 0))));
        Assert.Equal(
            ["2027-01-04-pm", "2027-01-06-pm", "2027-01-09-am"],
            Ids(new MovedSession("2027-01-11-pm", new(2027, 1, 9), new(9, 0)))
        );
        Assert.False(
            SlotsOfWindows
                .Of(
                    squad,
                    DateTimeZone.Utc,
                    Monday,
                    1,
                    [new MovedSession("2027-01-04-pm", new(2027, 1, 6), new(17, 30))]
                )
                .TryGet(out _, out Refusal? two)
        );
        Assert.Contains("2027-01-06-pm is held then", two!.Sentence);
    }

    [Fact]
    public void Slots_OverTheChangeOfClocks_KeepLocalTimeAndMoveInUtc()
    {
        // Europe/Paris goes to summer time on Sunday 2027-03-28: 18:00 is 17:00 UTC before and 16:00 UTC after.
        Squad squad = Club("Europe/Paris", new TrainingWindow(IsoDayOfWeek.Saturday, new LocalTime(18, 0), 45));
        var slots = SlotsOfWindows.Of(squad, DateTimeZoneProviders.Tzdb["Europe/Paris"], new LocalDate(2027, 3, 22), 2);
        Assert.Equal(Instant.FromUtc(2027, 3, 27, 17, 0), slots[0].StartUtc);
        Assert.Equal(Instant.FromUtc(2027, 4, 3, 16, 0), slots[1].StartUtc);
        Assert.Equal(167, (slots[1].StartUtc - slots[0].StartUtc).TotalHours);
    }

    [Theory]
    // Lower edges of the bands of Potach and Chu (handbook, from memory): 80, 100, 120; unknown is the least used.
    [InlineData(TrainingLevel.Beginner, 2000, false, 80)]
    [InlineData(TrainingLevel.Unknown, 2000, false, 80)]
    [InlineData(TrainingLevel.Intermediate, 2000, false, 100)]
    [InlineData(TrainingLevel.Advanced, 2000, false, 120)]
    // House rule: under 16, age unknown, or after an operation 60.
    [InlineData(TrainingLevel.Advanced, 2012, false, 60)]
    [InlineData(TrainingLevel.Advanced, 0, false, 60)]
    [InlineData(TrainingLevel.Advanced, 2000, true, 60)]
    public void Contacts_ByLevelAgeAndOperation_AreTheCautiousReading(
        TrainingLevel level,
        int bornIn,
        bool operated,
        int expected
    )
    {
        Athlete athlete = Somebody(
            level,
            bornIn == 0 ? null : new LocalDate(bornIn, 6, 1),
            operated ? new Operation(null, "knee", Side.Left) : null
        );
        Assert.Equal(expected, ContactCaps.PerSession(Of(athlete), LimitBook.Standard, Monday));
    }

    [Fact]
    public void RecentWork_OfALoggedSession_EndsWithItsWindowAndAsksItsOwnHours()
    {
        Catalogue catalogue = Planning.Gymnasium.Catalogue;
        Squad squad = Club("UTC", new TrainingWindow(IsoDayOfWeek.Sunday, new LocalTime(10, 0), 60));
        CompletedItem depth = new(
            "a01",
            new LocalDate(2027, 1, 3),
            "2027-01-03-am",
            "depth-jump",
            3,
            5,
            30,
            0,
            0,
            0,
            6,
            0.3,
            null
        );
        var recent = RecentWorks.Of(
            Of(Somebody(TrainingLevel.Advanced, null), depth),
            squad,
            DateTimeZone.Utc,
            catalogue,
            Monday
        );
        Assert.Equal([Tissue.Achilles, Tissue.Patellar], recent.Select(r => r.Tissue));
        Assert.All(recent, r => Assert.Equal(Instant.FromUtc(2027, 1, 3, 11, 0), r.EndUtc));
        Assert.All(recent, r => Assert.Equal(48, r.RecoveryHours));

        // No such session in the squad's week: the cautious reading is the end of the day.
        var elsewhere = RecentWorks.Of(
            Of(Somebody(TrainingLevel.Advanced, null), depth with { SessionId = "club" }),
            squad,
            DateTimeZone.Utc,
            catalogue,
            Monday
        );
        Assert.All(elsewhere, r => Assert.Equal(Instant.FromUtc(2027, 1, 4, 0, 0), r.EndUtc));

        // An exercise nobody knows counts against every tissue.
        var unknown = RecentWorks.Of(
            Of(Somebody(TrainingLevel.Advanced, null), depth with { ExerciseId = "something-else" }),
            squad,
            DateTimeZone.Utc,
            catalogue,
            Monday
        );
        Assert.Equal(4, unknown.Length);
    }

    [Fact]
    public void RecentWork_LongAgoOrLow_AsksForNothing()
    {
        CompletedItem low = new("a01", new LocalDate(2027, 1, 3), "x", "snap-down", 3, 5, 15, 0, 0, 0, 3, null, null);
        CompletedItem old = low with { ExerciseId = "depth-jump", Date = new LocalDate(2026, 12, 30) };
        Assert.Empty(
            RecentWorks.Of(
                Of(Somebody(TrainingLevel.Advanced, null), low, old),
                Club("UTC"),
                DateTimeZone.Utc,
                Planning.Gymnasium.Catalogue,
                Monday
            )
        );
    }

    [Theory]
    [InlineData("Nowhere/Atlantis", 1, "time zone")]
    [InlineData("UTC", 0, "weeks")]
    [InlineData("UTC", 1, "windows")]
    public void Requests_ThatCannotBe_AreRefusedInASentence(string zone, int weeks, string word)
    {
        Outcome<PlanRequest> outcome = Requests.For(Club(zone), [], Planning.Gymnasium.Catalogue, Monday, weeks);
        Assert.False(outcome.TryGet(out _, out Refusal? refusal));
        Assert.Contains(word, refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Request_FloorAndHeatOfADay_AreRulingsOfThatDayForEverybody_AndFastGrowthIsAPrompt()
    {
        Squad squad = Club(
            "UTC",
            new TrainingWindow(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45) { Surface = Surface.Hard },
            new TrainingWindow(IsoDayOfWeek.Thursday, new LocalTime(17, 0), 45)
        ) with
        {
            Weather = [new(Monday.PlusDays(3), 34, 60)],
        };
        History youth = Of(Somebody(TrainingLevel.Beginner, new LocalDate(2013, 1, 1))) with
        {
            Symptoms = [new("a01", Monday.PlusDays(-1), "knee", Side.Left, null, null, "pain", "after", 0, null)],
            Screens =
            [
                new("a01", Monday.PlusDays(-360), "stature", Side.Unknown, 1.50, "m", null, null, null),
                new("a01", Monday.PlusDays(-1), "stature", Side.Unknown, 1.60, "m", null, null, null),
            ],
        };
        PlanRequest request = Requests.For(squad, [youth], Catalogue.Standard, Monday, 1).Require();
        AthleteRequest athlete = Assert.Single(request.Athletes);

        Assert.Contains(athlete.RulingsOn(Monday), r => r is { LimitId: "hard-floor", Effect: NoHighIntensity });
        Assert.Contains(athlete.RulingsOn(Monday.PlusDays(3)), r => r is { LimitId: "heat", Effect: NothingPlanned });
        Assert.DoesNotContain(athlete.Menu, m => m.SessionId == "2027-01-07-pm");
        Assert.Contains(athlete.Menu, m => m.SessionId == "2027-01-04-pm");
        Assert.StartsWith("Grows fast: ", Assert.Single(athlete.Prompts), StringComparison.Ordinal);
        Assert.Contains(
            request.Remarks,
            r => r.ToString().Contains("does not say what 1 of the sessions", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Request_SessionMovedToAnotherDay_TakesItsHardFloorAlong()
    {
        Squad squad = Club(
            "UTC",
            new TrainingWindow(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45) { Surface = Surface.Hard },
            new TrainingWindow(IsoDayOfWeek.Thursday, new LocalTime(17, 0), 45) { Surface = Surface.Grass }
        );
        AthleteRequest athlete = Assert.Single(
            Requests
                .For(
                    squad,
                    [Of(Somebody(TrainingLevel.Beginner, new LocalDate(2000, 1, 1)))],
                    Catalogue.Standard,
                    Monday,
                    1,
                    null,
                    Amendments.None with
                    {
                        Moved = [new MovedSession("2027-01-04-pm", Monday.PlusDays(1), new LocalTime(17, 0))],
                    }
                )
                .Require()
                .Athletes
        );
        Assert.Contains(athlete.RulingsOn(Monday.PlusDays(1)), r => r.LimitId == "hard-floor");
        Assert.DoesNotContain(athlete.RulingsOn(Monday.PlusDays(3)), r => r.LimitId == "hard-floor");
    }
}
