using Jumpwright.Plans;
using Jumpwright.Safety;

namespace Jumpwright.Planning.Rows;

/// <summary>Safety's rulings close entries.</summary>
internal static class RulingRows
{
    public static void Add(SquadModel squad)
    {
        foreach (Choice choice in squad.Choices)
        {
            foreach (Ruling ruling in choice.Who.RulingsOn(choice.Slot.Date))
            {
                if (
                    ruling.Effect.Forbids(choice.Exercise.FactsAt(choice.Menu.Dose.DropHeightM))
                    && squad.Asked.ForLimit(
                        "rulings-of-the-day",
                        $"{choice.Who.Athlete.Id}:{ruling.LimitId}",
                        $"{choice.Who.Athlete.Name}: {ruling.Because}"
                    )
                )
                {
                    squad.Close(choice);
                }
            }
        }
    }
}
