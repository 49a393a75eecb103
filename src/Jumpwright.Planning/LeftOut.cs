using System.Collections.Immutable;
using Jumpwright.Plans;

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
    };

    /// <summary>What never came on the menu first, then the best that was on it and is nowhere in the plan.</summary>
    public static ImmutableArray<Unmet> Of(Plan plan, PlanRequest request)
    {
        var unmet = ImmutableArray.CreateBuilder<Unmet>();
        foreach (AthleteRequest who in request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal))
        {
            unmet.AddRange(who.Unmet);
            var planned = plan
                .Sessions.SelectMany(s => s.Athletes)
                .Where(a => a.AthleteId == who.Athlete.Id)
                .SelectMany(a => a.Items.Select(i => i.Dose.ExerciseId))
                .ToHashSet(StringComparer.Ordinal);
            unmet.AddRange(
                who.Menu.Where(m => !planned.Contains(m.ExerciseId))
                    .GroupBy(m => m.ExerciseId, StringComparer.Ordinal)
                    .OrderByDescending(g => g.Max(m => Worth(m, who, request)))
                    .ThenBy(g => g.Key, StringComparer.Ordinal)
                    .Take(ForEachAthlete)
                    .Select(g => new Unmet(who.Athlete.Id, g.Key, Why(plan, request, who, [.. g])))
            );
        }

        return unmet.ToImmutable();
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

    private static ImmutableArray<string> Why(
        Plan plan,
        PlanRequest request,
        AthleteRequest who,
        ImmutableArray<MenuItem> entries
    )
    {
        HashSet<string> before = [.. Breaches(plan, request).Select(b => b.Sentence)];
        List<string> sentences = [];
        bool free = false;
        foreach (MenuItem entry in entries)
        {
            var broken = Breaches(WithItem(plan, who, entry), request)
                .Where(b => !before.Contains(b.Sentence))
                .Select(b => b.Sentence)
                .ToList();
            free |= broken.Count == 0;
            sentences.AddRange(broken);
        }

        return
        [
            .. (free ? ["Other work was worth more within the same time line and kit."] : Array.Empty<string>())
                .Concat(sentences)
                .Distinct(StringComparer.Ordinal)
                .Take(2),
        ];
    }

    private static IEnumerable<Breach> Breaches(Plan plan, PlanRequest request) =>
        Limits.All.Where(l => !OfTheTimeline.Contains(l.Id)).SelectMany(l => l.Check(plan, request));

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
