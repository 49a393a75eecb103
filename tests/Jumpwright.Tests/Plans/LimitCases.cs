using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Plans;

/// <summary>For every limit a plan that just keeps it and one that just breaks it, written out by hand.</summary>
internal static class LimitCases
{
    /// <summary>One limit's two plans.</summary>
    /// <param name="LimitId">Which limit.</param>
    /// <param name="Kept">Just keeps it.</param>
    /// <param name="Broken">Just breaks it.</param>
    /// <param name="Amount">By how much, in the limit's unit.</param>
    public sealed record Case(
        string LimitId,
        (Plan Plan, PlanRequest Request) Kept,
        (Plan Plan, PlanRequest Request) Broken,
        double Amount
    );

    private static readonly ImmutableArray<SessionSlot> Two = Slots(45, 1, 3);
    internal static readonly string First = Two[0].Id;
    private static readonly string Second = Two[1].Id;
    private static readonly Source Test = new("house-rule", "made up", SourceKind.House);

    private static LoadCap Cap(string id, Tissue? tissue, int most) => new(id, [First], tissue, most, $"Made up.");

    private static AthleteRequest After(AthleteRequest who, string exercise, string first, int times) =>
        who with
        {
            Menu = [.. who.Menu.Select(m => m.ExerciseId == exercise ? m with { After = [new(first, times)] } : m)],
        };

    /// <summary>What is done: session, exercise, sets, and from which minute it is shown (−1: not on the time line).</summary>
    internal readonly record struct Line(string Session, string Exercise, int Sets, double At, string Who = "a01");

