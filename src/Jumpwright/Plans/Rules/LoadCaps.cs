using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>One kind of cap on what an athlete's sessions add up to.</summary>
public sealed class LoadCaps(string id, string sentence, string sourceId, string period) : Limit
{
    public override string Id => id;
    public override string Sentence => sentence;
    public override string SourceId => sourceId;

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (AthleteRequest who in request.Athletes)
        {
            foreach (LoadCap cap in who.Caps.Where(c => c.LimitId == id))
            {
                int load = LoadOf(Reading.ItemsOf(who, plan, request), cap.SessionIds, cap.Tissue);
                if (load > cap.AtMost)
                {
                    yield return new(
                        id,
                        who.Athlete.Id,
                        cap.SessionIds[0],
                        load - cap.AtMost,
                        UnitOf(cap.Tissue),
                        $"{who.Athlete.Name} would load {Word(cap.Tissue)} with {load} {SaidUnitOf(cap.Tissue)}; at most {cap.AtMost} are allowed. {cap.Because}"
                    );
                }
            }
        }
    }

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        from cap in who.Caps.Where(c => c.LimitId == id)
        let load = LoadOf(Reading.ItemsOf(who, plan, request), cap.SessionIds, cap.Tissue)
        select new LimitReading(
            cap.Tissue is { } t ? $"{id}-{t.ToString().ToLowerInvariant()}" : id,
            who.Athlete.Id,
            "at-most",
            UnitOf(cap.Tissue),
            period,
            cap.AtMost,
            load,
            load,
            cap.SessionIds[0]
        );

    internal static int LoadOf(
        IEnumerable<(SessionSlot Slot, AthleteRequest Who, PlannedItem Item, Exercise Exercise)> items,
        ImmutableArray<string> sessionIds,
        Tissue? tissue
    ) =>
        items
            .Where(i => sessionIds.Contains(i.Slot.Id))
            .Sum(i => i.Item.Contacts * (tissue is { } t ? i.Exercise.Demand.GetValueOrDefault(t) : 1));

    internal static string UnitOf(Tissue? tissue) => tissue is null ? "contacts" : "contacts × tier";

    private static Sentence SaidUnitOf(Tissue? tissue) =>
        tissue is null ? Quantities.Sentence.Of($"contacts") : Quantities.Sentence.Of($"contacts × tier");

    internal static Sentence Word(Tissue? tissue) =>
        tissue switch
        {
            null => $"the legs",
            Tissue.Achilles => $"the Achilles tendon and ankle",
            Tissue.Patellar => $"the patellar tendon and knee",
            Tissue.Hip => $"the hip",
            _ => $"bone",
        };
}
