using System.Collections.Immutable;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What an item needs to be left in, as <see cref="FloorRule"/> asks it; the tablet gets it with the session.</summary>
/// <param name="ExerciseId">The item's exercise.</param>
/// <param name="IsLow">Whether it is landing or low ankle work, which others need before them.</param>
/// <param name="NeedsLow">Whether such work has to go before it.</param>
/// <param name="OnlyWith">The jump beside which alone a lift is done; null for what stands by itself.</param>
/// <param name="IsFresh">Whether it must be done fresh: it begins while the session is young.</param>
public sealed record FloorNeeds(string ExerciseId, bool IsLow, bool NeedsLow, string? OnlyWith, bool IsFresh = false)
{
    /// <summary>The kit it takes, its own and not its partner's.</summary>
    public ImmutableArray<KitNeed> Kit { get; init; } = [];

    /// <summary>Until when fresh work begins, in minutes, by the minutes at hand from none to all that were planned.</summary>
    public static ImmutableArray<double> FreshUntil(SessionSlot slot, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(request);
        return
        [
            .. Enumerable.Range(0, slot.Minutes + 1).Select(m => request.FreshUntil(slot with { Minutes = m }) / 60.0),
        ];
    }

    /// <summary>What each item of the session needs, in its order.</summary>
    public static ImmutableArray<(string AthleteId, FloorNeeds Needs)> OfAll(
        PlannedSession session,
        PlanRequest request
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(request);
        var asked = request.Athletes.ToDictionary(a => a.Athlete.Id, StringComparer.Ordinal);
        return
        [
            .. session.Athletes.SelectMany(a =>
                OfOne(asked[a.AthleteId], a.Items, session.Slot.Id, request).Select(needs => (a.AthleteId, needs))
            ),
        ];
    }

    /// <summary>Whether what is no low work itself needs some before it: always at high intensity, else where there is any to be done.</summary>
    internal static bool NeedLow(AthleteRequest who, string sessionId, Dose dose, PlanRequest request) =>
        dose.HighIntensity || HasLow(who, sessionId, request);

    private static IEnumerable<FloorNeeds> OfOne(
        AthleteRequest who,
        ImmutableArray<PlannedItem> items,
        string sessionId,
        PlanRequest request
    )
    {
        bool? hasLow = null;
        foreach (PlannedItem item in items)
        {
            string id = item.Dose.ExerciseId;
            Exercise? exercise = request.Catalogue.Find(id);
            int? phase = exercise is null ? null : OrderOfWork.PhaseOf(exercise, item.Dose.DropHeightM);
            ContrastPair? pair =
                exercise?.ContactsPerRep == 0
                    ? who.Pairs.FirstOrDefault(p => p.SessionId == sessionId && p.HeavyExerciseId == id)
                    : null;
            yield return new FloorNeeds(
                id,
                phase == 0,
                phase != 0 && (item.Dose.HighIntensity || (hasLow ??= HasLow(who, sessionId, request))),
                pair?.LightExerciseId,
                phase == 1
            )
            {
                Kit = exercise?.Kit ?? [],
            };
        }
    }

    private static bool HasLow(AthleteRequest who, string sessionId, PlanRequest request) =>
        who.Menu.Any(m =>
            m.SessionId == sessionId
            && request.Catalogue.Find(m.ExerciseId) is { } e
            && OrderOfWork.PhaseOf(e, m.Dose.DropHeightM) == 0
        );
}