    public static ImmutableArray<Case> All { get; } =
    [
        new(
            "contacts-per-session",
            Planned(a => a with { ContactsPerSessionAtMost = 20 }, new Line(First, "snap-down", 4, 6)),
            Planned(a => a with { ContactsPerSessionAtMost = 19 }, new Line(First, "snap-down", 4, 6)),
            1
        ),
        new(
            "contacts-per-week",
            Planned(
                a => a with { ContactsPerWeekAtMost = 40 },
                new(First, "snap-down", 4, 6),
                new(Second, "snap-down", 4, 6)
            ),
            Planned(
                a => a with { ContactsPerWeekAtMost = 37 },
                new(First, "snap-down", 4, 6),
                new(Second, "snap-down", 4, 6)
            ),
            3
        ),
        new(
            "high-intensity-contacts",
            Planned(
                a => a with { HighIntensityContactsPerSessionAtMost = 20 },
                new(First, "snap-down", 2, 6),
                new(First, "depth-jump", 2, 9)
            ),
            Planned(
                a => a with { HighIntensityContactsPerSessionAtMost = 20 },
                new(First, "snap-down", 2, 6),
                new(First, "depth-jump", 3, 9)
            ),
            10
        ),
        new(
            "weekly-load",
            Planned(a => a with { Caps = [Cap("weekly-load", null, 20)] }, new Line(First, "snap-down", 4, 6)),
            Planned(a => a with { Caps = [Cap("weekly-load", null, 18)] }, new Line(First, "snap-down", 4, 6)),
            2
        ),
        new(
            "taper-before-fixture",
            Planned(a => a with { Caps = [Cap("taper-before-fixture", null, 20)] }, new Line(First, "snap-down", 4, 6)),
            Planned(a => a with { Caps = [Cap("taper-before-fixture", null, 19)] }, new Line(First, "snap-down", 4, 6)),
            1
        ),
        // A tuck jump asks tier 2 of the knee: 10 contacts are 20.
        new(
            "weekly-growth",
            Planned(
                a => a with { Caps = [Cap("weekly-growth", Tissue.Patellar, 20)] },
                new Line(First, "tuck-jump", 2, 6)
            ),
            Planned(
                a => a with { Caps = [Cap("weekly-growth", Tissue.Patellar, 19)] },
                new Line(First, "tuck-jump", 2, 6)
            ),
            1
        ),
        new(
            "tissue-load-after-symptom",
            Planned(
                a => a with { Caps = [Cap("tissue-load-after-symptom", Tissue.Patellar, 20)] },
                new Line(First, "tuck-jump", 2, 6)
            ),
            Planned(
                a => a with { Caps = [Cap("tissue-load-after-symptom", Tissue.Patellar, 20)] },
                new Line(First, "tuck-jump", 3, 6)
            ),
            10
        ),
        // 20 in the first, 22 allowed in the second by 10 %, and 8 in any case: 30 are kept, 40 are 10 too many.
        new(
            "weekly-growth-in-plan",
            Planned(
                a => a with { Growths = [new(Tissue.Patellar, [First], [Second], 10, 8)] },
                new(First, "tuck-jump", 2, 6),
                new(Second, "tuck-jump", 3, 6)
            ),
            Planned(
                a => a with { Growths = [new(Tissue.Patellar, [First], [Second], 10, 8)] },
                new(First, "tuck-jump", 2, 6),
                new(Second, "tuck-jump", 4, 6)
            ),
            10
        ),
        new(
            "opens-in-order",
            Planned(
                a => After(a, "box-jump", "snap-down", 1),
                new(First, "snap-down", 2, 6),
                new(Second, "box-jump", 2, 6)
            ),
            Planned(
                a => After(a, "box-jump", "snap-down", 2),
                new(First, "snap-down", 2, 6),
                new(Second, "box-jump", 2, 6)
            ),
            1
        ),
        // From 30 cm: a step of 10 cm above the 20 cm of two clean days. One day shows no height, and 10 cm are where everybody begins.
        new(
            "drop-height-rise",
            Planned(a => a with { Drops = Dropping(0.2, 0.2) }, new Line(First, "depth-jump", 2, 6)),
            Planned(a => a with { Drops = Dropping(0.3) }, new Line(First, "depth-jump", 2, 6)),
            0.2
        ),
        // Tuesday 17:45 to Thursday 17:00 is 47.25 h: enough for 24 h, too little for 48 h.
        new(
            "recovery-hours",
            Planned(null, new(First, "tuck-jump", 2, 6), new(Second, "depth-jump", 2, 6)),
            Planned(null, new(First, "depth-jump", 2, 6), new(Second, "tuck-jump", 2, 6)),
            0.75
        ),
        new(
            "recovery-from-recent-work",
            Planned(a => a with { Recent = [Recent(24)] }, new Line(First, "tuck-jump", 2, 6)),
            Planned(a => a with { Recent = [Recent(26)] }, new Line(First, "tuck-jump", 2, 6)),
            2
        ),
        new(
            "rulings-of-the-day",
            Planned(
                a => a with { RulingsByDay = Ruling(new TierAtMost(Tissue.Patellar, 2)) },
                new Line(First, "tuck-jump", 2, 6)
            ),
            Planned(
                a => a with { RulingsByDay = Ruling(new TierAtMost(Tissue.Patellar, 1)) },
                new Line(First, "tuck-jump", 2, 6)
            ),
            2
        ),
        new(
            "on-the-menu",
            Planned(null, new Line(First, "snap-down", 4, 6)),
            Planned(null, new Line(First, "snap-down", 5, 6)),
            5
        ),
        new(
            "high-intensity-round-fixtures",
            Near(2, new LocalTime(20, 0), new(First, "snap-down", 2, 6)),
            Near(1, null, new(First, "depth-jump", 2, 6)),
            20
        ),
        new(
            "top-tier-round-fixtures",
            // 17:45 on Tuesday to 17:45 on Thursday is 48 h; from 17:15 it is half an hour too near.
            Near(2, new LocalTime(17, 45), new(First, "depth-jump", 2, 6)),
            Near(2, new LocalTime(17, 15), new(First, "depth-jump", 2, 6)),
            0.5
        ),
        new(
            "recovery-before-fixture",
            // Tuck jumps ask for 24 h: 17:45 on Tuesday to 17:45 on Wednesday.
            Near(1, new LocalTime(17, 45), new(First, "tuck-jump", 2, 6)),
            Near(1, new LocalTime(17, 15), new(First, "tuck-jump", 2, 6)),
            0.5
        ),
        // Snap-downs ask the lowest tier of the Achilles tendon and land on the floor; box jumps land on the box.
        new(
            "sore-landings-before-fixture",
            SoreNear(2, new(First, "snap-down", 2, 6)),
            SoreNear(1, new(First, "snap-down", 2, 6)),
            10
        ),
        // 45 − 5 − 4 min leave 36: snap-downs 4 + 1, pogo hops 3 + 1, depth jumps 12 + 1, tuck jumps 8 + 1, bands 4 + 1.
        new(
            "session-minutes",
            Planned(
                null,
                new(First, "snap-down", 4, 6),
                new(First, "pogo-hop", 3, 11),
                new(First, "depth-jump", 4, 15),
                new(First, "tuck-jump", 4, 28),
                new(First, "band-jump", 2, 37)
            ),
            Planned(
                null,
                new(First, "snap-down", 4, 6),
                new(First, "pogo-hop", 4, 11),
                new(First, "depth-jump", 4, 16),
                new(First, "tuck-jump", 4, 29),
                new(First, "band-jump", 2, 38)
            ),
            1
        ),
        new(
            "exercises-per-session-at-most",
            Planned(
                a => a with { ExercisesPerSessionAtMost = 2 },
                new(First, "snap-down", 2, 6),
                new(First, "box-jump", 2, 9)
            ),
            Planned(
                a => a with { ExercisesPerSessionAtMost = 1 },
                new(First, "snap-down", 2, 6),
                new(First, "box-jump", 2, 9)
            ),
            1
        ),
        new(
            "variants-per-session",
            Planned(
                a => a with { VariantsPerSessionAtMost = 2 },
                new(First, "snap-down", 2, 6),
                new(First, "box-jump", 2, 9),
                new(First, "seat-jump", 2, 13)
            ),
            Planned(null, new(First, "snap-down", 2, 6), new(First, "box-jump", 2, 9), new(First, "seat-jump", 2, 13)),
            1
        ),
        new(
            "exercises-per-session-at-least",
            Planned(
                a => a with { ExercisesPerSessionAtLeast = 2 },
                new(First, "snap-down", 2, 6),
                new(First, "box-jump", 2, 9)
            ),
            Planned(
                a => a with { ExercisesPerSessionAtLeast = 3 },
                new(First, "snap-down", 2, 6),
                new(First, "box-jump", 2, 9)
            ),
            1
        ),
        new(
            "low-work-first",
            Planned(null, new(First, "snap-down", 2, 6), new(First, "box-jump", 2, 9)),
            Planned(null, new Line(First, "box-jump", 2, 6)),
            1
        ),
        // What must be done fresh begins within two thirds of 40 min after minute 5: by 31.67 min.
        new(
            "order-in-session",
            Planned(null, new(First, "snap-down", 2, 6), new(First, "depth-jump", 2, 31.5)),
            Planned(null, new(First, "snap-down", 2, 6), new(First, "depth-jump", 2, 32)),
            32 - (5 + (40 * 2.0 / 3))
        ),
        new("pairs-together", Paired(3, 3), Paired(3, 2), 1),
        // 70 % of 40 min of one drop box are 28 min: three of 9 min are 27, and 9 + 9 + 12 = 30.
        new(
            "kit-minutes",
            Planned(
                null,
                new(First, "depth-jump", 3, 6),
                new(First, "depth-jump", 3, 16, "a02"),
                new(First, "depth-jump", 3, 26, "a03")
            ),
            Planned(
                null,
                new(First, "depth-jump", 3, 6),
                new(First, "depth-jump", 3, 16, "a02"),
                new(First, "depth-jump", 4, 26, "a03")
            ),
            2
        ),
        // Half of 40 min of one drop box are 20 min: 9 + 9 are 18, 9 + 12 are 21.
        new(
            "fresh-kit-minutes",
            Planned(null, new(First, "depth-jump", 3, 6), new(First, "depth-jump", 3, 16, "a02")),
            Planned(null, new(First, "depth-jump", 3, 6), new(First, "depth-jump", 4, 16, "a02")),
            1
        ),
        new(
            "kit-at-once",
            Planned(null, new(First, "depth-jump", 2, 6), new(First, "depth-jump", 2, 12, "a02")),
            Planned(null, new(First, "depth-jump", 2, 6), new(First, "depth-jump", 2, 11.9, "a02")),
            1
        ),
        new(
            "one-place-at-a-time",
            Planned(null, new(First, "snap-down", 2, 6), new(First, "box-jump", 2, 9)),
            Planned(null, new(First, "snap-down", 2, 6), new(First, "box-jump", 2, 8.5)),
            0.5
        ),
        new(
            "rotation-holds-every-item",
            Planned(null, new Line(First, "snap-down", 2, 43)),
            Planned(null, new Line(First, "snap-down", 2, 43.5)),
            0.5
        ),
        new("locks-kept", Locked(2), Locked(3), 1),
        new("wishes-kept", Wished(1), Wished(2), 1),
        new("stated-objective", Stated(0), Stated(1), 1),
    ];

