namespace Jumpwright.Plans.Rules;

/// <summary>Kit is in use no longer than it may be: by all work of a session, or by what must be done fresh.</summary>
public abstract class KitInUse : Limit
{
    public override string SourceId => "house-rule";

    /// <summary>Only work that must be done fresh counts.</summary>
    protected abstract bool Fresh { get; }

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from use in Uses(plan, request)
        where use.Seconds > use.Limit
        select new Breach(
            Id,
            null,
            use.Slot.Id,
            (use.Seconds - use.Limit) / 60.0,
            "min",
            KitShort.Sentence(use.KitId, use.Slot, use.Seconds, use.Limit, request, Fresh)
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from g in Uses(plan, request).GroupBy(u => u.KitId, StringComparer.Ordinal)
        orderby g.Key
        let values = g.Select(u => (u.Seconds / 60.0, u.Slot.Id)).ToList()
        select Reading.AtMost($"{Id}-{g.Key}", null, "min", "session", g.Min(u => u.Limit) / 60.0, values);

    private IEnumerable<(SessionSlot Slot, string KitId, int Seconds, int Limit)> Uses(
        Plan plan,
        PlanRequest request
    ) =>
        from placed in Reading.Items(plan, request)
        where !Fresh || OrderOfWork.PhaseOf(placed.Exercise, placed.Item.Dose.DropHeightM) == 1
        from need in placed.Exercise.Kit
        let menu = new MenuItem(placed.Slot.Id, placed.Item.Dose, [], [])
        let seconds = menu.SecondsOf(placed.Item.Sets) + placed.Who.PairSeconds(menu, placed.Item.Sets)
        group seconds * need.Count by (placed.Slot, need.Id) into g
        let limit = Fresh ? request.FreshKitSeconds(g.Key.Id, g.Key.Slot) : request.KitSeconds(g.Key.Id, g.Key.Slot)
        select (g.Key.Slot, g.Key.Id, g.Sum(), limit);
}
