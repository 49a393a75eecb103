using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>A tissue's demand grows from week to week of the plan by no more than the athlete's level allows.</summary>
public sealed class WeeklyGrowth : Limit
{
    public override string Id => "weekly-growth-in-plan";
    public override string Sentence => "A tissue's weekly demand grows by no more than the athlete's level allows.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (AthleteRequest who in request.Athletes)
        {
            foreach (LoadGrowth growth in who.Growths)
            {
                long earlier = LoadCaps.LoadOf(Reading.ItemsOf(who, plan, request), growth.Earlier, growth.Tissue);
                long later = LoadCaps.LoadOf(Reading.ItemsOf(who, plan, request), growth.Later, growth.Tissue);
                long over = (100 * later) - ((100 + growth.Percent) * earlier) - (100L * growth.Step);
                if (over > 0)
                {
                    yield return new(
                        Id,
                        who.Athlete.Id,
                        growth.Later[0],
                        over / 100.0,
                        LoadCaps.UnitOf(growth.Tissue),
                        $"{who.Athlete.Name} would load {LoadCaps.Word(growth.Tissue)} with {later} in the week of {new SaidSession(growth.Later[0])} after {earlier} in the week before; {growth.Percent} % and {growth.Step} more are allowed."
                    );
                }
            }
        }
    }
}
