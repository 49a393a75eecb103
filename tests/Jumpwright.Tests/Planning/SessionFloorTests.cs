using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Planning.Rotations;

namespace Jumpwright.Tests.Planning;

/// <summary>The floor of a session while plans still change: what it places has its place, second by second.</summary>
public class SessionFloorTests
{
    private const int Opens = 300;
    private const int Closes = 3000;
    private const int FreshUntil = 2100;
    private const int ChangeOver = 60;
    private static readonly string[] Kits = ["bar", "box"];

    [Fact]
    public void Place_CrowdedSessions_NeverPutsAnybodyWhereThereIsNoRoom()
    {
        int placed = 0,
            refused = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            Random random = new(seed);
            int bars = random.Next(1, 3);
            Gym gym = new(Opens, Closes, FreshUntil, ChangeOver, kit => kit == "bar" ? bars : 2);
            SessionFloor floor = new(gym, Kits, needMost: 2, athletes: 8);
            for (int turn = 0; turn < 40; turn++)
            {
                int who = random.Next(8);
                Stand before = floor.Of(who);
                if (floor.Place(who, [.. Enumerable.Range(0, random.Next(1, 6)).Select(n => Random(who, n, random))]))
                {
                    placed++;
                }
                else
                {
                    refused++;
                    Assert.Equal(before, floor.Of(who));
                }

                Assert.Empty(Wrong(floor.Timeline, gym));
            }
        }

        Assert.True(
            placed > 500 && refused > 100,
            $"{placed} placed, {refused} refused: too few to have tested anything"
        );
    }

    [Fact]
    public void Put_WhatStoodBefore_FreesAndTakesTheSameKit()
    {
        Gym gym = new(Opens, Closes, FreshUntil, ChangeOver, _ => 1);
        SessionFloor floor = new(gym, Kits, needMost: 1, athletes: 2);
        FloorBlock long_ = Made("a", "one", 2, 2500, [("box", 1)]);
        FloorBlock short_ = Made("b", "two", 2, 600, [("box", 1)]);
        Assert.True(floor.Place(0, [long_]));
        Stand stood = floor.Of(0);
        Assert.False(floor.Place(1, [short_]));
        Assert.True(floor.Place(0, []));
        Assert.True(floor.Place(1, [short_]));
        Assert.True(floor.Place(1, []));
        floor.Put(0, stood);
        Assert.False(floor.Place(1, [short_]));
    }

    private static FloorBlock Random(int who, int n, Random random) =>
        Made(
            $"a{who}",
            $"item {n}",
            random.Next(3),
            random.Next(1, 9) * 67,
            random.Next(4) switch
            {
                0 => [],
                1 => [("bar", 1)],
                2 => [("box", random.Next(1, 3))],
                _ => [("bar", 1), ("box", 1)],
            }
        );

    private static FloorBlock Made(string who, string name, int phase, int seconds, (string Id, int Count)[] kit) =>
        new(
            new Block(
                who,
                name,
                phase,
                phase == 0 ? name[^1] % 2 : 2,
                seconds,
                [.. kit.Select(k => new KitNeed(k.Id, k.Count))],
                []
            ),
            [.. kit.Select(k => (Array.IndexOf(Kits, k.Id), k.Count))]
        );

    /// <summary>Counted anew, second by second, from the time line alone.</summary>
    private static IEnumerable<string> Wrong(Timeline timeline, Gym gym)
    {
        foreach (string kit in Kits)
        {
            int[] inUse = new int[Closes + 1];
            foreach ((Block block, int start) in timeline.Placed)
            {
                for (int t = start; t < start + block.Seconds; t++)
                {
                    inUse[t] += block.Kit.Where(k => k.Id == kit).Sum(k => k.Count);
                }
            }

            if (inUse.Max() > gym.CountOf(kit))
            {
                yield return $"{inUse.Max()} of {kit} at once";
            }
        }

        foreach (var one in timeline.Placed.GroupBy(p => p.Block.AthleteId))
        {
            int free = Opens;
            bool others = false;
            int rank = 0;
            foreach ((Block block, int start) in one.OrderBy(p => p.Start))
            {
                if (start < free + ChangeOver || start + block.Seconds > Closes)
                {
                    yield return $"{block.AthleteId} {block.Name} at {start}";
                }

                if (block.Rank < rank || (block.Phase == 0 && others) || (block.Phase == 1 && start > FreshUntil))
                {
                    yield return $"{block.AthleteId} {block.Name} out of order at {start}";
                }

                rank = block.Rank;
                others |= block.Phase != 0;
                free = start + block.Seconds;
            }
        }
    }
}
