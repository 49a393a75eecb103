using Google.OrTools.Sat;
using Jumpwright.Plans;
using NodaTime;

namespace Jumpwright.Planning.Rows;

/// <summary>What groups and uneven use of staff and kit cost (<see cref="Evenness"/>), in a model of the whole squad.</summary>
internal static class EvennessRows
{
    public static void Add(SquadModel squad, LinearExprBuilder sum)
    {
        long group = squad.Scope.Fine * Evenness.EachGroup(squad.Request);
        long staff = squad.Scope.Fine * Evenness.UnevenStaff(squad.Request);
        long kit = squad.Scope.Fine * Evenness.UnevenKit(squad.Request);
        var weeks = squad.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)).ToList();
        if (group > 0 || staff > 0)
        {
            var open = squad.Slots.ToDictionary(s => s, s => Groups(squad, s, sum, group));
            foreach (var week in weeks.Where(w => staff > 0 && w.Skip(1).Any()))
            {
                long most = week.Max(s => open[s].Count);
                IntVar spread = Spread(
                    squad,
                    [.. week.Select(s => LinearExpr.Sum(open[s]))],
                    most,
                    1,
                    $"staff/{week.Key}"
                );
                sum.AddTerm(spread, -staff);
            }
        }

        foreach (string id in squad.Request.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal))
        {
            foreach (var week in weeks.Where(w => kit > 0 && w.Skip(1).Any()))
            {
                AddKit(squad, id, week, sum, kit);
            }
        }
    }

    /// <summary>One literal for each exercise that anybody may do in the session: true when somebody does.</summary>
    private static List<BoolVar> Groups(SquadModel squad, SessionSlot slot, LinearExprBuilder sum, long group)
    {
        List<BoolVar> open = [];
        foreach (
            var same in squad.Choices.Where(c => c.Slot == slot).GroupBy(c => c.Exercise.Id, StringComparer.Ordinal)
        )
        {
            BoolVar done = squad.Model.NewBoolVar($"group/{slot.Id}/{same.Key}");
            foreach (Choice choice in same)
            {
                squad.Model.AddImplication(choice.Done, done);
            }

            // True only when somebody does: a session's groups must not look even by standing empty.
            squad.Model.AddBoolOr([.. same.Select(c => (ILiteral)c.Done), done.Not()]);
            sum.AddTerm(done, -group);
            open.Add(done);
        }

        return open;
    }

    private static void AddKit(
        SquadModel squad,
        string id,
        IGrouping<LocalDate, SessionSlot> week,
        LinearExprBuilder sum,
        long weight
    )
    {
        List<LinearExpr> use = [];
        long most = 0;
        foreach (SessionSlot slot in week)
        {
            LinearExprBuilder seconds = LinearExpr.NewBuilder();
            long all = 0;
            foreach (Choice choice in squad.Choices.Where(c => c.Slot == slot))
            {
                long each = choice
                    .Exercise.Kit.Where(k => k.Id == id)
                    .Sum(k => (long)k.Count * choice.KitSecondsOfOneSet);
                if (each > 0)
                {
                    choice.AddTo(seconds, each);
                    all += each * choice.Menu.Dose.SetsMax;
                }
            }

            use.Add((LinearExpr)seconds);
            most = Math.Max(most, all);
        }

        if (most > 0)
        {
            sum.AddTerm(Spread(squad, use, most, 60, $"kit/{id}/{week.Key}"), -weight);
        }
    }

    /// <summary>At least how far the largest lies above the least, counted in so many to one.</summary>
    private static IntVar Spread(SquadModel squad, List<LinearExpr> values, long most, long each, string name)
    {
        IntVar high = squad.Model.NewIntVar(0, most, name + "/high");
        IntVar low = squad.Model.NewIntVar(0, most, name + "/low");
        IntVar spread = squad.Model.NewIntVar(0, (most + each - 1) / each, name);
        foreach (LinearExpr value in values)
        {
            squad.Model.Add(high >= value);
            squad.Model.Add(low <= value);
        }

        squad.Model.Add(each * spread >= high - low);
        return spread;
    }
}
