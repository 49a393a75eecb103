using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Planning.Bench;

/// <summary>
/// Squads by seed at the size the planner is made for: the shipped catalogue less eight exercises, sessions on three days of
/// every week of which two lie closer than 48 h, a fixture every other Saturday, kit that is short, weekly caps on every
/// tissue, growth from week to week, and steps that open in the plan. Every athlete has 16 to 43 exercises open.
/// </summary>
internal static class BenchSquads
{
    public static readonly LocalDate Monday = new(2027, 1, 4);

    private static readonly ImmutableArray<Exercise> Seventy =
    [
        .. Catalogue.Standard.Exercises.Where(e => !e.Trains.IsEmpty).Take(70),
    ];

    /// <summary>A squad of so many athletes over so many weeks; kit grows with every thirty athletes.</summary>
    public static PlanRequest Of(int seed, int athletes = 30, int weeks = 4, double kitShare = 1)
    {
        Random random = new(seed);
        ImmutableArray<SessionSlot> slots =
        [
            .. from week in Enumerable.Range(0, weeks)
            from day in new[] { 0, 1, 3 }
            let date = Monday.PlusDays((7 * week) + day)
            let start = new LocalTime(17, 0)
            select new SessionSlot($"{date:uuuu-MM-dd}-pm", date, start, 50, date.At(start).InUtc().ToInstant()),
        ];
        int times = Math.Max(1, (int)Math.Round(athletes / 30.0));
        int Count(int n) => Math.Max(1, (int)Math.Round(n * times * kitShare));
        PlanRequest request = new(
            Monday,
            weeks,
            "UTC",
            slots,
            [
                new("plyo-box", Count(5)),
                new("drop-box", Count(3)),
                new("seat", Count(3)),
                new("bench", Count(3)),
                new("band", Count(4)),
                new("heavy-dumbbell", Count(4)),
                new("kettlebell", Count(6)),
                new("hex-bar", Count(3)),
                new("run-up-lane", Count(2)),
            ],
            [
                .. Enumerable
                    .Range(0, weeks)
                    .Where(w => w % 2 == 1)
                    .Select(w => new Fixture(Monday.PlusDays((7 * w) + 5), new LocalTime(15, 0), $"match {w}")),
            ],
            [],
            Catalogue.Standard,
            [],
            new SolveBudget()
        );
        return request with
        {
            Athletes = [.. Enumerable.Range(1, athletes).Select(n => Athlete($"a{n:000}", request, random))],
        };
    }

