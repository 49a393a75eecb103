using System.Diagnostics;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Bench;

/// <summary>What roll call leaves of a session with somebody away, less kit and less time, and how long it takes.</summary>
internal static class RollCallBench
{
    private const int Times = 20;

    public static void Run(int seed, int athletes, TextWriter to)
    {
        PlanRequest request = BenchSquads.Of(seed, athletes, weeks: 2) with
        {
            Budget = new SolveBudget { DeterministicTime = 1 },
        };
        Plan plan = Planner.Solve(request);
        // The first call compiles the code.
        RollCall.Make(plan.Sessions[0], request, [], null, null);
        foreach (
            (string what, int boxes, int minutes, bool away) in ((string, int, int, bool)[])
                [
                    ("one box fewer", 1, 0, false),
                    ("two boxes fewer", 2, 0, false),
                    ("three boxes fewer", 3, 0, false),
                    ("one in ten away, one box and ten minutes fewer", 1, 10, true),
                ]
        )
        {
            int planned = 0,
                left = 0;
            double longest = 0;
            foreach (PlannedSession session in plan.Sessions)
            {
                string[] here = [.. session.Athletes.Select(a => a.AthleteId).Where((_, n) => !away || n % 10 != 3)];
                Dictionary<string, int> kit = new(StringComparer.Ordinal)
                {
                    ["plyo-box"] = request.CountOf("plyo-box") - boxes,
                };
                var watch = Stopwatch.StartNew();
                RolledCall called = RollCall.Make(session, request, here, kit, session.Slot.Minutes - minutes);
                for (int time = 1; time < Times; time++)
                {
                    called = RollCall.Make(session, request, here, kit, session.Slot.Minutes - minutes);
                }

                longest = Math.Max(longest, watch.Elapsed.TotalMilliseconds / Times);
                planned += session.Athletes.Where(a => here.Contains(a.AthleteId)).Sum(a => a.Items.Sum(i => i.Sets));
                left += called.Session.Athletes.Sum(a => a.Items.Sum(i => i.Sets));
            }

            to.WriteLine(
                $"{what}: {left} of {planned} sets left ({100.0 * left / planned:0.0} %), a session in {longest:0.0} ms at the longest"
            );
        }
    }
}
