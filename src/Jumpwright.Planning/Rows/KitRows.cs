using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rows;

/// <summary>Kit minutes of each session, over all athletes.</summary>
internal static class KitRows
{
    public static void Add(SquadModel squad, IReadOnlyDictionary<string, double>? share)
    {
        foreach (SessionSlot slot in squad.Slots)
        {
            var uses = (
                from choice in squad.Choices
                where choice.Slot == slot
                from need in choice.Exercise.Kit
                select (need.Id, Choice: choice, need.Count)
            ).ToLookup(u => u.Id, StringComparer.Ordinal);
            foreach (var kit in uses.OrderBy(u => u.Key, StringComparer.Ordinal))
            {
                int count = squad.Request.CountOf(kit.Key);
                if (
                    !squad.Asked.ForLimit(
                        "kit-minutes",
                        $"{kit.Key}:{slot.Id}",
                        $"{count} of {kit.Key} in {slot.Id}, together {squad.Request.KitSeconds(kit.Key, slot) / 60.0:0.#} min."
                    )
                )
                {
                    continue;
                }

                double limit =
                    (double)squad.Request.KitSeconds(kit.Key, slot) * (share?.GetValueOrDefault(slot.Id, 1) ?? 1);
                LinearExprBuilder sum = LinearExpr.NewBuilder();
                foreach (var (_, choice, need) in kit)
                {
                    if (need > count)
                    {
                        squad.Close(choice);
                    }

                    choice.AddTo(sum, (long)need * (choice.Menu.SecondsOf(1) + choice.Who.PairSeconds(choice.Menu, 1)));
                }

                squad.Model.Add((LinearExpr)sum <= (long)Math.Floor(limit));
            }
        }
    }
}
