using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>
/// Recovery by tissue: after a session with work that is demanding for a tissue ends, no such work starts within the
/// hours that work asks for. Counted in UTC, so that a change of clocks takes nothing away.
/// </summary>
public sealed class RecoveryHours : Limit
{
    public override string Id => "recovery-hours";
    public override string Sentence =>
        "From the end of demanding work on a tissue to the start of the next, the hours it needs must pass.";
    public override string SourceId => "handbook-potach-chu";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from gap in Gaps(plan, request)
        where gap.Hours < gap.Needed - 1e-9
        select new Breach(
            Id,
            gap.Who.Athlete.Id,
            gap.Later.Id,
            gap.Needed - gap.Hours,
            "h",
            $"{gap.Who.Athlete.Name} would load the {InWords(gap.Tissue)} again in {gap.Later.Said}, {gap.Hours:0.#} h after {gap.Earlier.Said}; it needs {gap.Needed} h."
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from g in Gaps(plan, request).GroupBy(g => (g.Who, g.Tissue, g.Needed))
        let nearest = g.MinBy(x => x.Hours)
        select new LimitReading(
            $"{Id}-{Word(g.Key.Tissue)}",
            g.Key.Who.Athlete.Id,
            "at-least",
            "h",
            "between sessions",
            g.Key.Needed,
            g.Max(x => x.Hours),
            nearest.Hours,
            nearest.Later.Id
        );

    internal static string Word(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => "achilles",
            Tissue.Patellar => "patellar",
            Tissue.Hip => "hip",
            _ => "bone",
        };

    internal static Sentence InWords(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => $"Achilles tendon and ankle",
            Tissue.Patellar => $"patellar tendon and knee",
            Tissue.Hip => $"hip",
            _ => $"bone",
        };

    private static IEnumerable<(
        AthleteRequest Who,
        Tissue Tissue,
        SessionSlot Earlier,
        SessionSlot Later,
        double Hours,
        int Needed
    )> Gaps(Plan plan, PlanRequest request)
    {
        var demanding =
            from placed in Reading.Items(plan, request)
            from tissue in Enum.GetValues<Tissue>()
            let hours = OrderOfWork.RecoveryHoursOf(placed.Exercise, tissue)
            where hours > 0
            group (placed.Who, placed.Slot, Hours: hours) by (
                placed.Who.Athlete.Id,
                Tissue: tissue,
                Session: placed.Slot.Id
            ) into g
            select (g.First().Who, g.Key.Tissue, g.First().Slot, Hours: g.Max(h => h.Hours));
        foreach (var row in demanding.GroupBy(d => (d.Who.Athlete.Id, d.Tissue)))
        {
            var inTime = row.OrderBy(d => d.Slot.StartUtc).ToList();
            for (int i = 0; i < inTime.Count; i++)
            {
                for (int j = i + 1; j < inTime.Count; j++)
                {
                    yield return (
                        inTime[i].Who,
                        row.Key.Tissue,
                        inTime[i].Slot,
                        inTime[j].Slot,
                        (inTime[j].Slot.StartUtc - inTime[i].Slot.EndUtc).TotalHours,
                        inTime[i].Hours
                    );
                }
            }
        }
    }
}
