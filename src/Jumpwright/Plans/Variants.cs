using Jumpwright.Exercises;

namespace Jumpwright.Plans;

/// <summary>
/// Variants of one exercise: a session holds one of a family, not the same work under several names. Deliberate contrast and
/// progression stay possible: partners of a contrast pair count once, low work (which begins the session) is counted apart from
/// what follows, and what a coach locks by hand is meant (common practice).
/// </summary>
public static class Variants
{
    /// <summary>What is counted together in a session; null for an exercise without a family.</summary>
    public static (string Family, bool Low)? KeyOf(Exercise exercise, double? dropHeightM) =>
        exercise.Family is { } family ? (family, OrderOfWork.PhaseOf(exercise, dropHeightM) == 0) : null;

    /// <summary>How many of them a session of that athlete may hold: the limit, or as many as are locked there.</summary>
    public static int AtMost(
        AthleteRequest who,
        string sessionId,
        (string Family, bool Low) key,
        PlanRequest request
    ) =>
        Math.Max(
            who.VariantsPerSessionAtMost,
            request.Locks.Count(l =>
                l.AthleteId == who.Athlete.Id
                && l.SessionId == sessionId
                && who.OnMenu(sessionId, l.ExerciseId) is { } menu
                && KeyOf(menu, request) == key
            )
        );

    /// <summary>The same for an entry of a menu.</summary>
    public static (string Family, bool Low)? KeyOf(MenuItem menu, PlanRequest request) =>
        request.Catalogue.Find(menu.ExerciseId) is { } exercise ? KeyOf(exercise, menu.Dose.DropHeightM) : null;

    /// <summary>True when the entry is the heavy half of a pair whose light half is counted with it: the two count once.</summary>
    public static bool CountsWithPartner(MenuItem menu, AthleteRequest who, PlanRequest request) =>
        KeyOf(menu, request) is { } key
        && who.Pairs.Any(p =>
            p.SessionId == menu.SessionId
            && p.HeavyExerciseId == menu.ExerciseId
            && who.OnMenu(menu.SessionId, p.LightExerciseId) is { } light
            && KeyOf(light, request) == key
        );
}
