using System.Diagnostics;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Bench;

/// <summary>How long a session's rotation takes when it is made anew at roll call.</summary>
internal static class RollCallBench
{
    public static void Run(int seed, int athletes, TextWriter to)
    {
        PlanRequest request = BenchSquads.Of(seed, athletes, weeks: 2) with
        {
            Budget = new SolveBudget { DeterministicTime = 1 },
        };
        Plan plan = Planner.Solve(request);
        List<(double Clock, double Processor)> times = [];
        foreach (PlannedSession session in plan.Sessions)
        {
            // One in ten is missing, one box too, and ten minutes.
            string[] here = [.. session.Athletes.Select(a => a.AthleteId).Where((_, n) => n % 10 != 3)];
            Dictionary<string, int> kit = new(StringComparer.Ordinal)
            {
                ["plyo-box"] = request.CountOf("plyo-box") - 1,
            };
            TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
            var watch = Stopwatch.StartNew();
            RolledCall called = RollCall.Make(session, request, here, kit, session.Slot.Minutes - 10);
            times.Add(
                (watch.Elapsed.TotalSeconds, (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds)
            );
            to.WriteLine(
                $"{session.Slot.Id}: {here.Length} of {session.Athletes.Length} here, {called.Cuts.Length} cuts, {times[^1].Clock:0.00} s on the clock, {times[^1].Processor:0.00} s of processor"
            );
        }

        to.WriteLine(
            $"longest {times.Max(t => t.Clock):0.00} s on the clock, {times.Max(t => t.Processor):0.00} s of processor"
        );
    }
}