    private static AthleteRequest Athlete(string id, PlanRequest request, Random random)
    {
        int level = random.Next(3);
        int perSession = 100 + (20 * level);
        int open = random.Next(16, 44);
        Exercise[] mine =
        [
            .. Seventy
                .OrderBy(e => (int)e.Stage + (3 * random.NextDouble()))
                .Take(open + 8)
                .OrderBy(_ => random.Next())
                .Take(open),
        ];
        if (!mine.Any(e => OrderOfWork.IsLow(e)))
        {
            mine = [.. mine.Append(Seventy.First(e => OrderOfWork.IsLow(e)))];
        }

        Exercise[] later =
        [
            .. mine.Where(e =>
                    !OrderOfWork.IsLow(e) && !e.IsHighIntensity && e.PairsWith is null && e.ContactsPerRep > 0
                )
                .Where(e => e.Regressions.Any(r => mine.Any(m => m.Id == r)))
                .OrderBy(_ => random.Next())
                .Take(3),
        ];
        var weight = Enum.GetValues<Quality>().ToDictionary(q => q, _ => random.NextDouble());
        var first = mine.ToDictionary(e => e.Id, _ => random.Next(3, 12), StringComparer.Ordinal);
        ImmutableArray<MenuItem> menu =
        [
            .. from slot in request.Slots
            from exercise in mine
            let dose = DoseOf(exercise, level)
            select new MenuItem(
                slot.Id,
                dose,
                [.. Enumerable.Range(0, dose.SetsMax).Select(n => n == 0 ? first[exercise.Id] : Math.Max(0, 3 - n))],
                [$"made up"]
            )
            {
                After = later.Contains(exercise)
                    ? [new(exercise.Regressions.First(r => mine.Any(m => m.Id == r)), 2)]
                    : [],
            },
        ];
        var weeks = request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)).OrderBy(g => g.Key).ToList();
        int growth = 10 + (5 * level);
        return new(
            new Athlete(id, id, new LocalDate(2000, 1, 1), 75, 1.8, null, (TrainingLevel)(level + 1), null, null),
            perSession,
            perSession * 5 / 2,
            6,
            menu,
            [],
            ImmutableDictionary<LocalDate, ImmutableArray<Ruling>>.Empty,
            []
        )
        {
            ExercisesPerSessionAtLeast = 3,
            // Whatever is in their menu was done from there lately.
            Drops = TrainedDrops.None with
            {
                Clean =
                [
                    .. from item in menu.DistinctBy(m => m.ExerciseId)
                    where item.Dose.DropHeightM is not null
                    from day in new[] { 7, 3 }
                    select new TrainedDrop(item.ExerciseId, Monday.PlusDays(-day), item.Dose.DropHeightM!.Value),
                ],
            },
            HighIntensityContactsPerSessionAtMost = 20 + (10 * level),
            Goals =
            [
                .. from week in weeks
                from quality in Enum.GetValues<Quality>()
                select new QualityGoal(quality, week.Key, Slope(weight[quality]), $"made up"),
            ],
            Pairs =
            [
                .. from slot in request.Slots
                from heavy in mine.Where(e => e is { ContactsPerRep: 0, PairsWith: not null })
                let light = mine.FirstOrDefault(e => e.Id == heavy.PairsWith)
                select new ContrastPair(slot.Id, heavy.Id, light?.Id ?? heavy.PairsWith!, 240, 4),
            ],
            Caps =
            [
                .. from week in weeks
                from tissue in Enum.GetValues<Tissue>()
                select new LoadCap(
                    week == weeks[0] ? "weekly-growth" : "weekly-load",
                    [.. week.Select(s => s.Id)],
                    tissue,
                    (int)(perSession * (week == weeks[0] ? 2.2 : 3.0)),
                    $"Made up."
                ),
            ],
            Growths =
            [
                .. from n in Enumerable.Range(1, weeks.Count - 1)
                from tissue in Enum.GetValues<Tissue>()
                select new LoadGrowth(
                    tissue,
                    [.. weeks[n - 1].Select(s => s.Id)],
                    [.. weeks[n].Select(s => s.Id)],
                    growth,
                    20
                ),
            ],
        };
    }

    /// <summary>Falling returns in small steps, as the planner's own wishes fall.</summary>
    private static ImmutableArray<int> Slope(double weight)
    {
        double most = 4 + (16 * weight);
        int sets = (int)Math.Round(5 + (9 * weight));
        return [.. Enumerable.Range(0, sets).Select(n => (int)Math.Round(most * (sets - n) / sets))];
    }

    private static Dose DoseOf(Exercise exercise, int level) =>
        new()
        {
            ExerciseId = exercise.Id,
            SetsMin = exercise.Dose.SetsMin,
            SetsMax = exercise.Dose.SetsMax,
            Reps = level == 0 ? exercise.Dose.RepsMin : (exercise.Dose.RepsMin + exercise.Dose.RepsMax) / 2,
            ContactsPerRep = exercise.ContactsPerRep,
            Limb = exercise.Limb,
            Start = exercise.Start,
            Arms = exercise.Arms,
            Intent = exercise.Intent,
            DropHeightM = exercise.DropRangeM?.MinM,
            RestBetweenRepsS = exercise.Dose.RestBetweenRepsS,
            RestBetweenSetsS = exercise.Dose.RestBetweenSetsS,
            MinutesPerSet = exercise.MinutesPerSet,
            HighIntensity = exercise.IsHighIntensityAt(exercise.DropRangeM?.MinM),
            Stop = new(10, null, 2, 2, true),
            Because = [],
        };
}
