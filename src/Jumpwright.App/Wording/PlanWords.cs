using Jumpwright.Plans;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>How good a plan is, said plainly.</summary>
internal static class PlanWords
{
    /// <summary>Nobody could tell a plan better by this part of its worth; the part of what was left to choose may be all of it.</summary>
    private const double NearPart = 0.0005;

    /// <summary>Status, objective, bound and gap in one or two sentences.</summary>
    public static string Proof(Plan plan) =>
        plan.Status switch
        {
            PlanStatus.Optimal => T["plan.best", Points(plan.Objective), Points(plan.BestBound)],
            // What rounding leaves open is no gap; in parts of what little is left to choose it would look like one.
            PlanStatus.Feasible
                when plan.BestBound - plan.Objective <= Math.Max(1, NearPart * Math.Abs(plan.Objective ?? 0)) => T[
                "plan.near",
                Points(plan.Objective),
                Points(plan.BestBound)
            ],
            PlanStatus.Feasible => T[
                "plan.gap",
                Points(plan.Objective),
                Points(plan.BestBound),
                ItemWords.Number(100 * (plan.Gap ?? 0))
            ],
            PlanStatus.Infeasible => T["plan.impossible"],
            _ => T["plan.none"],
        };

    private static string Points(double? points) => points is { } p ? ItemWords.Number(Math.Round(p, 1)) : "–";
}
