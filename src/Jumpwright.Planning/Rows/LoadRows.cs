using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Planning.Rows;

/// <summary>What items of several sessions add up to, and how a tissue's demand grows from week to week.</summary>
internal static class LoadRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (LoadCap cap in who.Caps)
            {
                AddCap(squad, who, cap);
            }

            foreach (LoadGrowth growth in who.Growths)
            {
                AddGrowth(squad, who, growth);
            }
        }
    }

    private static void AddCap(SquadModel squad, AthleteRequest who, LoadCap cap)
    {
        var counted = squad.ByAthlete(who).Where(c => cap.SessionIds.Contains(c.Slot.Id)).ToList();
        if (
            counted.Sum(c => Each(c, cap.Tissue) * c.Menu.Dose.SetsMax) <= cap.AtMost
            || !squad.Asked.ForLimit(
                cap.LimitId,
                $"{who.Athlete.Id}:{cap.Subject}",
                $"{who.Athlete.Name}: at most {cap.AtMost} {Counted(cap)} from {new SaidSession(cap.SessionIds[0])}. {cap.Because}"
            )
        )
        {
            return;
        }

        LinearExprBuilder sum = LinearExpr.NewBuilder();
        foreach (Choice choice in counted)
        {
            choice.AddTo(sum, Each(choice, cap.Tissue));
        }

        squad.Model.Add((LinearExpr)sum <= cap.AtMost);
    }

    private static void AddGrowth(SquadModel squad, AthleteRequest who, LoadGrowth growth)
    {
        var later = squad.ByAthlete(who).Where(c => growth.Later.Contains(c.Slot.Id)).ToList();
        if (
            later.Sum(c => Each(c, growth.Tissue) * c.Menu.Dose.SetsMax) <= growth.Step
            || !squad.Asked.ForLimit(
                "weekly-growth-in-plan",
                $"{who.Athlete.Id}:{growth.Subject}",
                $"{who.Athlete.Name}: the {LimitNames.Of(growth.Tissue)} is asked for at most {growth.Percent} % and {growth.Step} more than in the week before {new SaidSession(growth.Later[0])}."
            )
        )
        {
            return;
        }

        LinearExprBuilder sum = LinearExpr.NewBuilder();
        foreach (Choice choice in later)
        {
            choice.AddTo(sum, 100L * Each(choice, growth.Tissue));
        }

        foreach (Choice choice in squad.ByAthlete(who).Where(c => growth.Earlier.Contains(c.Slot.Id)))
        {
            choice.AddTo(sum, -(100L + growth.Percent) * Each(choice, growth.Tissue));
        }

        squad.Coupling.Add(squad.Model.Add((LinearExpr)sum <= 100L * growth.Step).Index);
    }

    private static int Each(Choice choice, Tissue? tissue) => choice.Menu.LoadOf(choice.Exercise, tissue, 1);

    private static Sentence Counted(LoadCap cap) =>
        cap.Tissue is { } tissue
            ? Sentence.Of($"contacts × tier on the {LimitNames.Of(tissue)}")
            : Sentence.Of($"contacts");
}
