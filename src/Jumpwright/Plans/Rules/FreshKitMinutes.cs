namespace Jumpwright.Plans.Rules;

/// <summary>Kit is in use by work that must be done fresh no longer than the young part of the session lets it.</summary>
public sealed class FreshKitMinutes : Limit
{
    public override string Id => "fresh-kit-minutes";
    public override string Sentence =>
        "Work that must be done fresh uses kit no longer than the young part of the session lets it.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from use in Uses(plan, request)
        where use.Seconds > use.Limit
        select new Breach(
            Id,
            null,
            use.Slot.Id,
            (use.Seconds - use.Limit) / 60.0,
            "min",
            KitShort.Sentence(use.KitId, use.Slot, use.Seconds, use.Limit, request, fresh: true)
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from g in Uses(plan, request).GroupBy(u => u.KitId, StringComparer.Ordinal)
        orderby g.Key
        let values = g.Select(u => (u.Seconds / 60.0, u.Slot.Id)).ToList()
        select Reading.AtMost($"{Id}-{g.Key}", null, "min", "session", g.Min(u => u.Limit) / 60.0, values);

    private static IEnumerable<(SessionSlot Slot, string KitId, int Seconds, int Limit)> Uses(
        Plan plan,
        PlanRequest request
    ) =>
        from placed in Reading.Items(plan, request)
        where OrderOfWork.PhaseOf(placed.Exercise, placed.Item.Dose.DropHeightM) == 1
        from need in placed.Exercise.Kit
        let menu = new MenuItem(placed.Slot.Id, placed.Item.Dose, [], [])
        let seconds = menu.SecondsOf(placed.Item.Sets) + placed.Who.PairSeconds(menu, placed.Item.Sets)
        group seconds * need.Count by (placed.Slot, need.Id) into g
        select (g.Key.Slot, g.Key.Id, g.Sum(), request.FreshKitSeconds(g.Key.Id, g.Key.Slot));
}
