namespace Jumpwright.Plans;

/// <summary>How the search ended (contracts §3).</summary>
public enum PlanStatus
{
    Optimal,
    Feasible,
    NoneFound,
    Infeasible,
}
