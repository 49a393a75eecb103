using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Tests.Athletes;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Prescribing;

public class ReportTests
{
    private static readonly Squad Club = new(
        "Club",
        "Europe/Paris",
        [],
        [],
        [],
        ImmutableDictionary<string, string>.Empty
    );

    private static History Athlete(int number)
    {
        SeededRandom random = SeededRandom.For(5, (ulong)number);
        Story story = Story.Untested;
        for (int i = 0; i < 6; i++)
        {
            for (int t = 0; t < 3; t++)
            {
                story = story.Counter(0.30 + (0.02 * number) + (0.01 * random.Normal()), daysAgo: 7 * (6 - i));
            }
        }

        foreach (double box in new[] { 0.2, 0.3, 0.4 })
        {
            for (int t = 0; t < 3; t++)
            {
                story = story.Jumped(
                    JumpTask.DropJump,
                    [
                        (MeasureNames.ReactiveStrengthIndex, 1.5 + (0.05 * random.Normal()), 0.02),
                        (MeasureNames.ContactTime, 0.2, 0.002),
                    ],
                    daysAgo: 10,
                    dropM: box
                );
            }
        }

        return story.History with
        {
            Athlete = story.History.Athlete with { Id = $"a{number:00}", Name = $"Athlete {number}" },
        };
    }

    private static ImmutableArray<Report> Reports(int athletes = 6) =>
        Reporting.Of(Club, [.. Enumerable.Range(1, athletes).Select(Athlete)], Catalogue.Standard, Story.Today);

    private static string Text(Report report) =>
        string.Join("\n", report.Sections.SelectMany(s => s.Paragraphs.Prepend(s.Heading)));

