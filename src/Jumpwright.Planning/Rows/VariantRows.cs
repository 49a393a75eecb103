using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>One variant of an exercise in a session.</summary>
internal static class VariantRows
{
    public static void Add(SquadModel squad)
    {
        foreach (var session in squad.InEach)
        {
            AthleteRequest who = session.First().Who;
            SessionSlot slot = session.First().Slot;
            var families =
                from choice in session
                let key = Variants.KeyOf(choice.Exercise, choice.Menu.Dose.DropHeightM)
                where key is not null && !Variants.CountsWithPartner(choice.Menu, who, squad.Request)
                group choice by key.Value;
            foreach (var family in families)
            {
                int most = Variants.AtMost(who, slot.Id, family.Key, squad.Request);
                if (
                    family.Count() > most
                    && squad.Asked.ForLimit(
                        "variants-per-session",
                        $"{who.Athlete.Id}:{slot.Id}:{family.Key.Family}{(family.Key.Low ? ":low" : "")}",
                        $"At most {most} of {Sentence.Join(", ", family.Select(c => Sentence.Of($"{c.Exercise.SaidId:small}")))} for {who.Athlete.Name} in {slot.Said}: variants of one exercise."
                    )
                )
                {
                    squad.Model.Add(LinearExpr.Sum(family.Select(c => c.Done)) <= most);
                }
            }
        }
    }
}
