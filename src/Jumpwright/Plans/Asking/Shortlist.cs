using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// The few entries of a session's menu that the planner chooses from: the best of every quality, at least three of
/// low work (so that a day between demanding ones can be filled), and both partners of a pair. A long menu makes no better session, only a slower proof.
/// </summary>
internal static class Shortlist
{
    private const int Most = 12;
    private const int EachQuality = 3;
    private const int LowAtLeast = 3;

    public static ImmutableArray<MenuItem> Of(IReadOnlyCollection<MenuItem> open, Catalogue catalogue, Wanting wanting)
    {
        var ranked = open.Select(m => (Menu: m, Exercise: catalogue.Find(m.ExerciseId)!))
            .Select(m => (m.Menu, m.Exercise, Worth: WorthOf(m.Menu, m.Exercise, wanting)))
            .OrderByDescending(m => m.Worth)
            .ThenByDescending(m => m.Exercise.Stage)
            .ThenBy(m => m.Menu.ExerciseId, StringComparer.Ordinal)
            .ToList();
        // Of a family the best one: a session holds one variant, so that three of them fill no day.
        var low = ranked
            .Where(m => OrderOfWork.PhaseOf(m.Exercise, m.Menu.Dose.DropHeightM) == 0)
            .DistinctBy(m => m.Exercise.Family ?? m.Exercise.Id)
            .Take(LowAtLeast);
        var best = ranked
            .GroupBy(m => m.Exercise.Trains[0])
            .SelectMany(g => g.Take(EachQuality))
            .OrderByDescending(m => m.Worth)
            .ThenBy(m => m.Menu.ExerciseId, StringComparer.Ordinal);
        var few = low.Concat(best).DistinctBy(m => m.Menu.ExerciseId).Take(Most).ToList();
        var partners = few.Select(m => m.Exercise.PairsWith)
            .Where(id => id is not null && !few.Exists(f => f.Menu.ExerciseId == id))
            .SelectMany(id => ranked.Where(r => r.Menu.ExerciseId == id));
        return
        [
            .. few.Concat(partners)
                .DistinctBy(m => m.Menu.ExerciseId)
                .OrderBy(m => m.Exercise.Stage)
                .ThenBy(m => m.Menu.ExerciseId, StringComparer.Ordinal)
                .Select(m => m.Menu),
        ];
    }

    private static int WorthOf(MenuItem menu, Exercise exercise, Wanting wanting)
    {
        ImmutableArray<int> goal = wanting.GoalPoints(exercise.Trains[0]);
        return menu.PointsOf(menu.Dose.SetsMin) + goal.Take(menu.Dose.SetsMin).Sum();
    }
}
