using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

public class ReplanningTests
{
    private static readonly ImmutableArray<SessionSlot> Three = Slots(45, 0, 2, 4);

    private static PlanRequest Squad(int athletes) =>
        Request(Three, [.. Enumerable.Range(1, athletes).Select(n => FullMenu($"a{n:00}", Three, n))]) with
        {
            Budget = new SolveBudget { DeterministicTime = 1, GapLimit = 0.01 },
        };

    private static IEnumerable<(string, string, string, int)> Items(Plan plan) =>
        plan.Sessions.SelectMany(s =>
            s.Athletes.SelectMany(a => a.Items.Select(i => (s.Slot.Id, a.AthleteId, i.Dose.ExerciseId, i.Sets)))
        );

    /// <summary>Who of the others does what from when to when, in every session.</summary>
    private static ImmutableArray<(string, string, string, double, double)> StationsOfOthers(Plan plan, string but) =>
        [
            .. plan
                .Sessions.SelectMany(s =>
                    s.Rotation.SelectMany(r =>
                        r.AthleteIds.Where(a => a != but)
                            .Select(a => (s.Slot.Id, a, r.ExerciseId, r.StartMin, r.EndMin))
                    )
                )
                .Order(),
        ];

    private static AthleteRequest Sore(AthleteRequest who, Tissue tissue, int tier) =>
        who with
        {
            RulingsByDay = Three
                .Select(s => s.Date)
                .ToImmutableDictionary(
                    d => d,
                    _ =>
                        ImmutableArray.Create(
                            new Ruling(
                                "tendon-pain",
                                new TierAtMost(tissue, tier),
                                $"Patellar pain 4 of 10.",
                                Bibliography.Get("house-rule")
                            )
                        )
                ),
        };

    private static int LoadOn(Plan plan, string athlete, string session, Tissue tissue) =>
        plan
            .Sessions.Where(s => s.Slot.Id == session)
            .SelectMany(s => s.Athletes.Where(a => a.AthleteId == athlete).SelectMany(a => a.Items))
            .Sum(i => i.Contacts * Catalogue.Find(i.Dose.ExerciseId)!.Demand[tissue]);

    [Fact]
    public void Replan_NothingChanged_ChangesNothing()
    {
        PlanRequest request = Squad(2);
        Plan before = Planner.Solve(request);
        Replanned after = Replanner.Replan(before, request);
        Assert.Empty(after.Changes);
        Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
    }

