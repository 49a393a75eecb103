using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>What was wished and the plan does not hold, and which limit stood in the way: asked of the limits themselves.</summary>
internal static class LeftOut
{
    private const int ForEachAthlete = 2;

    /// <summary>Limits about the time line: a plan without one can't be asked about them.</summary>
    private static readonly HashSet<string> OfTheTimeline = new(StringComparer.Ordinal)
    {
        "rotation-holds-every-item",
        "kit-at-once",
        "one-place-at-a-time",
        "order-in-session",
        "stated-objective",
        "pairs-together",
        "low-work-first",
        // Kit is shared with the others: it is asked by itself.
        "kit-minutes",
        "fresh-kit-minutes",
        "locks-kept",
        "wishes-kept",
    };

    /// <summary>What never came on the menu first, then the best that was on it and is nowhere in the plan.</summary>
    public static ImmutableArray<Unmet> Of(Plan plan, PlanRequest request)
    {
        KitLeft kit = new(plan, request);
        AthleteRequest[] athletes = [.. request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal)];
        var unmet = new ImmutableArray<Unmet>[athletes.Length];
        // Each answer depends on its athlete and the finished plan alone.
        Parallel.For(0, athletes.Length, i => unmet[i] = OfOne(athletes[i], plan, request, kit));
        return [.. unmet.SelectMany(u => u)];
    }

    private static ImmutableArray<Unmet> OfOne(AthleteRequest who, Plan plan, PlanRequest request, KitLeft kit)
    {
        Plan own = OnlyOf(plan, who.Athlete.Id);
        PlanRequest one = request with { Athletes = [who], Locks = [], Wishes = [] };
        HashSet<Sentence> before = [.. Breaches(own, one).Select(b => b.Sentence)];
        var planned = plan
            .Sessions.SelectMany(s => s.Athletes)
            .Where(a => a.AthleteId == who.Athlete.Id)
            .SelectMany(a => a.Items.Select(i => i.Dose.ExerciseId))
            .ToHashSet(StringComparer.Ordinal);
        return
        [
            .. who.Unmet,
            .. who
                .Menu.Where(m => !planned.Contains(m.ExerciseId))
                .GroupBy(m => m.ExerciseId, StringComparer.Ordinal)
                .OrderByDescending(g => g.Max(m => Worth(m, who, request)))
                .ThenBy(g => g.Key, StringComparer.Ordinal)
                .Take(ForEachAthlete)
                .Select(g => new Unmet(who.Athlete.Id, g.Key, Why(own, one, who, [.. g], before, kit))),
        ];
    }

    private static int Worth(MenuItem menu, AthleteRequest who, PlanRequest request)
    {
        int sets = menu.Dose.SetsMin;
        return menu.PointsOf(sets)
            + who.Goals.Where(g => request.Trains(menu.ExerciseId) == g.Quality)
                .Select(g => g.PointsOf(sets))
                .DefaultIfEmpty(0)
                .Max();
    }

    private static ImmutableArray<Sentence> Why(
        Plan own,
        PlanRequest one,
        AthleteRequest who,
        ImmutableArray<MenuItem> entries,
        HashSet<Sentence> before,
        KitLeft kit
    )
    {
        List<Sentence> sentences = [];
        bool free = false;
        foreach (MenuItem entry in entries)
        {
            var broken = Breaches(WithItem(own, who, entry), one)
                .Where(b => !before.Contains(b.Sentence))
                .Select(b => b.Sentence)
                .Concat(kit.Short(entry, who))
                .ToList();
            free |= broken.Count == 0;
            sentences.AddRange(broken);
            if (free && sentences.Count > 0)
            {
                // Two sentences are said, and there is no better first one.
                break;
            }
        }

        return
        [
            .. (
                free
                    ? [Sentence.Of($"Other work was worth more within the same time line and kit.")]
                    : Array.Empty<Sentence>()
            )
                .Concat(sentences)
                .Distinct()
                .Take(2),
        ];
    }

    /// <summary>What one athlete's items break, time lines and kit left aside.</summary>
    internal static IEnumerable<Breach> BreachesOfOne(Plan own, PlanRequest one) => Breaches(own, one);

    private static IEnumerable<Breach> Breaches(Plan plan, PlanRequest request) =>
        Limits.All.Where(l => !OfTheTimeline.Contains(l.Id)).SelectMany(l => l.Check(plan, request));

    /// <summary>The plan as it is for one athlete: all that a limit about one athlete has to look at.</summary>
    private static Plan OnlyOf(Plan plan, string athleteId) =>
        plan with
        {
            Sessions =
            [
                .. plan.Sessions.Select(s =>
                    s with
                    {
                        Rotation = [],
                        Athletes = [.. s.Athletes.Where(a => a.AthleteId == athleteId)],
                    }
                ),
            ],
        };

    private static Plan WithItem(Plan plan, AthleteRequest who, MenuItem entry)
    {
        PlannedItem item = new(entry.Dose, entry.Dose.SetsMin, null, null, null, entry.Because);
        return plan with
        {
            Sessions =
            [
                .. plan.Sessions.Select(s =>
                    s.Slot.Id != entry.SessionId ? s
                    : s.Athletes.Any(a => a.AthleteId == who.Athlete.Id)
                        ? s with
                        {
                            Athletes =
                            [
                                .. s.Athletes.Select(a =>
                                    a.AthleteId == who.Athlete.Id ? a with { Items = a.Items.Add(item) } : a
                                ),
                            ],
                        }
                    : s with { Athletes = s.Athletes.Add(new(who.Athlete.Id, [item])) }
                ),
            ],
        };
    }
}
