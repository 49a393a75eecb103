using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>
/// The objective, as the plan's reader can add it up: points of the sets of every item, of every contrast pair, and of
/// the sets of each week that train each quality; and, when a plan is made anew, of what stays as it was; less what many groups and
/// uneven use of staff and kit cost (<see cref="Evenness"/>), the sum rounded down. Only what a plan can change is in it.
/// </summary>
public static class PlanPoints
{
    /// <summary>Points of a finished plan.</summary>
    public static long Of(ImmutableArray<PlannedSession> sessions, PlanRequest request) =>
        Of(
            sessions.SelectMany(s =>
                s.Athletes.SelectMany(a => a.Items.Select(i => (a.AthleteId, s.Slot.Id, i.Dose.ExerciseId, i.Sets)))
            ),
            request
        );

    /// <summary>Points of items given by athlete, session, exercise and sets.</summary>
    public static long Of(
        IEnumerable<(string AthleteId, string SessionId, string ExerciseId, int Sets)> items,
        PlanRequest request
    )
    {
        var all = items.ToList();
        return (long)Math.Floor(((1000m * Gains(all, request)) - Evenness.Of(all, request)) / 1000m);
    }

    /// <summary>The same without what groups and unevenness cost.</summary>
    public static long Gains(
        IEnumerable<(string AthleteId, string SessionId, string ExerciseId, int Sets)> items,
        PlanRequest request
    )
    {
        long points = 0;
        var byAthlete = items.ToLookup(i => i.AthleteId, StringComparer.Ordinal);
        var weekOf = request.Slots.ToDictionary(s => s.Id, s => PlanRequest.WeekOf(s.Date), StringComparer.Ordinal);
        foreach (AthleteRequest who in request.Athletes)
        {
            var done = byAthlete[who.Athlete.Id].ToList();
            foreach (var item in done)
            {
                MenuItem? menu = who.OnMenu(item.SessionId, item.ExerciseId);
                points += menu is null ? 0 : menu.PointsOf(Math.Min(item.Sets, menu.SetPoints.Length));
            }

            foreach (KeepWish keep in request.Keeps.Where(k => k.AthleteId == who.Athlete.Id))
            {
                points += done.Where(d => d.SessionId == keep.SessionId && d.ExerciseId == keep.ExerciseId)
                    .Sum(d => keep.PointsOf(d.Sets));
            }

            foreach (ContrastPair pair in who.Pairs)
            {
                bool both =
                    done.Exists(d => d.SessionId == pair.SessionId && d.ExerciseId == pair.HeavyExerciseId)
                    && done.Exists(d => d.SessionId == pair.SessionId && d.ExerciseId == pair.LightExerciseId);
                points += both ? pair.Points : 0;
            }

            foreach (QualityGoal goal in who.Goals)
            {
                int sets = done.Where(d =>
                        weekOf.TryGetValue(d.SessionId, out var week)
                        && week == goal.WeekOf
                        && request.Trains(d.ExerciseId) == goal.Quality
                    )
                    .Sum(d => d.Sets);
                points += goal.PointsOf(sets);
            }
        }

        return points;
    }
}
