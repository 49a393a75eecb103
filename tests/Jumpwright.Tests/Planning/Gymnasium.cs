using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Tests.Planning;

/// <summary>A small gym of our own for tests: a dozen exercises, three sessions a week, athletes made as needed.</summary>
internal static class Gymnasium
{
    public static readonly LocalDate Monday = new(2027, 1, 4);

    public static Catalogue Catalogue { get; } =
        new(
            [
                Exercise("snap-down", Stage.Landing, Quality.Landing, contacts: 1, minutes: 1),
                Exercise(
                    "pogo-hop",
                    Stage.AnkleStiffness,
                    Quality.AnkleStiffness,
                    contacts: 1,
                    minutes: 1,
                    achilles: 2
                ),
                Exercise("box-jump", Stage.PushToBox, Quality.Push, contacts: 1, minutes: 1.5, kit: "plyo-box"),
                Exercise(
                    "seat-jump",
                    Stage.PushToBox,
                    Quality.Push,
                    contacts: 1,
                    minutes: 1.5,
                    kit: "seat",
                    patellar: 2
                ),
                Exercise(
                    "tuck-jump",
                    Stage.FloorJump,
                    Quality.StretchShortening,
                    contacts: 1,
                    minutes: 2,
                    achilles: 2,
                    patellar: 2,
                    hours: 24
                ),
                Exercise(
                    "continuous-tuck-jump",
                    Stage.FloorJump,
                    Quality.StretchShortening,
                    contacts: 1,
                    minutes: 2,
                    achilles: 2,
                    patellar: 3,
                    hours: 48
                ),
                Exercise(
                    "band-jump",
                    Stage.Resisted,
                    Quality.Push,
                    contacts: 1,
                    minutes: 2,
                    kit: "band",
                    patellar: 2,
                    hours: 24
                ),
                Exercise(
                    "hex-bar-jump",
                    Stage.Resisted,
                    Quality.Push,
                    contacts: 1,
                    minutes: 2.5,
                    kit: "hex-bar",
                    patellar: 2,
                    hours: 24
                ),
                Exercise("hex-bar-pull", Stage.Resisted, Quality.Push, contacts: 0, minutes: 3, kit: "hex-bar", hip: 2),
                Exercise(
                    "depth-jump",
                    Stage.Shock,
                    Quality.ReactiveStrength,
                    contacts: 2,
                    minutes: 3,
                    kit: "drop-box",
                    achilles: 3,
                    patellar: 3,
                    hours: 48
                ),
                Exercise(
                    "split-squat-jump",
                    Stage.ContinuousSingleLeg,
                    Quality.SingleLeg,
                    contacts: 1,
                    minutes: 2.5,
                    kit: "bench",
                    limb: "each",
                    patellar: 3,
                    hours: 48
                ),
                Exercise(
                    "run-up-jump",
                    Stage.RunUp,
                    Quality.RunUp,
                    contacts: 1,
                    minutes: 2,
                    kit: "run-up-lane",
                    achilles: 2,
                    hours: 24
                ),
            ],
            ImmutableDictionary<string, Source>.Empty
        );

    public static ImmutableArray<KitCount> Kit { get; } =
    [
        new("plyo-box", 3),
        new("seat", 2),
        new("band", 2),
        new("hex-bar", 2),
        new("drop-box", 2),
        new("bench", 2),
        new("run-up-lane", 1),
    ];

    /// <summary>Sessions at 17:00 (UTC) on those days after Monday.</summary>
    public static ImmutableArray<SessionSlot> Slots(int minutes, params int[] daysAfterMonday) =>
        [
            .. daysAfterMonday.Select(d =>
            {
                LocalDate day = Monday.PlusDays(d);
                LocalTime start = new(17, 0);
                return new SessionSlot($"{day:uuuu-MM-dd}-pm", day, start, minutes, day.At(start).InUtc().ToInstant());
            }),
        ];