    private static TrainedDrops Dropping(params double[] heightsM) =>
        new([.. heightsM.Select((h, n) => Dropped(7 - n, h))], Sessions: 2);

    private static RecentWork Recent(int hours) =>
        new(Tissue.Achilles, Two[0].StartUtc - Duration.FromHours(24), hours, "depth-jump");

    private static ImmutableDictionary<LocalDate, ImmutableArray<Ruling>> Ruling(RulingEffect effect) =>
        ImmutableDictionary<LocalDate, ImmutableArray<Ruling>>.Empty.Add(
            Two[0].Date,
            [new Ruling("made-up", effect, $"Made up.", Test)]
        );

    private static (Plan, PlanRequest) Near(int daysAfter, LocalTime? start, Line line)
    {
        (Plan plan, PlanRequest request) = Planned(null, line);
        return (plan, request with { Fixtures = [new Fixture(Two[0].Date.PlusDays(daysAfter), start, "the match")] });
    }

    private static (Plan, PlanRequest) SoreNear(int daysAfter, Line line)
    {
        (Plan plan, PlanRequest request) = Planned(
            a => a with { RulingsByDay = Ruling(new TierAtMost(Tissue.Achilles, 1)) },
            line
        );
        return (plan, request with { Fixtures = [new Fixture(Two[0].Date.PlusDays(daysAfter), null, "the match")] });
    }

