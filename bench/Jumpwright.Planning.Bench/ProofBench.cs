using System.Collections.Immutable;
using System.Diagnostics;
using Jumpwright.Planning.Collisions;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Tests.Planning;

namespace Jumpwright.Planning.Bench;

/// <summary>The planner's promises on more squads than a test run has time for.</summary>
internal static class ProofBench
{
    /// <summary>The optimum and its bound against trying every plan.</summary>
    public static bool Brute(int first, int squads, TextWriter to)
    {
        var watch = Stopwatch.StartNew();
        int wrong = 0;
        for (int seed = first; seed < first + squads; seed++)
        {
            PlanRequest request = TinySquads.Of(seed);
            double? best = BruteForce.Best(request);
            Plan plan = Planner.Solve(request);
            if (plan.Objective != best || plan.BestBound != best || IndependentChecker.Check(plan, request).Count > 0)
            {
                wrong++;
                to.WriteLine($"seed {seed}: planned {plan.Objective}, bound {plan.BestBound}, best {best}");
            }
        }

        to.WriteLine(
            $"{squads} tiny squads in {watch.Elapsed.TotalSeconds:0} s: {wrong} differ from the best of all plans"
        );
        return wrong == 0;
    }

    /// <summary>Each named collision is infeasible, and feasible without any one of its members.</summary>
    public static bool Collisions(int first, int cases, TextWriter to)
    {
        var watch = Stopwatch.StartNew();
        int found = 0,
            sets = 0,
            large = 0,
            wrong = 0;
        for (int seed = first; found < cases; seed++)
        {
            PlanRequest request = TinySquads.Impossible(seed);
            Plan plan = Planner.Solve(request);
            if (plan.Status != PlanStatus.Infeasible)
            {
                continue;
            }

            found++;
            foreach (Collision collision in plan.Collisions)
            {
                string[] ids = [.. collision.Requirements.Select(r => r.Id)];
                sets++;
                large += ids.Length > 2 ? 1 : 0;
                PlanStatus Answer(IEnumerable<string> asked) =>
                    CollisionFinder.Answer(request, asked, CancellationToken.None);
                if (
                    Answer(ids) != PlanStatus.Infeasible
                    || ids.Any(one => Answer(ids.Where(i => i != one)) != PlanStatus.Feasible)
                )
                {
                    wrong++;
                    to.WriteLine($"seed {seed}: {string.Join(", ", ids)}");
                }
            }

            if (plan.Collisions.IsEmpty)
            {
                wrong++;
                to.WriteLine($"seed {seed}: impossible, and nothing named");
            }
        }

        to.WriteLine(
            $"{found} impossible squads in {watch.Elapsed.TotalSeconds:0} s: {sets} sets named, {large} of more than two; {wrong} not minimal"
        );
        return wrong == 0;
    }

    /// <summary>After a tissue turns sore no remaining session asks more of it than before, for anybody.</summary>
    public static bool Sore(int first, int squads, TextWriter to)
    {
        var watch = Stopwatch.StartNew();
        int plans = 0,
            changed = 0,
            raised = 0,
            broken = 0;
        for (int seed = first; seed < first + squads; seed++)
        {
            PlanRequest request = RandomSquads.Of(seed, 2);
            Plan before = Planner.Solve(request);
            if (before.Objective is null)
            {
                continue;
            }

            var tissue = (Tissue)(seed % 4);
            Ruling pain = new(
                "tendon-pain",
                new TierAtMost(tissue, seed % 3),
                $"Sore.",
                new Source("house-rule", "made up", SourceKind.House)
            );
            PlanRequest sore = request with
            {
                Athletes =
                [
                    .. request.Athletes.Select(a =>
                        a with
                        {
                            RulingsByDay = request
                                .Slots.Select(s => s.Date)
                                .Distinct()
                                .ToImmutableDictionary(d => d, d => a.RulingsOn(d).Add(pain)),
                        }
                    ),
                ],
            };
            Replanned after = Replanner.Replan(before, sore);
            plans++;
            changed += after.Changes.IsEmpty ? 0 : 1;
            broken += IndependentChecker.Check(after.Plan, after.Request).Count > 0 ? 1 : 0;
            foreach (AthleteRequest who in request.Athletes)
            {
                foreach (SessionSlot slot in request.Slots)
                {
                    if (Load(after.Plan, who, slot, tissue, request) > Load(before, who, slot, tissue, request))
                    {
                        raised++;
                        to.WriteLine($"seed {seed}: {tissue} of {who.Athlete.Id} in {slot.Id}");
                    }
                }
            }
        }

        to.WriteLine(
            $"{plans} plans of {squads} squads made anew in {watch.Elapsed.TotalSeconds:0} s, {changed} changed: a sore tissue asked for more {raised} times; {broken} broke a limit"
        );
        return raised == 0 && broken == 0;
    }

    private static int Load(Plan plan, AthleteRequest who, SessionSlot slot, Tissue tissue, PlanRequest request) =>
        plan
            .Sessions.Where(s => s.Slot.Id == slot.Id)
            .SelectMany(s => s.Athletes)
            .Where(a => a.AthleteId == who.Athlete.Id)
            .SelectMany(a => a.Items)
            .Sum(i => i.Contacts * request.Catalogue.Find(i.Dose.ExerciseId)!.Demand.GetValueOrDefault(tissue));
}
