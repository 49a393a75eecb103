using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>Turns a time line into entries a coach can read: which station, which pieces of kit, who, from when to when.</summary>
internal static class Stations
{
    /// <summary>The entries of a time line.</summary>
    /// <param name="timeline">The time line.</param>
    /// <param name="gym">The session's times and kit.</param>
    /// <param name="athletes">What everybody does: it says whose first set is an easy one.</param>
    public static ImmutableArray<RotationEntry> Of(Timeline timeline, Gym gym, ImmutableArray<AthleteSession> athletes)
    {
        var easySeconds = athletes
            .SelectMany(a => a.Items.Select(i => (Key: (a.AthleteId, i.Dose.ExerciseId), Item: i)))
            .ToDictionary(i => i.Key, i => EasySeconds(i.Item));
        Dictionary<string, int[]> freeFrom = new(StringComparer.Ordinal);
        List<RotationEntry> entries = [];
        foreach (
            (Block block, int start) in timeline
                .Placed.OrderBy(p => p.Start)
                .ThenBy(p => p.Block.Name, StringComparer.Ordinal)
                .ThenBy(p => p.Block.AthleteId, StringComparer.Ordinal)
        )
        {
            string station = StationOf(block, start, freeFrom, gym);
            entries.AddRange(
                block.Turns.Select(turn => new RotationEntry(
                    station,
                    turn.ExerciseId,
                    (start + turn.From) / 60.0,
                    (start + turn.Until) / 60.0,
                    [block.AthleteId]
                )
                {
                    EasyUntilMin =
                        turn.From == FirstOf(block, turn.ExerciseId)
                        && easySeconds.GetValueOrDefault((block.AthleteId, turn.ExerciseId)) is > 0 and var easy
                            ? (start + Math.Min(turn.From + easy, turn.Until)) / 60.0
                            : null,
                })
            );
        }

        return
        [
            .. entries
                .GroupBy(e => (e.Station, e.ExerciseId, e.StartMin, e.EndMin, e.EasyUntilMin))
                .Select(g =>
                    g.First() with
                    {
                        AthleteIds = [.. g.SelectMany(e => e.AthleteIds).Order(StringComparer.Ordinal)],
                    }
                )
                .OrderBy(e => e.StartMin)
                .ThenBy(e => e.Station, StringComparer.Ordinal)
                .ThenBy(e => e.ExerciseId, StringComparer.Ordinal)
                .ThenBy(e => e.AthleteIds[0], StringComparer.Ordinal),
        ];
    }

    private static int FirstOf(Block block, string exerciseId) =>
        block.Turns.Where(t => t.ExerciseId == exerciseId).Min(t => t.From);

    private static int EasySeconds(PlannedItem item) =>
        item.Dose.EasySets(item.Sets) * new MenuItem("", item.Dose, [], []).SecondsOf(1);

    /// <summary>The pieces of kit with the lowest numbers that are free; <c>floor</c> without kit.</summary>
    private static string StationOf(Block block, int start, Dictionary<string, int[]> freeFrom, Gym gym)
    {
        if (block.Kit.IsEmpty)
        {
            return "floor";
        }

        List<string> pieces = [];
        foreach (KitNeed need in block.Kit.OrderBy(k => k.Id, StringComparer.Ordinal))
        {
            if (!freeFrom.TryGetValue(need.Id, out int[]? units))
            {
                units = new int[gym.CountOf(need.Id)];
                freeFrom[need.Id] = units;
            }

            int[] taken = [.. Enumerable.Range(0, units.Length).Where(u => units[u] <= start).Take(need.Count)];
            foreach (int unit in taken)
            {
                units[unit] = start + block.Seconds;
                pieces.Add($"{need.Id}-{unit + 1}");
            }
        }

        return string.Join('+', pieces);
    }
}