    private static (Plan, PlanRequest) Paired(int heavy, int light)
    {
        (Plan plan, PlanRequest request) = Planned(
            a => a with { Pairs = [new ContrastPair(First, "hex-bar-pull", "hex-bar-jump", 240, 0)] },
            new(First, "snap-down", 2, 6),
            new(First, "hex-bar-pull", heavy, 9),
            new(First, "hex-bar-jump", light, 20)
        );
        return (
            plan with
            {
                Sessions =
                [
                    .. plan.Sessions.Select(s =>
                        s with
                        {
                            Athletes =
                            [
                                .. s.Athletes.Select(a =>
                                    a with
                                    {
                                        Items =
                                        [
                                            .. a.Items.Select(i =>
                                                i.Dose.ExerciseId.StartsWith("hex", StringComparison.Ordinal)
                                                    ? i with
                                                    {
                                                        Pair = "hex-bar-pull+hex-bar-jump",
                                                        PairRole =
                                                            i.Dose.ExerciseId == "hex-bar-pull" ? "heavy" : "light",
                                                        RestInPairS = 240,
                                                    }
                                                    : i
                                            ),
                                        ],
                                    }
                                ),
                            ],
                        }
                    ),
                ],
            },
            request
        );
    }

    private static (Plan, PlanRequest) Locked(int sets)
    {
        (Plan plan, PlanRequest request) = Planned(null, new Line(First, "snap-down", 2, 6));
        return (plan, request with { Locks = [new LockedItem(First, "a01", "snap-down", sets)] });
    }

    private static (Plan, PlanRequest) Wished(int times)
    {
        (Plan plan, PlanRequest request) = Planned(null, new Line(First, "snap-down", 2, 6));
        return (plan, request with { Wishes = [new Wish("a01", "snap-down", TimesAtLeast: times)] });
    }

    private static (Plan, PlanRequest) Stated(int off)
    {
        (Plan plan, PlanRequest request) = Planned(null, new Line(First, "snap-down", 2, 6));
        return (plan with { Objective = plan.Objective + off }, request);
    }

    /// <summary>A plan by hand: one drop box and one bar, the whole catalogue open at 1 to 4 sets.</summary>
    internal static (Plan Plan, PlanRequest Request) Planned(
        Func<AthleteRequest, AthleteRequest>? change,
        params Line[] lines
    )
    {
        AthleteRequest[] squad =
        [
            .. new[] { "a01", "a02", "a03" }.Select(id =>
            {
                AthleteRequest open = Athlete(
                    id,
                    [
                        .. from slot in Two
                        from exercise in Catalogue.Exercises
                        where id == "a01" || exercise.Id == "depth-jump"
                        select Item(slot.Id, exercise.Id, 2, 1, setsMin: 1),
                    ]
                );
                return change is null ? open : change(open);
            }),
        ];
        PlanRequest request = Request(Two, squad) with { Kit = [.. Kit.Select(k => k with { Count = 1 })] };
        ImmutableArray<PlannedSession> sessions =
        [
            .. Two.Select(slot => new PlannedSession(
                slot,
                [
                    .. lines
                        .Where(l => l.Session == slot.Id)
                        .GroupBy(l => l.Who)
                        .Select(g => new AthleteSession(
                            g.Key,
                            [
                                .. g.Select(l => new PlannedItem(
                                    squad
                                        .SelectMany(a => a.Menu)
                                        .First(m => m.SessionId == slot.Id && m.ExerciseId == l.Exercise)
                                        .Dose,
                                    l.Sets,
                                    null,
                                    null,
                                    null,
                                    []
                                )),
                            ]
                        )),
                ],
                [
                    .. lines
                        .Where(l => l.Session == slot.Id)
                        .Select(l => new RotationEntry(
                            "station",
                            l.Exercise,
                            l.At,
                            l.At + (l.Sets * Catalogue.Find(l.Exercise)!.MinutesPerSet),
                            [l.Who]
                        )),
                ]
            )),
        ];
        double points = PlanPoints.Of(sessions, request);
        return (new Plan(PlanStatus.Optimal, points, points, 0, 0, 0, sessions, [], [], [], []), request);
    }
}
