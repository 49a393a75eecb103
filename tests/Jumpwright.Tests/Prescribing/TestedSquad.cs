using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Prescribing;

/// <summary>A squad at random: who they are, what they did, felt and may not do.</summary>
internal static class TestedSquad
{
    internal static readonly LocalDate Today = new(2027, 1, 4);

    internal static DrawnSquad Draw(int number)
    {
        SeededRandom random = SeededRandom.For(77, (ulong)number + 1);
        ImmutableArray<KitCount> kit =
        [
            .. Catalogue
                .Standard.Exercises.SelectMany(e => e.Kit)
                .Select(k => k.Id)
                .Distinct()
                .Order(StringComparer.Ordinal)
                .Where(_ => random.Chance(0.85))
                .Select(k => new KitCount(k, 1 + random.Below(3))),
        ];
        ImmutableArray<Fixture> fixtures = random.Chance(0.25)
            ? [new Fixture(Today.PlusDays(random.Below(9) - 3), null, "match")]
            : [];
        ImmutableArray<History> athletes = [.. Enumerable.Range(1, 2).Select(i => Athlete(random, "a0" + i))];
        SeededRandom more = SeededRandom.For(78, (ulong)number + 1);
        ImmutableArray<Practice> practices =
        [
            .. Enumerable
                .Range(0, more.Chance(0.4) ? 1 + more.Below(4) : 0)
                .Select(i => new Practice((IsoDayOfWeek)(1 + i), null, 90, "volleyball")
                {
                    Jumps = more.Chance(0.5) ? more.Below(120) : null,
                }),
        ];
        ImmutableArray<PlannedContacts> planned = more.Chance(0.25)
            ?
            [
                .. Enumerable
                    .Range(0, 1 + more.Below(3))
                    .Select(_ =>
                    {
                        Exercise exercise = Catalogue.Standard.Exercises[
                            more.Below(Catalogue.Standard.Exercises.Length)
                        ];
                        return new PlannedContacts(
                            Today.PlusDays(more.Below(7) - 2),
                            more.Below(30),
                            exercise.IsHighIntensity
                        )
                        {
                            ExerciseId = exercise.Id,
                        };
                    }),
            ]
            : [];
        return new DrawnSquad(
            new Squad(
                "drawn",
                "Europe/Paris",
                [
                    .. kit,
                    .. more.Chance(0.5)
                        ? [new KitCount(more.OneOf("light-dumbbells", "weight-vest"), 1)]
                        : (KitCount[])[],
                ],
                [],
                fixtures,
                ImmutableDictionary<string, string>.Empty
            )
            {
                Practices = practices,
            },
            [.. athletes.Select(a => more.Chance(0.35) ? Grown(a, more) : a)],
            planned,
            Today
        );
    }

    /// <summary>Somebody who did little until a week ago and more since: the one for whom growth is a limit.</summary>
    private static History Grown(History history, SeededRandom random)
    {
        int since = 1 + random.Below(6);
        int earlier = random.Below(3);
        return history with
        {
            Completed =
            [
                .. history.Completed.Select(c =>
                    c with
                    {
                        Contacts =
                            Period.DaysBetween(c.Date, Today) > 6 ? Math.Min(c.Contacts, earlier) : c.Contacts * since,
                    }
                ),
            ],
        };
    }