    [Fact]
    public void Replan_OneSoreKneeOfFive_LeavesTheOthersAndLoadsTheKneeNoMoreInAnySession()
    {
        PlanRequest request = Squad(5);
        Plan before = Planner.Solve(request);
        PlanRequest sore = request with
        {
            Athletes = [.. request.Athletes.Select(a => a.Athlete.Id == "a03" ? Sore(a, Tissue.Patellar, 1) : a)],
        };
        Replanned after = Replanner.Replan(before, sore);
        Assert.NotEmpty(after.Changes);
        Assert.All(after.Changes, c => Assert.Equal("a03", c.AthleteId));
        Assert.All(after.Changes, c => Assert.NotEmpty(c.Because.ToString()));
        Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
        Assert.Equal(StationsOfOthers(before, "a03"), StationsOfOthers(after.Plan, "a03"));
        Assert.All(
            Three,
            s =>
                Assert.True(
                    LoadOn(after.Plan, "a03", s.Id, Tissue.Patellar) <= LoadOn(before, "a03", s.Id, Tissue.Patellar)
                )
        );
        Assert.Contains(after.Changes, c => c.Because.ToString().StartsWith("Patellar pain", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("seat")]
    [InlineData("band")]
    [InlineData("drop-box")]
    public void Replan_KitThatOthersStoodAtIsFewer_PlacesThemAnewAndKeepsEveryLimit(string kit)
    {
        PlanRequest request = Squad(6);
        Plan before = Planner.Solve(request);
        PlanRequest fewer = request with
        {
            Kit = [.. request.Kit.Select(k => k.Id == kit ? k with { Count = 1 } : k)],
            Athletes = [.. request.Athletes.Select(a => a.Athlete.Id == "a03" ? Sore(a, Tissue.Patellar, 1) : a)],
        };
        // As they stood, two or more of the others used it at once: those places are gone.
        Assert.Contains(before.Sessions, s => AtOnce(s, kit, but: "a03") > 1);

        Replanned after = Replanner.Replan(before, fewer);

        Assert.NotNull(after.Plan.Objective);
        Assert.NotEqual(StationsOfOthers(before, "a03"), StationsOfOthers(after.Plan, "a03"));
        Assert.All(after.Plan.Sessions, s => Assert.True(AtOnce(s, kit) <= 1));
        Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
        Assert.Empty(Judge.Check(after.Plan, after.Request));
    }

    /// <summary>Most pieces of a kit that stations of a session use at once.</summary>
    private static int AtOnce(PlannedSession session, string kit, string? but = null)
    {
        var uses = session
            .Rotation.SelectMany(r =>
                Catalogue
                    .Find(r.ExerciseId)!
                    .Kit.Where(k => k.Id == kit)
                    .Select(k => (r.StartMin, r.EndMin, Pieces: k.Count * r.AthleteIds.Count(a => a != but)))
            )
            .ToList();
        return uses.Select(u =>
                uses.Where(o => o.StartMin <= u.StartMin + 1e-9 && o.EndMin > u.StartMin + 1e-9).Sum(o => o.Pieces)
            )
            .DefaultIfEmpty(0)
            .Max();
    }

    [Fact]
    public void Replan_SoreForThirtySeeds_NeverRaisesTheTissueAnywhere()
    {
        for (int seed = 1; seed <= 30; seed++)
        {
            PlanRequest request = RandomSquads.Of(seed, 2);
            Plan before = Planner.Solve(request);
            if (before.Objective is null)
            {
                continue;
            }

            var tissue = (Tissue)(seed % 4);
            PlanRequest sore = request with
            {
                Athletes =
                [
                    .. request.Athletes.Select(a =>
                        a with
                        {
                            RulingsByDay = request
                                .Slots.Select(s => s.Date)
                                .Distinct()
                                .ToImmutableDictionary(
                                    d => d,
                                    d =>
                                        a.RulingsOn(d)
                                            .Add(
                                                new(
                                                    "tendon-pain",
                                                    new TierAtMost(tissue, seed % 3),
                                                    $"Sore.",
                                                    Bibliography.Get("house-rule")
                                                )
                                            )
                                ),
                        }
                    ),
                ],
            };
            Replanned after = Replanner.Replan(before, sore);
            Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
            foreach (AthleteRequest who in request.Athletes)
            {
                foreach (SessionSlot slot in request.Slots)
                {
                    Assert.True(
                        LoadOn(after.Plan, who.Athlete.Id, slot.Id, tissue)
                            <= LoadOn(before, who.Athlete.Id, slot.Id, tissue),
                        $"seed {seed}"
                    );
                }
            }
        }
    }

    [Fact]
    public void Replan_SessionMissed_SaysThatItIsGoneAndKeepsTheRest()
    {
        PlanRequest request = Squad(2);
        Plan before = Planner.Solve(request);
        PlanRequest later = request with { Slots = [.. request.Slots.Skip(1)] };
        later = later with
        {
            Athletes =
            [
                .. later.Athletes.Select(a =>
                    a with
                    {
                        Menu = [.. a.Menu.Where(m => later.Slots.Any(s => s.Id == m.SessionId))],
                        Pairs = [.. a.Pairs.Where(p => later.Slots.Any(s => s.Id == p.SessionId))],
                    }
                ),
            ],
        };
        Replanned after = Replanner.Replan(before, later);
        Assert.Contains(after.Changes, c => c.Because.ToString().Contains("no session", StringComparison.Ordinal));
        var kept = Items(before).Where(i => i.Item1 != Three[0].Id).Intersect(Items(after.Plan)).Count();
        Assert.True(kept >= Items(before).Count(i => i.Item1 != Three[0].Id) * 0.8);
        Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
    }

    [Fact]
    public void Replan_FixtureMovedIn_TakesHighIntensityAwayBeforeItAndNamesTheFixture()
    {
        PlanRequest request = Squad(2);
        Plan before = Planner.Solve(request);
        PlanRequest moved = request with { Fixtures = [new(Three[1].Date.PlusDays(1), null, "Cup match")] };
        Replanned after = Replanner.Replan(before, moved);
        Assert.Empty(IndependentChecker.Check(after.Plan, after.Request));
        bool had = Items(before).Any(i => i.Item1 == Three[1].Id && Catalogue.Find(i.Item3)!.IsHighIntensity);
        Assert.True(
            !had || after.Changes.Any(c => c.Because.ToString().Contains("Cup match", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void RollCall_EverybodyAndEverything_CutsNothing()
    {
        PlanRequest request = Squad(4);
        Plan plan = Planner.Solve(request);
        foreach (PlannedSession session in plan.Sessions.Where(s => s.Athletes.Length > 0))
        {
            RolledCall rolled = RollCall.Make(session, request, request.Athletes.Select(a => a.Athlete.Id));
            Assert.Equal(
                session.Athletes.Sum(a => a.Items.Sum(i => i.Sets)),
                rolled.Session.Athletes.Sum(a => a.Items.Sum(i => i.Sets))
                    + rolled.Cuts.Sum(c => c.SetsBefore - c.SetsNow)
            );
            Assert.Empty(FloorBreaches(plan, rolled));
        }
    }

    [Theory]
    [InlineData(30, 1)]
    [InlineData(20, 0)]
    [InlineData(45, 1)]
    public void RollCall_LessTimeAndKit_OnlyCutsAndStaysOnTheFloor(int minutes, int boxes)
    {
        PlanRequest request = Squad(6);
        Plan plan = Planner.Solve(request);
        var kit = new Dictionary<string, int> { ["plyo-box"] = boxes, ["hex-bar"] = 0 };
        foreach (PlannedSession session in plan.Sessions)
        {
            RolledCall rolled = RollCall.Make(session, request, ["a01", "a02", "a04", "a05"], kit, minutes);
            Assert.DoesNotContain(rolled.Session.Athletes, a => a.AthleteId is "a03" or "a06");
            foreach (AthleteSession one in rolled.Session.Athletes)
            {
                AthleteSession was = session.Athletes.Single(a => a.AthleteId == one.AthleteId);
                Assert.All(
                    one.Items,
                    i => Assert.True(was.Items.Single(w => w.Dose.ExerciseId == i.Dose.ExerciseId).Sets >= i.Sets)
                );
            }

            Assert.Empty(FloorBreaches(plan, rolled));
        }
    }

    /// <summary>With all the kit the rule of the tablet holds: no limit of the floor breaks, nobody starts later, and nothing is done more.</summary>
    [Fact]
    public void RollCall_WithAllTheKit_MovesUpAndLeavesOut_InsideEveryLimitOfTheFloor()
    {
        PlanRequest request = Squad(6);
        Plan plan = Planner.Solve(request);
        var random = new Random(6);
        foreach (PlannedSession session in plan.Sessions.Where(s => s.Athletes.Length > 0))
        {
            for (int trial = 0; trial < 40; trial++)
            {
                string[] here = [.. session.Athletes.Select(a => a.AthleteId).Where(_ => random.Next(3) > 0)];
                int minutes = random.Next(5, session.Slot.Minutes + 10);
                RolledCall rolled = RollCall.Make(session, request, here, null, minutes);
                Assert.Empty(FloorBreaches(plan, rolled));
                foreach (RotationEntry turn in rolled.Session.Rotation)
                {
                    Assert.True(turn.EndMin <= Math.Min(minutes, session.Slot.Minutes) + 1e-6);
                    Assert.All(
                        turn.AthleteIds,
                        a =>
                            Assert.Contains(
                                session.Rotation,
                                p =>
                                    p.ExerciseId == turn.ExerciseId
                                    && p.AthleteIds.Contains(a)
                                    && p.StartMin >= turn.StartMin - 1e-6
                                    && Math.Abs(p.EndMin - p.StartMin - (turn.EndMin - turn.StartMin)) < 1e-6
                            )
                    );
                }
            }

            RolledCall everybody = RollCall.Make(session, request, session.Athletes.Select(a => a.AthleteId));
            Assert.Empty(everybody.Cuts);
            Assert.Equal(
                session.Rotation.Select(r => (r.Station, r.ExerciseId, r.StartMin, r.EndMin)),
                everybody.Session.Rotation.Select(r => (r.Station, r.ExerciseId, r.StartMin, r.EndMin))
            );
        }
    }

    /// <summary>
    /// With less kit too: no piece that is missing, no piece and nobody in two places, nothing more than planned, no rest between two
    /// exercises shorter than planned and than the time of changing over, and whatever is left out says why.
    /// </summary>
    [Fact]
    public void RollCall_WithLessKit_FindsOtherPiecesOrLeavesOut_InsideEveryLimitOfTheFloor()
    {
        PlanRequest request = Squad(8);
        Plan plan = Planner.Solve(request);
        var random = new Random(58);
        int elsewhere = 0,
            missing = 0,
            late = 0;
        foreach (PlannedSession session in plan.Sessions.Where(s => s.Athletes.Length > 0))
        {
            for (int trial = 0; trial < 60; trial++)
            {
                string[] here = [.. session.Athletes.Select(a => a.AthleteId).Where(_ => random.Next(5) > 0)];
                var kit = request.Kit.ToDictionary(k => k.Id, k => random.Next(0, k.Count + 2));
                int? minutes = random.Next(3) == 0 ? random.Next(15, session.Slot.Minutes) : null;
                RolledCall rolled = RollCall.Make(session, request, here, kit, minutes);
                Assert.Empty(FloorBreaches(plan, rolled));
                foreach (RotationEntry turn in rolled.Session.Rotation)
                {
                    Assert.True(turn.EndMin <= (minutes ?? session.Slot.Minutes) + 1e-6);
                    foreach (string piece in turn.Station.Split('+').Where(p => p != "floor"))
                    {
                        int at = piece.LastIndexOf('-');
                        Assert.InRange(int.Parse(piece[(at + 1)..]), 1, kit[piece[..at]]);
                    }

                    elsewhere += session.Rotation.Any(p =>
                        p.Station == turn.Station
                        && p.ExerciseId == turn.ExerciseId
                        && p.AthleteIds.Intersect(turn.AthleteIds).Any()
                    )
                        ? 0
                        : 1;
                }

                foreach (AthleteSession one in session.Athletes.Where(a => here.Contains(a.AthleteId)))
                {
                    PlannedItem[] left =
                    [
                        .. rolled.Session.Athletes.Where(a => a.AthleteId == one.AthleteId).SelectMany(a => a.Items),
                    ];
                    string[] gone = [.. rolled.Cuts.Where(c => c.AthleteId == one.AthleteId).Select(c => c.ExerciseId)];
                    Assert.Equal(
                        one.Items.Select(i => (i.Dose.ExerciseId, i.Sets)).Where(i => !gone.Contains(i.ExerciseId)),
                        left.Select(i => (i.Dose.ExerciseId, i.Sets))
                    );
                    Assert.True(RestsAreKept(session, rolled.Session, one.AthleteId, request.Limits.ChangeOverMinutes));
                }

                missing += rolled.Cuts.Count(c =>
                    c.Because.ToString().StartsWith("There is no", StringComparison.Ordinal)
                );
                late += rolled.Cuts.Count(c =>
                    c.Because.ToString().StartsWith("It would not be over", StringComparison.Ordinal)
                );
            }
        }

        Assert.True(
            elsewhere > 20 && missing > 20 && late > 20,
            $"{elsewhere} elsewhere, {missing} missing, {late} late"
        );
    }

    private static bool RestsAreKept(PlannedSession planned, PlannedSession today, string athlete, double changeOver)
    {
        RotationEntry[] now = [.. today.Rotation.Where(r => r.AthleteIds.Contains(athlete)).OrderBy(r => r.StartMin)];
        RotationEntry[] was = [.. planned.Rotation.Where(r => r.AthleteIds.Contains(athlete)).OrderBy(r => r.StartMin)];
        for (int i = 1; i < now.Length; i++)
        {
            // The same turns as planned, by their place among the turns of that exercise.
            RotationEntry Was(RotationEntry turn) =>
                was.Where(r => r.ExerciseId == turn.ExerciseId)
                    .ElementAt(now.Where(r => r.ExerciseId == turn.ExerciseId).ToList().IndexOf(turn));
            double rest = Was(now[i]).StartMin - Was(now[i - 1]).EndMin;
            if (now[i].StartMin - now[i - 1].EndMin < Math.Min(rest, changeOver) - 1e-6)
            {
                return false;
            }
        }

        return true;
    }

    private static readonly string[] OfTheFloor =
    [
        "kit-at-once",
        "one-place-at-a-time",
        "order-in-session",
        "rotation-holds-every-item",
        "low-work-first",
        "contacts-per-session",
        "pairs-together",
    ];

    private static ImmutableArray<Breach> FloorBreaches(Plan plan, RolledCall rolled) =>
        [
            .. Limits
                .All.Where(l => OfTheFloor.Contains(l.Id))
                .SelectMany(l => l.Check(plan with { Sessions = [rolled.Session] }, rolled.Request)),
        ];
}
