using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>What a finished plan leaves of the kit, session by session.</summary>
internal sealed class KitLeft
{
    private readonly PlanRequest _request;
    private readonly Dictionary<(string Key, string Session), int> _used = [];

    public KitLeft(Plan plan, PlanRequest request)
    {
        _request = request;
        var athletes = request.Athletes.ToDictionary(a => a.Athlete.Id, StringComparer.Ordinal);
        foreach (PlannedSession session in plan.Sessions)
        {
            foreach (AthleteSession one in session.Athletes)
            {
                foreach (PlannedItem item in one.Items)
                {
                    foreach (
                        (string key, int seconds) in UseOf(
                            new(session.Slot.Id, item.Dose, [], []),
                            athletes[one.AthleteId],
                            item.Sets
                        )
                    )
                    {
                        _used[(key, session.Slot.Id)] = _used.GetValueOrDefault((key, session.Slot.Id)) + seconds;
                    }
                }
            }
        }
    }

    /// <summary>For each kit that is too short for one more item: a sentence that says so.</summary>
    public IEnumerable<Sentence> Short(MenuItem entry, AthleteRequest who)
    {
        SessionSlot slot = _request.Slots.First(s => s.Id == entry.SessionId);
        foreach ((string key, int seconds) in UseOf(entry, who, entry.Dose.SetsMin))
        {
            int wanted = _used.GetValueOrDefault((key, slot.Id)) + seconds;
            int most = KitUse.Seconds(_request, key, slot);
            if (wanted > most)
            {
                string kit = KitUse.KitOf(key);
                yield return KitShort.Sentence(kit, slot, wanted, most, _request, fresh: kit != key);
            }
        }
    }

    private IEnumerable<(string Key, int Seconds)> UseOf(MenuItem menu, AthleteRequest who, int sets)
    {
        if (_request.Catalogue.Find(menu.ExerciseId) is not { } exercise)
        {
            yield break;
        }

        int seconds = menu.SecondsOf(sets) + who.PairSeconds(menu, sets);
        foreach ((string key, int count) in KitUse.Of(exercise, OrderOfWork.PhaseOf(exercise, menu.Dose.DropHeightM)))
        {
            yield return (key, count * seconds);
        }
    }
}
