using System.Diagnostics;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Tests.Planning;

namespace Jumpwright.Planning.Bench;

/// <summary>Gap against time on the benchmark squads; every plan is held against the independent checker.</summary>
internal static class GapBench
{
    public static void Run(
        int first,
        int seeds,
        int athletes,
        int weeks,
        double units,
        double kitShare,
        bool tell,
        TextWriter to
    )
    {
        to.WriteLine(
            $"{athletes} athletes, {weeks} weeks, budget {units:0.#}, kit × {kitShare:0.##}; load of the machine {Load()}"
        );
        for (int seed = first; seed < first + seeds; seed++)
        {
            PlanRequest request = BenchSquads.Of(seed, athletes, weeks, kitShare) with
            {
                Budget = new SolveBudget { DeterministicTime = units },
            };
            TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
            var watch = Stopwatch.StartNew();
            Plan plan = Planner.Solve(request, tell ? new Now(to) : null, default);
            double wall = watch.Elapsed.TotalSeconds;
            double busy = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            int wrong = IndependentChecker.Check(plan, request).Count;
            long greedy = Greedy.Points(request);
            to.WriteLine(
                $"seed {seed}: {plan.Objective} of at most {plan.BestBound}, gap {100 * plan.Gap:0.00} %, {wall:0.0} s on the clock, {busy:0.0} s of processor, {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MB; greedy {greedy} ({100.0 * (plan.BestBound - greedy) / plan.BestBound:0.0} % below the bound); breaches {wrong}"
            );
            string binding = string.Join(
                ", ",
                plan.Limits.Where(l => l.Sense == "at-most" && l.Highest is { } h && h >= 0.97 * l.Limit)
                    .GroupBy(l => Kind(l.Id))
                    .OrderBy(g => g.Key, StringComparer.Ordinal)
                    .Select(g => $"{g.Key} {g.Count()}")
            );
            to.WriteLine($"   binding (97 % and more of the limit at its highest): {binding}; load {Load()}");
        }
    }

    /// <summary>How far the planner is, beside the processor time spent.</summary>
    private sealed class Now(TextWriter to) : IProgress<Sentence>
    {
        private readonly TimeSpan _began = Process.GetCurrentProcess().TotalProcessorTime;

        public void Report(Sentence value) =>
            to.WriteLine(
                $"   {(Process.GetCurrentProcess().TotalProcessorTime - _began).TotalSeconds:0.0} s of processor: {value}"
            );
    }

    private static string Kind(string id) =>
        id.StartsWith("kit-minutes", StringComparison.Ordinal) ? "kit-minutes"
        : id.StartsWith("fresh-kit", StringComparison.Ordinal) ? "fresh-kit-minutes"
        : id.StartsWith("weekly", StringComparison.Ordinal) ? "tissue-weeks"
        : id;

    private static string Load() =>
        File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "?";
}
