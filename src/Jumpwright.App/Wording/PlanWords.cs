using Jumpwright.Plans;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>How good a plan is, said plainly, and what the squad gets of it.</summary>
internal static class PlanWords
{
    /// <summary>Nobody could tell a plan better by this part of its worth; the part of what was left to choose may be all of it.</summary>
    private const double NearPart = 0.0005;

    /// <summary>Whether every limit is kept, and how much better a plan could be, in one or two sentences.</summary>
    public static string Proof(Plan plan) =>
        plan.Status is PlanStatus.Optimal or PlanStatus.Feasible ? $"{T["plan.kept"]} {Better(plan)}" : Better(plan);

    /// <summary>How much better a plan could be; why there is none where there is none.</summary>
    public static string Better(Plan plan) =>
        plan.Status switch
        {
            PlanStatus.Optimal => T["plan.best"],
            // What rounding leaves open is no gap; in parts of what little is left to choose it would look like one.
            PlanStatus.Feasible
                when plan.BestBound - plan.Objective <= Math.Max(1, NearPart * Math.Abs(plan.Objective ?? 0)) => T[
                "plan.near"
            ],
            PlanStatus.Feasible => PlanGains.CouldBeBetterBy(plan) is { } part
                ? T["plan.gap", ItemWords.Number(Math.Round(100 * part, 1, MidpointRounding.ToPositiveInfinity))]
                : T["plan.gap.unknown"],
            PlanStatus.Infeasible => T["plan.impossible"],
            _ => T["plan.none"],
        };

    /// <summary>What is in the plan, of what there might be: counts that two plans can be compared by.</summary>
    public static string Gains(Plan plan, PlanRequest request)
    {
        var gains = PlanGains.Of(plan, request);
        return T[
            "plan.gains",
            gains.Sessions,
            gains.SessionsOpen,
            gains.Sets,
            gains.SetsWished,
            gains.Steps,
            gains.StepsOpen,
            gains.Contacts
        ];
    }
}
