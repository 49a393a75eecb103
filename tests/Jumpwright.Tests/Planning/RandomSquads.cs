using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

/// <summary>Squads by seed: short kit, odd rulings, fixtures, earlier work, locks.</summary>
internal static class RandomSquads
{
    private static readonly Source Test = new("house-rule", "made up for tests", SourceKind.House);

    public static PlanRequest Of(int seed, int athletesMost)
    {
        Random random = new(seed);
        int athletes = random.Next(1, athletesMost + 1);
        int[] days = [.. Enumerable.Range(0, 6).Where(_ => random.Next(2) == 0).DefaultIfEmpty(2)];
        var slots = Slots(random.Next(25, 61), days);
        PlanRequest request = Request(
            slots,
            [.. Enumerable.Range(1, athletes).Select(n => Random($"a{n:00}", slots, random))]
        );
        return request with
        {
            Kit = [.. Kit.Select(k => k with { Count = random.Next(0, k.Count + 1) })],
            Fixtures =
                random.Next(3) == 0
                    ? []
                    :
                    [
                        new Fixture(
                            Monday.PlusDays(random.Next(0, 7)),
                            random.Next(2) == 0 ? null : new LocalTime(random.Next(10, 20), 0),
                            "match"
                        ),
                    ],
            Budget = new SolveBudget { DeterministicTime = 1, GapLimit = 0.005 },
        };
    }

    private static AthleteRequest Random(string id, ImmutableArray<SessionSlot> slots, Random random)
    {
        AthleteRequest who = FullMenu(id, slots, random.Next());
        return who with
        {
            Menu = [.. who.Menu.Where(_ => random.Next(3) > 0)],
            ContactsPerSessionAtMost = random.Next(30, 121),
            ContactsPerWeekAtMost = random.Next(60, 300),
            ExercisesPerSessionAtMost = random.Next(3, 7),
            ExercisesPerSessionAtLeast = random.Next(0, 4),
            HighIntensityContactsPerSessionAtMost = random.Next(0, 61),
            Recent =
                random.Next(2) == 0
                    ? []
                    :
                    [
                        new RecentWork(
                            (Tissue)random.Next(4),
                            slots[0].StartUtc - Duration.FromHours(random.Next(1, 60)),
                            random.Next(24, 73),
                            "depth-jump"
                        ),
                    ],
            Caps =
            [
                .. from cap in Enumerable.Range(0, random.Next(3))
                let tissue = cap == 0 ? (Tissue?)null : (Tissue)random.Next(4)
                select new LoadCap(
                    cap == 0 ? "weekly-load" : "tissue-load-after-symptom",
                    [.. slots.Where(_ => random.Next(2) == 0).Append(slots[0]).Select(s => s.Id).Distinct()],
                    tissue,
                    random.Next(20, 200),
                    $"made up"
                ),
            ],
            Growths =
                slots.Length > 1 && random.Next(2) == 0
                    ? [new LoadGrowth((Tissue)random.Next(4), [slots[0].Id], [slots[^1].Id], 10, random.Next(0, 40))]
                    : [],
            RulingsByDay = slots.Select(s => s.Date).Distinct().ToImmutableDictionary(d => d, _ => Rulings(random)),
        };
    }

    private static ImmutableArray<Ruling> Rulings(Random random)
    {
        RulingEffect[] all =
        [
            new NoDepthJumps(),
            new NoHighIntensity(),
            new NoExternalLoad(),
            new NoSingleLegLandings(),
            new TierAtMost((Tissue)random.Next(4), random.Next(0, 3)),
            new DropAtMost(0.2),
            new ContactsPerSessionAtMost(random.Next(0, 60)),
            new NotExercises(["box-jump", "tuck-jump"]),
            new OnlyExercises(["snap-down", "pogo-hop", "box-jump", "band-jump"]),
            new NothingPlanned($"a clinician"),
            new NoJumps(),
        ];
        return
        [
            .. Enumerable
                .Range(0, random.Next(0, 3))
                .Select(_ => all[random.Next(all.Length)])
                .Select(e => new Ruling(e.GetType().Name, e, $"made up", Test)),
        ];
    }
}
