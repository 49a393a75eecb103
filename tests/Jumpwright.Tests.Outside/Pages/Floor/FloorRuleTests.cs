using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Exercises;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>
/// Roll call on the tablet, which has only the session it keeps, and in the program: the same rule (docs/floor-rule.md), run both ways on
/// many sessions and compared turn by turn.
/// </summary>
[Collection("pages")]
public class FloorRuleTests(ServedDemo demo)
{
    private const int Invented = 300;

    [Fact]
    public async Task InventedSessions_TheTabletAndTheProgram_LeaveTheSame()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("body[data-ready]");
        var random = new Random(20261130);
        int cut = 0,
            moved = 0,
            missing = 0,
            elsewhere = 0,
            late = 0;
        for (int i = 0; i < Invented; i++)
        {
            (ImmutableArray<RotationEntry> rotation, ImmutableArray<(string, FloorNeeds)> needs) = Session(random);
            string[] here = [.. People.Where(_ => random.Next(4) > 0)];
            // No minute at all is a choice too.
            int minutes = random.Next(12) == 0 ? 0 : random.Next(5, 60);
            // In every other session there is as much kit as planned, or nobody counted it.
            Dictionary<string, int> kit = random.Next(2) == 0 ? [] : LessKit(random);
            (ImmutableArray<RotationEntry> turns, ImmutableArray<FloorCut> cuts) = FloorRule.Of(
                rotation,
                needs,
                Fresh,
                here,
                minutes,
                kit,
                ChangeOver
            );
            (string[] theirTurns, string[] theirCuts) = await OnTheTablet(page, rotation, needs, here, minutes, kit);
            Assert.Equal(turns.Select(t => Said(t)), theirTurns);
            Assert.Equal(cuts.Select(c => $"{c.AthleteId} {c.ExerciseId} {c.Reason}"), theirCuts);
            cut += cuts.Length;
            missing += cuts.Count(c => c.Reason == FloorCutReason.KitMissing);
            elsewhere += turns.Count(t =>
                !rotation.Any(r =>
                    r.Station == t.Station && r.ExerciseId == t.ExerciseId && r.AthleteIds[0] == t.AthleteIds[0]
                )
            );
            late += turns.Count(t =>
                rotation.All(r =>
                    r.ExerciseId != t.ExerciseId
                    || !r.AthleteIds.Contains(t.AthleteIds[0])
                    || r.StartMin < t.StartMin - 1e-6
                )
            );
            moved += turns.Count(t => !rotation.Any(r => r.StartMin == t.StartMin && r.ExerciseId == t.ExerciseId));
        }

