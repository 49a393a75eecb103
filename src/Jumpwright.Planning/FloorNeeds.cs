using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What an item needs to be left in, as <see cref="FloorRule"/> asks it; the tablet gets it with the session.</summary>
/// <param name="ExerciseId">The item's exercise.</param>
/// <param name="IsLow">Whether it is landing or low ankle work, which others need before them.</param>
/// <param name="NeedsLow">Whether such work has to go before it.</param>
/// <param name="OnlyWith">The jump beside which alone a lift is done; null for what stands by itself.</param>
public sealed record FloorNeeds(string ExerciseId, bool IsLow, bool NeedsLow, string? OnlyWith)
{
    /// <summary>The needs of one athlete's item in a session.</summary>
    public static FloorNeeds Of(string athleteId, PlannedItem item, PlannedSession session, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(request);
        AthleteRequest who = request.Athletes.First(a => a.Athlete.Id == athleteId);
        string id = item.Dose.ExerciseId;
        bool IsLow(string exercise, double? dropHeightM) =>
            request.Catalogue.Find(exercise) is { } e && OrderOfWork.PhaseOf(e, dropHeightM) == 0;
        bool low = IsLow(id, item.Dose.DropHeightM);
        ContrastPair? pair =
            request.Catalogue.Find(id)?.ContactsPerRep == 0
                ? who.Pairs.FirstOrDefault(p => p.SessionId == session.Slot.Id && p.HeavyExerciseId == id)
                : null;
        return new FloorNeeds(
            id,
            low,
            !low
                && (
                    item.Dose.HighIntensity
                    || who.Menu.Any(m => m.SessionId == session.Slot.Id && IsLow(m.ExerciseId, m.Dose.DropHeightM))
                ),
            pair?.LightExerciseId
        );
    }
}
