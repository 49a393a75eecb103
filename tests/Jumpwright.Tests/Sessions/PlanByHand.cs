using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Tests.Sessions;

/// <summary>One session of one athlete, put together by hand from the catalogue that ships; nothing is planned or judged.</summary>
internal static class PlanByHand
{
    public static readonly LocalDate Day = new(2027, 1, 5);

    public static readonly SessionSlot Slot = new(
        "2027-01-05-pm",
        Day,
        new LocalTime(17, 0),
        45,
        Instant.FromUtc(2027, 1, 5, 16, 0)
    );

    public static readonly Athlete Somebody = new(
        "a01",
        "Ada Lindqvist",
        new LocalDate(2000, 1, 1),
        70,
        1.8,
        "volleyball",
        TrainingLevel.Intermediate,
        null,
        null
    );

    /// <summary>An exercise at its usual most: most reps and sets, highest drop and box.</summary>
    public static PlannedItem Item(string exerciseId, params Sentence[] because)
    {
        Exercise e =
            Catalogue.Standard.Find(exerciseId) ?? throw new InvalidOperationException($"'{exerciseId}' is unknown.");
        return new PlannedItem(
            new Dose
            {
                ExerciseId = e.Id,
                SetsMin = e.Dose.SetsMin,
                SetsMax = e.Dose.SetsMax,
                Reps = e.Dose.RepsMax,
                ContactsPerRep = e.ContactsPerRep,
                Limb = e.Limb,
                Start = e.Start,
                Arms = e.Arms,
                Intent = e.Intent,
                DropHeightM = e.DropRangeM?.MaxM,
                ExpectedDropHeightM = 0.9 * e.DropRangeM?.MaxM,
                BoxHeightM = e.BoxRangeM?.MaxM,
                ExternalLoadKg = e.Load is null ? null : 20,
                LoadBasis = e.Load is null ? null : Sentence.Of($"about 28 % of body mass"),
                RunUpSteps = e.RunUpSteps?.Max,
                RestBetweenRepsS = e.Dose.RestBetweenRepsS,
                RestBetweenSetsS = e.Dose.RestBetweenSetsS,
                MinutesPerSet = e.MinutesPerSet,
                HighIntensity = e.IsHighIntensity,
                Stop = new StopRule(10, 10, 2, 2, true),
                Instead = e.Regressions.FirstOrDefault() is { } easier
                    ? Item(easier).Dose with
                    {
                        Instead = null,
                    }
                    : null,
                Because = [$"by hand"],
            },
            e.Dose.SetsMax,
            null,
            null,
            null,
            [.. because]
        );
    }

    public static Plan Plan(params PlannedItem[] items) =>
        new(
            PlanStatus.Optimal,
            10,
            10,
            0,
            0,
            0.1,
            [
                new PlannedSession(
                    Slot,
                    items.Length == 0 ? [] : [new AthleteSession(Somebody.Id, [.. items])],
                    [
                        .. items.Select(
                            (i, n) => new RotationEntry("floor", i.Dose.ExerciseId, 10 * n, 10 * (n + 1), [Somebody.Id])
                        ),
                    ]
                ),
            ],
            [],
            [],
            [],
            []
        );

    public static PlanRequest Request(Athlete? athlete = null, params Ruling[] rulings) =>
        new(
            new LocalDate(2027, 1, 4),
            1,
            "Europe/Paris",
            [Slot],
            [],
            [],
            [
                new AthleteRequest(
                    athlete ?? Somebody,
                    120,
                    300,
                    6,
                    [],
                    [],
                    ImmutableDictionary<LocalDate, ImmutableArray<Ruling>>.Empty.Add(Day, [.. rulings]),
                    []
                ),
            ],
            Catalogue.Standard,
            [],
            new SolveBudget()
        );

    public static SessionCard Card(Plan plan, Athlete? athlete = null, params Ruling[] rulings) =>
        Assert.Single(Cards.Of(plan, Request(athlete, rulings), Squad, [Of(athlete ?? Somebody)]));

    public static CoachSheet Sheet(Plan plan, params Ruling[] rulings) =>
        Assert.Single(Cards.SheetsOf(plan, Request(null, rulings), Squad, [Of(Somebody)], []));

    /// <summary>The sheet as it stands with cards that something closed since.</summary>
    public static CoachSheet Sheet(Plan plan, ImmutableArray<SessionCard> cards) =>
        Assert.Single(Cards.SheetsOf(plan, Request(), Squad, [Of(Somebody)], cards));

    private static Squad Squad { get; } =
        new("Harbour club", "Europe/Paris", [], [], [], ImmutableDictionary<string, string>.Empty);

    private static History Of(Athlete athlete) => new(athlete, [], [], [], [], []);
}
