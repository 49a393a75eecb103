using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

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
                from use in KitUse.Of(choice.Exercise, choice.Phase)
                select (use.Key, Choice: choice, use.Count)
            ).ToLookup(u => u.Key, StringComparer.Ordinal);
            foreach (var kit in uses.OrderBy(u => u.Key, StringComparer.Ordinal))
            {
                int count = squad.Request.CountOf(KitUse.KitOf(kit.Key));
                if (
                    !squad.Asked.ForLimit(
                        KitUse.LimitOf(kit.Key),
                        $"{KitUse.KitOf(kit.Key)}:{slot.Id}",
                        $"{count} of {SaidKit.ById(KitUse.KitOf(kit.Key))} in {slot.Said}, together {KitUse.Seconds(squad.Request, kit.Key, slot) / 60.0:0.#} min."
                    )
                )
                {
                    continue;
                }

                long limit = squad.Scope.KitSeconds.GetValueOrDefault(
                    (kit.Key, slot.Id),
                    KitUse.Seconds(squad.Request, kit.Key, slot)
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

                squad.KitRows[squad.Model.Add((LinearExpr)sum <= limit).Index] = (kit.Key, slot.Id);
            }
        }
    }
}
