using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using static Jumpwright.Tests.Planning.Gymnasium;

namespace Jumpwright.Tests.Planning;

/// <summary>Squads so small that every plan can be tried: one or two athletes, one or two sessions, kit that is short.</summary>
internal static class TinySquads
{
    public static PlanRequest Of(int seed)
    {
        Random random = new(seed);
        int athletes = random.Next(1, 3);
        int sessions = random.Next(1, 3);
        int each = sessions == 2 ? 3 : 5;
        var slots = Slots(random.Next(20, 34), [.. new[] { 1, random.Next(2, 5) }.Take(sessions)]);
        PlanRequest request = Request(
            slots,
            [
                .. Enumerable
                    .Range(1, athletes)
                    .Select(n =>
                    {
                        var menu = slots.SelectMany(s =>
                            Catalogue
                                .Exercises.OrderBy(_ => random.Next())
                                .Take(each)
                                .Select(e =>
                                    Item(s.Id, e.Id, random.Next(3, 20), random.Next(0, 9), setsMin: 2, setsMax: 3)
                                )
                                .ToList()
                        );
                        return Athlete($"a{n:00}", [.. menu]) with
                        {
                            ContactsPerSessionAtMost = random.Next(20, 61),
                            ContactsPerWeekAtMost = random.Next(40, 100),
                            ExercisesPerSessionAtMost = random.Next(2, 6),
                            ExercisesPerSessionAtLeast = random.Next(0, 3),
                            HighIntensityContactsPerSessionAtMost = random.Next(10, 40),
                            Goals =
                            [
                                .. Enum.GetValues<Quality>()
                                    .Select(q => new QualityGoal(
                                        q,
                                        Monday,
                                        [.. Enumerable.Range(0, 5).Select(_ => random.Next(0, 12)).OrderDescending()],
                                        $"wished"
                                    )),
                            ],
                            Pairs =
                            [
                                .. slots.Select(s => new ContrastPair(s.Id, "hex-bar-pull", "hex-bar-jump", 240, 9)),
                            ],
                        };
                    }),
            ]
        );
        // Every tenth squad has a match the day after its first session, and a knee that a rule of pain holds back.
        if (seed % 10 == 4)
        {
            Ruling pain = new(
                "tendon-pain",
                new TierAtMost(Tissue.Patellar, 2),
                $"Sore.",
                Bibliography.Get("house-rule")
            );
            request = request with
            {
                Fixtures = [new Fixture(slots[0].Date.PlusDays(1), null, "the match")],
                Athletes =
                [
                    .. request.Athletes.Select(a =>
                        a with
                        {
                            RulingsByDay = slots.ToImmutableDictionary(s => s.Date, _ => ImmutableArray.Create(pain)),
                        }
                    ),
                ],
            };
        }

        return request with
        {
            Kit = [.. Kit.Select(k => k with { Count = random.Next(5) == 0 ? 0 : 1 })],
            Limits = request.Limits with
            {
                PointsEachGroup = new[] { 0, 0.2, 4 }[seed % 3],
                PointsUnevenStaff = new[] { 0.1, 0, 3 }[seed % 3],
                PointsUnevenKit = new[] { 0.01, 0.5, 0 }[seed % 3],
                KitShareAtMost = new[] { 1, 0.7, 0.4 }[random.Next(3)],
                WaitingMinutes = random.Next(0, 4),
            },
        };
    }

    /// <summary>A small squad with more locks and wishes than it can meet.</summary>
    public static PlanRequest Impossible(int seed)
    {
        Random random = new(seed);
        PlanRequest request = Of(seed);
        MenuItem[] menu = [.. request.Athletes.SelectMany(a => a.Menu)];
        return request with
        {
            Locks =
            [
                .. request
                    .Athletes.SelectMany(a => a.Menu.Select(m => (a.Athlete.Id, m)))
                    .Where(_ => random.Next(3) == 0)
                    .Select(p => new LockedItem(p.m.SessionId, p.Id, p.m.ExerciseId, random.Next(2, 4))),
            ],
            Wishes =
            [
                .. Enumerable
                    .Range(0, random.Next(0, 3))
                    .Select(_ => new Wish(
                        request.Athletes[0].Athlete.Id,
                        menu[random.Next(menu.Length)].ExerciseId,
                        SetsAtLeast: random.Next(0, 4)
                    ))
                    .DistinctBy(w => w.RequirementId),
            ],
        };
    }
}