    /// <summary>Whoever is measured in another way by now is told that the trend ended, and no change across the two.</summary>
    [Fact]
    public void MethodThatChanged_EndsTheTrend_AndIsSaid()
    {
        History plates = Athlete(1);
        Story mat = new(plates);
        for (int i = 0; i < 2; i++)
        {
            mat = mat.Jumped(
                JumpTask.CountermovementJump,
                [(MeasureNames.JumpHeightFlightTime, 0.60, 0.01)],
                daysAgo: 2 + i,
                device: Device.MatOrGate,
                method: "flight-time"
            );
        }

        static string Told(History history) => Text(Reporting.Of(Club, [history], Catalogue.Standard, Story.Today)[1]);
        string told = Told(mat.History);
        Assert.Contains("Last measured on 28 Dec 2026: jump height", told, StringComparison.Ordinal);
        Assert.Contains("no change is told from one to the other", told, StringComparison.Ordinal);
        Assert.Contains("Level 32.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("no change is told", Told(plates), StringComparison.Ordinal);
    }

    /// <summary>A squad half on plates and half on mats is no wider a squad: each is set against those measured the same way.</summary>
    [Fact]
    public void SpreadOfASquad_IsNeverTakenAcrossMethods()
    {
        History[] plates = [.. Enumerable.Range(1, 8).Select(Athlete)];
        History[] mixed = [.. plates.Select((h, i) => i % 2 == 0 ? h : OnMats(h))];
        Assert.Equal(Typical(plates), Typical(mixed), 0.6);

        static double Typical(History[] squad) =>
            Reporting
                .Prescriptions(Club, squad, Catalogue.Standard, Story.Today)[0]
                .Gains.Require()
                .Ranked.Single(g => g.Quality == Quality.ReactiveStrength)
                .Centimetres!.Value;
    }

    /// <summary>The same jumps, a hand higher, as a mat has them that rests on the flight alone.</summary>
    private static History OnMats(History history) =>
        history with
        {
            Trials =
            [
                .. history.Trials.Select(t =>
                    t with
                    {
                        Device = Device.MatOrGate,
                        Trial = t.Trial with
                        {
                            Measures =
                            [
                                .. t.Trial.Measures.Select(m =>
                                    m.Name == MeasureNames.JumpHeight
                                        ? new Measure(
                                            MeasureNames.JumpHeightFlightTime,
                                            m.Value + 0.15,
                                            m.Unit,
                                            m.StandardUncertainty,
                                            "flight-time"
                                        )
                                        : m
                                ),
                            ],
                        },
                    }
                ),
            ],
        };

    [Fact]
    public void Reports_SquadFirstThenEveryAthlete()
    {
        ImmutableArray<Report> reports = Reports();
        Assert.Equal(["squad", "a01", "a02", "a03", "a04", "a05", "a06"], reports.Select(r => r.Id));
    }

    [Fact]
    public void AthletesReport_SaysChangeDropHeightGainsAndNext_WithPictures()
    {
        Report report = Reports()[2];
        string text = Text(report);
        Assert.Contains("after 6 sessions", text, StringComparison.Ordinal);
        Assert.Contains("Train from", text, StringComparison.Ordinal);
        Assert.Contains("typically", text, StringComparison.Ordinal);
        Assert.Contains("never added up", text, StringComparison.Ordinal);
        Assert.Contains(report.Sections.SelectMany(s => s.Plots), p => p.Name == "drop-height");
        Assert.All(report.Sections.SelectMany(s => s.Plots), p => Assert.NotEmpty(p.InWords.ToString()));
    }

    [Fact]
    public void SquadsReport_StatesItsFalseAlarmsAndItsNoise()
    {
        string text = Text(Reports()[0]);
        Assert.Contains("false alarms a week are to be expected when nobody changes", text, StringComparison.Ordinal);
        Assert.Contains("typical error", text, StringComparison.Ordinal);
        Assert.Contains("ICC(1,1)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Reports_NobodyMeasured_SayWhatToMeasureAndClearNobody()
    {
        ImmutableArray<Report> reports = Reporting.Of(Club, [Story.Untested.History], Catalogue.Standard, Story.Today);
        string text = Text(reports[1]);
        Assert.Contains("Nothing was measured twice", text, StringComparison.Ordinal);
        Assert.Contains("not measured for this athlete", text, StringComparison.Ordinal);
        Assert.All(reports, r => Assert.Contains("clears nobody", r.Foot, StringComparison.Ordinal));
    }

    /// <summary>Two ways to get one jump's height are nearly one number: one is shown, by counting sessions, the other named once.</summary>
    [Fact]
    public void Heights_ByTwoMethods_AreShownOnce_AndTheOtherIsNamedOnce()
    {
        History history = Athlete(3);
        history = history with
        {
            Trials =
            [
                .. history.Trials.Select(t =>
                    t.Trial.Task != JumpTask.CountermovementJump
                        ? t
                        : t with
                        {
                            Trial = t.Trial with
                            {
                                Measures = t.Trial.Measures.Add(
                                    new Measure(
                                        MeasureNames.JumpHeightFlightTime,
                                        t.Trial.Measures[0].Value + 0.015,
                                        Unit.Metre,
                                        0.004,
                                        "flight-time"
                                    )
                                ),
                            },
                        }
                ),
            ],
        };
        Report report = Reporting.Of(Club, [history], Catalogue.Standard, Story.Today)[1];
        string changed = Text(report);
        Assert.Equal(1, Count(changed, "Level "));
        Assert.Equal(1, Count(changed, "jump height by flight time"));
        Assert.Contains("impulse–momentum where both have as many", changed, StringComparison.Ordinal);
        Assert.Single(
            report.Sections.SelectMany(s => s.Plots),
            p =>
                p.Name.Contains("jump_height", StringComparison.Ordinal)
                || p.Name.Contains("jump-height", StringComparison.Ordinal)
        );

        static int Count(string text, string what) => text.Split(what, StringSplitOptions.None).Length - 1;
    }

    [Fact]
    public void Reports_NameNoVelocityBands()
    {
        string all = string.Concat(Reports().Select(Text));
        Assert.DoesNotContain("strength-speed", all, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("speed-strength", all, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>What the squad set tighter holds in the report as it does in the plan, whether or not the histories carry it.</summary>
    [Fact]
    public void Reports_TakeTheLimitsThatTheSquadSetOtherwise()
    {
        Squad strict = Club with { Policy = Club.Policy.Add("drop-contact-ceiling", "0.18") };
        Assert.DoesNotContain("over the ceiling of 180 ms", DropsOf(Club), StringComparison.Ordinal);
        Assert.Contains("over the ceiling of 180 ms", DropsOf(strict), StringComparison.Ordinal);

        static string DropsOf(Squad squad) =>
            Text(Reporting.Of(squad, [Athlete(1), Athlete(2)], Catalogue.Standard, Story.Today)[1]);
    }

    /// <summary>What is planned for the day and the week is taken already, so that a test beside it never goes over the day's contacts.</summary>
    [Fact]
    public void TestsBesideAFullSession_AreNotOffered()
    {
        History athlete = Athlete(2);
        Squad equipped = Club with { Kit = AllKit };
        int Contacts(params PlannedContacts[] planned) =>
            Reporting
                .TestsBeside(equipped, athlete, Catalogue.Standard, Story.Today, [.. planned])
                .Sum(o => o.Test.TryGet(out TestProposal? test, out _) ? test.Contacts : 0);
        int free = Contacts();
        Assert.True(free > 0);
        Assert.Equal(0, Contacts(new PlannedContacts(Story.Today, 120, false)));
        Assert.Equal(0, Contacts(new PlannedContacts(Story.Today.PlusDays(-3), 400, false)));

        // Work of the week after takes nothing away.
        Assert.Equal(free, Contacts(Hops(7, 400)));
    }

    private static PlannedContacts Hops(int inDays, int contacts) =>
        new(Story.Today.PlusDays(inDays), contacts, false) { ExerciseId = "depth-jump" };

    /// <summary>A test needs its hours before what is planned after it, and what is planned before it needs its own.</summary>
    [Theory]
    [InlineData(-2, false)]
    [InlineData(-1, false)]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(-5, true)]
    [InlineData(5, true)]
    public void TestsNearPlannedShockWork_AreOfferedOnlyWhenRecoveryAllows(int inDays, bool offered)
    {
        // Somebody to whom a test that depth jumps get in the way of is offered when nothing is planned.
        (Squad squad, History athlete) = Enumerable
            .Range(0, 200)
            .Select(TestedSquad.Draw)
            .SelectMany(d => d.Athletes.Select(a => (Club with { Kit = d.Squad.Kit, Fixtures = d.Squad.Fixtures }, a)))
            .First(p => Hard(p.Item1, p.a, []) > 0);
        Assert.Equal(offered, Hard(squad, athlete, [Hops(inDays, 6)]) > 0);

        static int Hard(Squad squad, History athlete, ImmutableArray<PlannedContacts> planned) =>
            Reporting
                .TestsBeside(squad, athlete, Catalogue.Standard, Story.Today, planned)
                .Select(o => o.Test.TryGet(out TestProposal? test, out _) ? test : null)
                .OfType<TestProposal>()
                .Count(t =>
                    Catalogue
                        .Standard.Find(t.ExerciseId)!
                        .RecoveryHours.Any(h =>
                            h.Value >= 48
                            && Catalogue.Standard.Find("depth-jump")!.RecoveryHours.GetValueOrDefault(h.Key) >= 48
                        )
                );
    }

    /// <summary>One short line says what waits and why, each reason once.</summary>
    [Fact]
    public void WhatIsNotTestedNow_IsOneLine()
    {
        Report report = Reporting.Of(Club, [Athlete(2)], Catalogue.Standard, Story.Today)[1];
        string[] lines = Text(report).Split('\n');
        string line = Assert.Single(lines, l => l.StartsWith("Not now", StringComparison.Ordinal));
        Assert.InRange(line.Length, 20, 320);
        string[] reasons = [.. line.Split('(').Skip(1).Select(r => r.Split(')')[0])];
        Assert.Equal(reasons.Distinct(), reasons);
    }

    private static ImmutableArray<KitCount> AllKit =>
        [
            .. Catalogue
                .Standard.Exercises.SelectMany(e => e.Kit)
                .Select(k => k.Id)
                .Distinct()
                .Select(k => new KitCount(k, 2)),
        ];

    [Fact]
    public void NextTests_OnADayTooHotToTrain_NoneIsOffered()
    {
        ImmutableArray<History> athletes = [.. Enumerable.Range(1, 6).Select(Athlete)];
        int Offered(Squad squad) =>
            Reporting
                .Prescriptions(squad, athletes, Catalogue.Standard, Story.Today)
                .Sum(p => p.NextTests.Count(t => t.Test.TryGet(out _, out _)));
        Squad equipped = Club with { Kit = AllKit };
        Assert.True(Offered(equipped) > 0);
        Assert.Equal(0, Offered(equipped with { Weather = [new(Story.Today, 36, 60)] }));
    }
}
