using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>Makes the blocks of a session from what was chosen for it.</summary>
internal static class Blocks
{
    public static ImmutableArray<Block> Of(PlanRequest request, SessionSlot slot, IEnumerable<Chosen> chosen)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        foreach (
            var one in chosen
                .Where(c => c.Slot == slot)
                .GroupBy(c => c.Who.Athlete.Id, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
        )
        {
            var items = one.OrderBy(c => c.Exercise.Id, StringComparer.Ordinal).ToList();
            foreach (ContrastPair pair in items[0].Who.Pairs.Where(p => p.SessionId == slot.Id))
            {
                Chosen? heavy = items.Find(c => c.Exercise.Id == pair.HeavyExerciseId);
                Chosen? light = items.Find(c => c.Exercise.Id == pair.LightExerciseId);
                if (heavy is not null && light is not null && heavy.Sets == light.Sets)
                {
                    blocks.Add(PairBlock(pair, heavy, light));
                    items.Remove(heavy);
                    items.Remove(light);
                }
            }

            blocks.AddRange(items.Select(Single));
        }

        return blocks.ToImmutable();
    }

    public static Block Single(Chosen item)
    {
        int seconds = item.Menu.SecondsOf(item.Sets);
        return new(
            item.Who.Athlete.Id,
            item.Exercise.Id,
            item.Phase,
            OrderOfWork.RankOf(item.Exercise, item.Menu.Dose.DropHeightM),
            seconds,
            item.Exercise.Kit,
            [(item.Exercise.Id, 0, seconds)]
        );
    }

    public static Block PairBlock(ContrastPair pair, Chosen heavy, Chosen light)
    {
        var turns = ImmutableArray.CreateBuilder<(string, int, int)>();
        int at = 0;
        for (int round = 0; round < heavy.Sets; round++)
        {
            turns.Add((heavy.Exercise.Id, at, at + heavy.Menu.SecondsOf(1)));
            at += heavy.Menu.SecondsOf(1) + heavy.Who.PairSeconds(heavy.Menu, 1);
            turns.Add((light.Exercise.Id, at, at + light.Menu.SecondsOf(1)));
            at += light.Menu.SecondsOf(1);
        }

        return new(
            heavy.Who.Athlete.Id,
            pair.Id,
            heavy.Phase == 1 || light.Phase == 1 ? 1 : 2,
            2,
            at,
            [
                .. heavy
                    .Exercise.Kit.Concat(light.Exercise.Kit)
                    .GroupBy(k => k.Id, StringComparer.Ordinal)
                    .Select(g => new KitNeed(g.Key, g.Max(k => k.Count))),
            ],
            turns.ToImmutable()
        );
    }
}
