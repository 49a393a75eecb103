using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rows;

/// <summary>Kit minutes of each session, over all athletes.</summary>
internal static class KitRows
{
    public static void Add(SquadModel squad)
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

                long limit = squad.Scope.KitSeconds.GetValueOrDefault(
                    (kit.Key, slot.Id),
                    squad.Request.KitSeconds(kit.Key, slot)
                );
                LinearExprBuilder sum = LinearExpr.NewBuilder();
                foreach (var (_, choice, need) in kit)
                {
                    if (need > count)
                    {
                        squad.Close(choice);
                    }

                    choice.AddTo(sum, (long)need * choice.KitSecondsOfOneSet);
                }

                squad.Model.Add((LinearExpr)sum <= limit);
            }
        }
    }
}