    private static History Athlete(SeededRandom random, string id)
    {
        bool used = random.Chance(0.8);
        int busy = random.Below(5);
        var athlete = new Athlete(
            id,
            id,
            random.Chance(0.1) ? null : Today.PlusDays(-365 * (13 + random.Below(20))),
            random.Chance(0.1) ? null : random.Uniform(50, 120),
            1.75,
            null,
            random.OneOf(
                TrainingLevel.Unknown,
                TrainingLevel.Beginner,
                TrainingLevel.Intermediate,
                TrainingLevel.Advanced
            ),
            null,
            null
        );
        var history = new History(athlete, [], [], [], [], []);
        if (random.Chance(0.9))
        {
            history = history with
            {
                Symptoms =
                [
                    new SymptomReport(
                        id,
                        Today.PlusDays(-1 - random.Below(3)),
                        random.OneOf("knee", "achilles", "shin", "hip"),
                        Side.Left,
                        null,
                        null,
                        "pain",
                        random.OneOf("during", "after", "next-morning"),
                        random.Chance(0.75) ? 0 : random.Below(8),
                        null
                    ),
                ],
            };
        }

        if (random.Chance(0.3))
        {
            history = history with
            {
                Restrictions =
                [
                    new Restriction(
                        id,
                        Today.PlusDays(-5),
                        Today.PlusDays(random.Below(20) - 3),
                        null,
                        Side.Unknown,
                        [],
                        random.Chance(0.2) ? ["depth-jump"] : [],
                        random.OneOf("drops <= 0.20 m", "drops <= 0.30 m", "contacts <= 10", "contacts <= 40"),
                        "Dana Example",
                        "physiotherapist",
                        null
                    ),
                ],
            };
        }

        history = history with
        {
            Screens =
            [
                new ScreenResult(
                    id,
                    Today.PlusDays(-3),
                    "landing-screen",
                    Side.Both,
                    random.Below(5),
                    "faults",
                    1,
                    "coach",
                    null
                ),
                new ScreenResult(id, Today.PlusDays(-3), "heel-raises", Side.Left, 30, "reps", 1, "coach", null),
                new ScreenResult(id, Today.PlusDays(-3), "heel-raises", Side.Right, 30, "reps", 1, "coach", null),
            ],
            Completed =
            [
                .. Catalogue
                    .Standard.Exercises.Where(_ => used || random.Chance(0.5))
                    .SelectMany(e =>
                        new[] { 4, 8, 12 }
                            .Select(d => d - (random.Chance(0.03) ? 3 : 0))
                            .Select(d => new CompletedItem(
                                id,
                                Today.PlusDays(-d),
                                "s" + d,
                                e.Id,
                                2,
                                4,
                                random.Below(busy + 1),
                                0,
                                0,
                                0,
                                5,
                                e.DropRangeM?.MinM,
                                null
                            ))
                    ),
            ],
        };
        if (random.Chance(0.2))
        {
            history = history with
            {
                Completed = history.Completed.Add(
                    new CompletedItem(
                        id,
                        Today,
                        "today",
                        "snap-down",
                        5,
                        10,
                        20 + random.Below(110),
                        0,
                        0,
                        0,
                        5,
                        null,
                        null
                    )
                ),
            };
        }

        history = Jumped(history, JumpTask.CountermovementJump, null, (MeasureNames.JumpHeight, 0.35, Unit.Metre));
        history = Jumped(history, JumpTask.RepeatedHops, null, (MeasureNames.ContactTime, 0.17, Unit.Second));
        if (random.Chance(0.9))
        {
            foreach (double load in new[] { 0, 15 + (5.0 * random.Below(3)) })
            {
                int trials = 1 + random.Below(2);
                for (int t = 0; t < trials; t++)
                {
                    history = Jumped(
                        history,
                        JumpTask.LoadedJump,
                        null,
                        load,
                        (MeasureNames.JumpHeight, 0.36 - (0.003 * load) + random.Uniform(-0.03, 0.03), Unit.Metre)
                    );
                }
            }
        }

        if (random.Chance(0.5))
        {
            history = Typed(
                history,
                [("hex-bar-load", 60), ("hex-bar-velocity", 1.0 + random.Uniform(-0.05, 0.05))],
                [("hex-bar-load", 90), ("hex-bar-velocity", 0.70 + random.Uniform(-0.05, 0.05))],
                [("hex-bar-load", 110), ("hex-bar-velocity", 0.55 + random.Uniform(-0.05, 0.05))]
            );
        }

        if (random.Chance(0.5))
        {
            history = Typed(history, [("standing-reach", 2.20), ("best-touch", 2.60)]);
            foreach (Side side in random.Chance(0.5) ? [Side.Both] : (Side[])[Side.Both, Side.Left])
            {
                history = Typed(
                    history,
                    side,
                    [
                        .. Enumerable
                            .Range(0, 6)
                            .Select(i => 2 + (0.3 * i))
                            .Select(v =>
                                (IEnumerable<(string, double)>)
                                    [
                                        ("run-up-speed", v),
                                        ("run-up-touch", 2.65 + (0.03 * v) + random.Uniform(-0.03, 0.03)),
                                    ]
                            ),
                    ]
                );
            }
        }

        int boxes = random.Below(4);
        for (int b = 0; b < boxes; b++)
        {
            for (int t = 0; t < 3; t++)
            {
                history = Jumped(
                    history,
                    JumpTask.DropJump,
                    0.15 + (0.10 * b),
                    (MeasureNames.ReactiveStrengthIndex, random.Uniform(1.1, 1.7), Unit.MetrePerSecond),
                    (MeasureNames.ContactTime, random.Uniform(0.17, 0.24), Unit.Second)
                );
            }
        }

        // A coach may say what counts as light: half of them say so.
        return random.Chance(0.5)
            ? history with
            {
                Overrides =
                [
                    new LimitOverride(
                        "light-load",
                        null,
                        random.OneOf(0.1, 0.3, 0.35),
                        LimitOverride.Policy,
                        "written there",
                        null,
                        null
                    ),
                ],
            }
            : history;
    }

    /// <summary>Tests written by hand; each list is one trial, numbered from 1.</summary>
    internal static History Typed(History history, params IEnumerable<(string Test, double Value)>[] trials) =>
        Typed(history, Side.Both, trials);

    internal static History Typed(
        History history,
        Side side,
        params IEnumerable<(string Test, double Value)>[] trials
    ) =>
        history with
        {
            Screens = history.Screens.AddRange(
                trials.SelectMany(
                    (trial, i) =>
                        trial.Select(t => new ScreenResult(
                            history.Athlete.Id,
                            Today.PlusDays(-6),
                            t.Test,
                            side,
                            t.Value,
                            FieldTest.Find(t.Test)!.Unit,
                            i + 1,
                            "coach",
                            null
                        ))
                )
            ),
        };

    private static History Jumped(
        History history,
        JumpTask task,
        double? dropM,
        params (string Name, double Value, Unit Unit)[] measures
    ) => Jumped(history, task, dropM, null, measures);

    internal static History Jumped(
        History history,
        JumpTask task,
        double? dropM,
        double? loadKg,
        params (string Name, double Value, Unit Unit)[] measures
    ) =>
        history with
        {
            Trials = history.Trials.Add(
                new MeasuredTrial(
                    history.Athlete.Id,
                    Today.PlusDays(-6),
                    new Trial(
                        1,
                        task,
                        new TrialEvents(),
                        [
                            .. measures.Select(m => new Measure(
                                m.Name,
                                m.Value,
                                m.Unit,
                                0.01 * m.Value,
                                "impulse-momentum"
                            )),
                        ],
                        [],
                        [],
                        []
                    ),
                    new RecordingLabels(
                        history.Athlete.Id,
                        Today.PlusDays(-6),
                        task,
                        ExternalLoadKg: loadKg,
                        DropHeightM: dropM
                    ),
                    Device.TwoForcePlates,
                    $"{history.Trials.Length:000}.csv",
                    "00"
                )
            ),
        };
}
