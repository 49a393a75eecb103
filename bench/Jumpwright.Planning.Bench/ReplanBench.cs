using System.Collections.Immutable;
using System.Diagnostics;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Planning;

namespace Jumpwright.Planning.Bench;

/// <summary>
/// One athlete of a squad planned anew after a knee turned sore: at a low tier, and at none, where hardly anything is left on the
/// menu. Every plan is held against the independent checker.
/// </summary>
internal static class ReplanBench
{
    public static void Run(int seed, int athletes, int cases, double units, TextWriter to)
    {
        PlanRequest request = BenchSquads.Of(seed, athletes) with
        {
            Budget = new SolveBudget { DeterministicTime = units },
        };
        Plan before = Planner.Solve(request);
        foreach (int tier in new[] { 1, 0 })
        {
            List<(double Clock, double Processor)> times = [];
            int wrong = 0;
            int others = 0;
            foreach (AthleteRequest who in request.Athletes.Take(cases))
            {
                PlanRequest sore = request with
                {
                    Athletes = [.. request.Athletes.Select(a => a == who ? Sore(a, request, tier) : a)],
                };
                TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
                var watch = Stopwatch.StartNew();
                Replanned after = Replanner.Replan(before, sore);
                times.Add(
                    (watch.Elapsed.TotalSeconds, (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds)
                );
                wrong += IndependentChecker.Check(after.Plan, after.Request).Count;
                int changed = after.Changes.Count(c => c.AthleteId == who.Athlete.Id);
                others += after.Changes.Length - changed;
                to.WriteLine(
                    $"{who.Athlete.Id}, {who.Menu.Length / request.Slots.Length} exercises, knee at tier {tier}: {changed} items changed, {after.Changes.Length - changed} of others, gap {100 * after.Plan.Gap:0.00} %, {times[^1].Clock:0.00} s on the clock, {times[^1].Processor:0.00} s of processor"
                );
            }

            to.WriteLine(
                $"tier {tier}: longest {times.Max(t => t.Clock):0.00} s on the clock, {times.Max(t => t.Processor):0.00} s of processor; {others} items of others changed; {wrong} breaches"
            );
        }
    }

    private static AthleteRequest Sore(AthleteRequest who, PlanRequest request, int tier) =>
        who with
        {
            RulingsByDay = request.Slots.ToImmutableDictionary(
                s => s.Date,
                _ =>
                    ImmutableArray.Create(
                        new Ruling(
                            "tendon-pain",
                            new TierAtMost(Tissue.Patellar, tier),
                            $"Made up.",
                            Bibliography.Get("house-rule")
                        )
                    )
            ),
        };
}
