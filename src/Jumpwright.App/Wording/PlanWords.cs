using Jumpwright.Plans;

namespace Jumpwright.App.Wording;

/// <summary>How good a plan is, said plainly.</summary>
internal static class PlanWords
{
    /// <summary>Status, objective, bound and gap in one or two sentences.</summary>
    public static string Proof(Plan plan) =>
        plan.Status switch
        {
            PlanStatus.Optimal =>
                $"Every hard limit is kept, and no plan is worth more: {Points(plan.Objective)} points, bound {Points(plan.BestBound)}.",
            // What rounding leaves open is no gap; in parts of what little is left to choose it would look like one.
            PlanStatus.Feasible when plan.BestBound - plan.Objective <= 1 =>
                $"Every hard limit is kept. The plan is worth {Points(plan.Objective)} points; proven: no plan is worth more "
                    + $"than {Points(plan.BestBound)}, one point more at the most.",
            PlanStatus.Feasible =>
                $"Every hard limit is kept. The plan is worth {Points(plan.Objective)} points; proven: no plan is worth more "
                    + $"than {Points(plan.BestBound)} (gap {100 * (plan.Gap ?? 0):0.##} %).",
            PlanStatus.Infeasible => "It is proven that no plan keeps all of this at once.",
            _ => "No plan was found in the time given; that does not prove that there is none. Give it longer.",
        };

    private static string Points(double? points) => points is { } p ? ItemWords.Number(Math.Round(p, 1)) : "–";
}
