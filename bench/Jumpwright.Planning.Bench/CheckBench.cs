using System.Diagnostics;
using Jumpwright.Plans;
using Jumpwright.Tests.Planning;

namespace Jumpwright.Planning.Bench;

/// <summary>Random squads of up to 8 athletes; every plan is held against a checker that shares no code with the model.</summary>
internal static class CheckBench
{
    public static bool Run(int first, int squads, TextWriter to)
    {
        var watch = Stopwatch.StartNew();
        int plans = 0,
            none = 0,
            impossible = 0,
            broken = 0;
        for (int seed = first; seed < first + squads; seed++)
        {
            PlanRequest request = RandomSquads.Of(seed, 8);
            Plan plan = Planner.Solve(request);
            switch (plan.Status)
            {
                case PlanStatus.Infeasible:
                    impossible++;
                    break;
                case PlanStatus.NoneFound:
                    none++;
                    break;
                default:
                    plans++;
                    break;
            }

            List<string> wrong = IndependentChecker.Check(plan, request);
            if (wrong.Count > 0)
            {
                broken++;
                to.WriteLine($"seed {seed}: {string.Join("; ", wrong)}");
            }
        }

        to.WriteLine(
            $"{squads} squads from seed {first} in {watch.Elapsed.TotalSeconds:0} s: {plans} plans, {impossible} proven impossible, {none} none found; {broken} broke a limit"
        );
        return broken == 0;
    }
}
