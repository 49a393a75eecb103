using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>Refuses a request that contradicts itself, before anything is solved.</summary>
internal static class Requesting
{
    /// <summary>Checks ids and points.</summary>
    /// <exception cref="ArgumentException">An id stands twice, or a menu entry's points do not fit its dose.</exception>
    public static void Check(PlanRequest request)
    {
        Unique(request.Slots.Select(s => s.Id), "session");
        Unique(request.Athletes.Select(a => a.Athlete.Id), "athlete");
        foreach (AthleteRequest who in request.Athletes)
        {
            Unique(who.Menu.Select(m => $"{m.SessionId}/{m.ExerciseId}"), $"menu entry of {who.Athlete.Id}");
            foreach (MenuItem menu in who.Menu)
            {
                bool falling = menu.SetPoints.Zip(menu.SetPoints.Skip(1)).All(p => p.First >= p.Second);
                if (
                    menu.SetPoints.Length < menu.Dose.SetsMax
                    || menu.Dose.SetsMin < 1
                    || menu.Dose.SetsMax < menu.Dose.SetsMin
                    || !falling
                    || menu.SetPoints.Any(p => p < 0)
                )
                {
                    throw new ArgumentException(
                        $"{menu.ExerciseId} of {who.Athlete.Id} in {menu.SessionId}: points must be given for each of {menu.Dose.SetsMin} to {menu.Dose.SetsMax} sets, never rise and never be negative.",
                        nameof(request)
                    );
                }
            }

            if (
                who.Goals.Any(g =>
                    g.SetPoints.Zip(g.SetPoints.Skip(1)).Any(p => p.First < p.Second) || g.SetPoints.Any(p => p < 0)
                )
            )
            {
                throw new ArgumentException(
                    $"A goal of {who.Athlete.Id} has points that rise or are negative.",
                    nameof(request)
                );
            }
        }
    }

    private static void Unique(IEnumerable<string> ids, string what)
    {
        string? twice = ids.GroupBy(i => i, StringComparer.Ordinal).FirstOrDefault(g => g.Skip(1).Any())?.Key;
        if (twice is not null)
        {
            throw new ArgumentException($"The {what} {twice} stands twice in the request.", nameof(ids));
        }
    }
}