    public static Exercise Exercise(
        string id,
        Stage stage,
        Quality trains,
        int contacts,
        double minutes,
        string? kit = null,
        string limb = "both",
        int achilles = 1,
        int patellar = 1,
        int hip = 1,
        int bone = 1,
        int hours = 0
    ) =>
        new()
        {
            Id = id,
            Name = id,
            Stage = stage,
            Family =
                id.EndsWith("tuck-jump", StringComparison.Ordinal) ? "tuck-jump"
                : id is "box-jump" or "seat-jump" ? "box-jump"
                : null,
            Limb = limb,
            Start = "floor",
            Arms = "free",
            Landing =
                contacts == 0 ? "none"
                : id is "box-jump" or "seat-jump" ? "box"
                : "floor",
            Intent = "maximal",
            ContactsPerRep = contacts,
            Kit = kit is null ? [] : [new KitNeed(kit, 1)],
            MinutesPerSet = minutes,
            Demand = new Dictionary<Tissue, int>
            {
                [Tissue.Achilles] = achilles,
                [Tissue.Patellar] = patellar,
                [Tissue.Hip] = hip,
                [Tissue.Bone] = bone,
            }.ToImmutableDictionary(),
            DemandBasis = "made up for tests",
            RecoveryHours = new Dictionary<Tissue, int>
            {
                [Tissue.Achilles] = achilles >= 2 ? hours : 0,
                [Tissue.Patellar] = patellar >= 2 ? hours : 0,
                [Tissue.Hip] = hip >= 2 ? hours : 0,
                [Tissue.Bone] = bone >= 2 ? hours : 0,
            }.ToImmutableDictionary(),
            Trains = [trains],
            Purpose = id,
            SetUp = "",
            Cues = [],
            Faults = [],
            Progress = "",
            Dose = new(2, 4, 5, 5, 0, 60, "house-rule"),
            StopRule = "",
            Cautions = [],
            Entry = [],
            Regressions = [],
            Progressions = [],
            PairsWith = id == "hex-bar-pull" ? "hex-bar-jump" : null,
            SingleLegLanding = limb == "each",
            IsDepthJump = id == "depth-jump",
            ExternalLoad = kit switch
            {
                "hex-bar" => "bar",
                "band" => "band",
                _ => null,
            },
            DropRangeM = id == "depth-jump" ? new HeightRange(0.2, 0.6) : null,
            Sources = [],
        };

    public static Dose Dose(string id, int setsMin = 2, int setsMax = 4, int reps = 5)
    {
        Exercise exercise = Catalogue.Find(id)!;
        double? drop = exercise.IsDepthJump ? 0.3 : null;
        return new()
        {
            ExerciseId = id,
            SetsMin = setsMin,
            SetsMax = setsMax,
            Reps = reps,
            ContactsPerRep = exercise.ContactsPerRep,
            Limb = exercise.Limb,
            Start = exercise.Start,
            Arms = exercise.Arms,
            Intent = exercise.Intent,
            DropHeightM = drop,
            RestBetweenRepsS = 0,
            RestBetweenSetsS = 60,
            MinutesPerSet = exercise.MinutesPerSet,
            HighIntensity = exercise.IsHighIntensityAt(drop),
            Stop = new(10, 10, 2, 2, true),
            Because = [],
        };
    }

    public static MenuItem Item(
        string sessionId,
        string exerciseId,
        int first,
        int further,
        int setsMin = 2,
        int setsMax = 4,
        int reps = 5
    ) =>
        new(
            sessionId,
            Dose(exerciseId, setsMin, setsMax, reps),
            [.. Enumerable.Range(0, setsMax).Select(n => n == 0 ? first : Math.Min(first, further))],
            [$"{exerciseId} is wished"]
        );

    public static AthleteRequest Athlete(string id, params MenuItem[] menu) =>
        new(
            new Athlete(
                id,
                id.ToUpperInvariant(),
                new LocalDate(2000, 1, 1),
                75,
                1.8,
                null,
                TrainingLevel.Intermediate,
                null,
                null
            ),
            ContactsPerSessionAtMost: 100,
            ContactsPerWeekAtMost: 250,
            ExercisesPerSessionAtMost: 6,
            [.. menu],
            [],
            ImmutableDictionary<LocalDate, ImmutableArray<Ruling>>.Empty,
            []
        )
        {
            Drops = new([Dropped(7, 0.3), Dropped(3, 0.3)], Sessions: 2),
        };

    /// <summary>A clean session of depth jumps from that box, so many days before Monday.</summary>
    public static TrainedDrop Dropped(int daysBefore, double heightM, string exerciseId = "depth-jump") =>
        new(exerciseId, Monday.PlusDays(-daysBefore), heightM);

    public static PlanRequest Request(ImmutableArray<SessionSlot> slots, params AthleteRequest[] athletes) =>
        new(Monday, 1, "UTC", slots, Kit, [], [.. athletes], Catalogue, [], new SolveBudget { GapLimit = 0 })
        {
            Limits = new SquadLimits { OpeningMinutes = 5, ChangeOverMinutes = 1 },
        };

    /// <summary>Every exercise of the test catalogue in every session, with points that differ by athlete.</summary>
    public static AthleteRequest FullMenu(string id, ImmutableArray<SessionSlot> slots, int seed)
    {
        Random random = new(seed);
        var points = Catalogue.Exercises.ToDictionary(e => e.Id, _ => random.Next(4, 30), StringComparer.Ordinal);
        AthleteRequest who = Athlete(
            id,
            [
                .. from slot in slots
                from exercise in Catalogue.Exercises
                select Item(slot.Id, exercise.Id, points[exercise.Id], points[exercise.Id] / 3),
            ]
        );
        return who with
        {
            ExercisesPerSessionAtLeast = 3,
            Goals =
            [
                .. Enum.GetValues<Quality>()
                    .Select(q => new QualityGoal(
                        q,
                        Monday,
                        [.. Enumerable.Range(0, 8).Select(n => random.Next(20, 60) / (n + 1)).OrderDescending()],
                        $"wished"
                    )),
            ],
            Pairs = [.. slots.Select(s => new ContrastPair(s.Id, "hex-bar-pull", "hex-bar-jump", 240, 5))],
        };
    }
}
