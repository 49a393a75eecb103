namespace Jumpwright.Plans.Rules;

/// <summary>Objective, bound, gap and status say what the plan is.</summary>
public sealed class StatedObjective : Limit
{
    public override string Id => "stated-objective";
    public override string Sentence => "Objective, bound, gap and status say what the plan is.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        if (plan.Status is PlanStatus.Infeasible or PlanStatus.NoneFound)
        {
            if (!plan.Sessions.IsEmpty || plan.Objective is not null)
            {
                yield return Wrong(1, $"A plan without a solution shows sessions or an objective.");
            }

            yield break;
        }

        long points = PlanPoints.Of(plan.Sessions, request);
        if (plan.Objective is not { } objective || Math.Abs(objective - points) > 1e-6)
        {
            yield return Wrong(
                Math.Abs((plan.Objective ?? 0) - points),
                $"The plan states an objective of {plan.Objective}; its items add up to {points}."
            );
            yield break;
        }

        if (plan.BestBound is not { } bound || bound < objective - 1e-6)
        {
            yield return Wrong(1, $"The bound {plan.BestBound} lies below the objective {objective}.");
            yield break;
        }

        double span = bound - plan.ObjectiveEmpty;
        double gap = span <= 1e-9 ? 0 : (bound - objective) / span;
        if (plan.Gap is not { } stated || Math.Abs(stated - gap) > 1e-9)
        {
            yield return Wrong(Math.Abs((plan.Gap ?? 0) - gap), $"The gap is {gap:0.######}, not {plan.Gap:0.######}.");
        }

        if (plan.Status == PlanStatus.Optimal && gap > 1e-6)
        {
            yield return Wrong(gap, $"The plan is called optimal at a gap of {gap:0.######}.");
        }
    }

    private Breach Wrong(double amount, Quantities.Sentence sentence) =>
        new(Id, null, null, amount, "points", sentence);
}