        // What is compared must have happened.
        Assert.True(cut > Invented && moved > Invented / 3, $"{cut} cuts, {moved} turns moved");
        Assert.True(
            missing > Invented / 3 && elsewhere > Invented / 3 && late > Invented / 10,
            $"{missing} without kit, {elsewhere} at another piece, {late} later than planned"
        );
        await page.CloseAsync();
    }

    /// <summary>The demo's own plan, as the tablet gets it, with somebody away and less time.</summary>
    [Fact]
    public async Task PlannedSessions_TheTabletAndTheProgram_LeaveTheSame()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("body[data-ready]");
        var random = new Random(7);
        App.Desk.PlannedWeek week = demo.Desk.Book.PlanOrNull!;
        foreach (PlannedSession session in week.Plan.Sessions)
        {
            for (int i = 0; i < 10; i++)
            {
                string[] here = [.. session.Athletes.Select(a => a.AthleteId).Where(_ => random.Next(4) > 0)];
                int minutes = random.Next(10, session.Slot.Minutes + 1);
                var kit = week.Request.Kit.ToDictionary(
                    k => k.Id,
                    k => random.Next(i % 2 == 0 ? k.Count : 0, k.Count + 1)
                );
                RolledCall rolled = RollCall.Make(session, week.Request, here, kit, minutes);
                string[] tablet = await page.EvaluateAsync<string[]>(
                    """
                    async ([id, here, minutes, kit]) => {
                      const plan = await fetch("/floor/sessions/" + id).then(r => r.json());
                      const needs = plan.athletes.flatMap(a => a.items.map(i => ({ athlete: a.id, exercise: i.exercise, ...i.needs })));
                      return floorRule(plan.rotation, needs, a => here.includes(a), plan.fresh_until, minutes, JSON.parse(kit), plan.change_over).turns
                        .map(t => `${t.station} ${t.exercise} ${t.start.toFixed(3)} ${t.end.toFixed(3)} ${t.athletes.join(",")}`);
                    }
                    """,
                    new object[] { session.Slot.Id, here, minutes, JsonSerializer.Serialize(kit) }
                );
                Assert.Equal(rolled.Session.Rotation.Select(Said), tablet);
            }
        }

        await page.CloseAsync();
    }

    /// <summary>Forty-five minutes are planned, of which two thirds are young.</summary>
    private static readonly ImmutableArray<double> Fresh = [.. Enumerable.Range(0, 46).Select(m => m * 2 / 3.0)];

    private static readonly string[] People = ["a01", "a02", "a03", "a04", "a05", "a06"];

    private const double ChangeOver = 1;

    private static Dictionary<string, int> LessKit(Random random) =>
        new(StringComparer.Ordinal)
        {
            ["plyo-box"] = random.Next(1, 4),
            ["bench"] = random.Next(0, 3),
            ["hex-bar"] = random.Next(random.Next(2), 3),
        };

    /// <summary>
    /// Everybody does three or four exercises one after the other, at pieces that others use too, some of them as a pair at one station;
    /// times in whole seconds.
    /// </summary>
    private static (ImmutableArray<RotationEntry>, ImmutableArray<(string, FloorNeeds)>) Session(Random random)
    {
        string[] stations =
        [
            "floor",
            "plyo-box-1",
            "plyo-box-2",
            "plyo-box-3",
            "bench-1+plyo-box-1",
            "bench-1",
            "bench-2",
            "bench-1+bench-2",
        ];
        Dictionary<string, int> free = [];
        var turns = ImmutableArray.CreateBuilder<RotationEntry>();
        var needs = ImmutableArray.CreateBuilder<(string, FloorNeeds)>();
        foreach (string athlete in People)
        {
            int at = random.Next(0, 300);
            for (int k = 0; k < random.Next(2, 5); k++)
            {
                string exercise = $"e{k}";
                bool pair = random.Next(4) == 0;
                string station = pair
                    ? $"hex-bar-{random.Next(1, 3)}+plyo-box-{random.Next(1, 4)}"
                    : stations[random.Next(stations.Length)];
                int start = station
                    .Split('+')
                    .Append(athlete)
                    .Max(p => p == "floor" ? at : Math.Max(at, free.GetValueOrDefault(p)));
                int end = start;
                for (int round = 0; round < (pair ? 2 : 1); round++)
                {
                    int from = end + (round * 120);
                    end = from + random.Next(60, pair ? 200 : 600);
                    turns.Add(new RotationEntry(station, exercise, from / 60.0, end / 60.0, [athlete]));
                    if (pair)
                    {
                        from = end + 180;
                        end = from + 60;
                        turns.Add(new RotationEntry(station, exercise + "-light", from / 60.0, end / 60.0, [athlete]));
                    }
                }

                foreach (string piece in station.Split('+'))
                {
                    free[piece] = end;
                }

                at = end + random.Next(0, 180);
                FloorNeeds own = new(
                    exercise,
                    k == 0,
                    k > 0 && random.Next(2) == 0,
                    pair ? exercise + "-light"
                        : k > 1 && random.Next(3) == 0 ? $"e{k - 1}"
                        : null,
                    k > 0 && random.Next(3) == 0
                )
                {
                    Kit = KitOf(pair ? station.Split('+')[0] : station),
                };
                needs.Add((athlete, own));
                if (pair)
                {
                    needs.Add(
                        (
                            athlete,
                            own with
                            {
                                ExerciseId = exercise + "-light",
                                OnlyWith = null,
                                Kit = KitOf(station.Split('+')[1]),
                            }
                        )
                    );
                }
            }
        }

        return (turns.ToImmutable(), needs.ToImmutable());
    }

    private static ImmutableArray<KitNeed> KitOf(string station) =>
        [
            .. station
                .Split('+')
                .Where(p => p != "floor")
                .GroupBy(p => p[..p.LastIndexOf('-')])
                .Select(g => new KitNeed(g.Key, g.Count())),
        ];

    private static async Task<(string[] Turns, string[] Cuts)> OnTheTablet(
        IPage page,
        ImmutableArray<RotationEntry> rotation,
        ImmutableArray<(string AthleteId, FloorNeeds Needs)> needs,
        string[] here,
        int minutes,
        Dictionary<string, int> kit
    )
    {
        string asked = JsonSerializer.Serialize(
            new
            {
                turns = rotation.Select(r => new
                {
                    station = r.Station,
                    exercise = r.ExerciseId,
                    start = r.StartMin,
                    end = r.EndMin,
                    athletes = r.AthleteIds,
                }),
                needs = needs.Select(n => new
                {
                    athlete = n.AthleteId,
                    exercise = n.Needs.ExerciseId,
                    low = n.Needs.IsLow,
                    needs_low = n.Needs.NeedsLow,
                    only_with = n.Needs.OnlyWith,
                    fresh = n.Needs.IsFresh,
                    kit = n.Needs.Kit.Select(k => new { id = k.Id, count = k.Count }),
                }),
                here,
                fresh = Fresh,
                minutes,
                kit,
                changeOver = ChangeOver,
            }
        );
        string[][] told = await page.EvaluateAsync<string[][]>(
            """
            text => {
              const q = JSON.parse(text), done = floorRule(q.turns, q.needs, a => q.here.includes(a), q.fresh, q.minutes, q.kit, q.changeOver);
              return [
                done.turns.map(t => `${t.station} ${t.exercise} ${t.start.toFixed(3)} ${t.end.toFixed(3)} ${t.athletes.join(",")}`),
                done.cuts.map(c => `${c.athlete} ${c.exercise} ${c.reason}`),
              ];
            }
            """,
            asked
        );
        return (told[0], told[1]);
    }

    private static string Said(RotationEntry turn) =>
        FormattableString.Invariant(
            $"{turn.Station} {turn.ExerciseId} {turn.StartMin:0.000} {turn.EndMin:0.000} {string.Join(',', turn.AthleteIds)}"
        );
}
