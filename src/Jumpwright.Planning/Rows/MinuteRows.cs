using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>What an athlete does fits into the session.</summary>
internal static class MinuteRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (SessionSlot slot in squad.Slots)
            {
                int limit = squad.Request.WorkSeconds(slot);
                var here = squad.In(who, slot).ToList();
                if (
                    here.Count == 0
                    || !squad.Asked.ForLimit(
                        "session-minutes",
                        $"{who.Athlete.Id}:{slot.Id}",
                        $"{who.Athlete.Name} has {limit / 60.0:0.#} min in {slot.Said} for work and changes."
                    )
                )
                {
                    continue;
                }

                LinearExprBuilder sum = LinearExpr.NewBuilder();
                foreach (Choice choice in here)
                {
                    choice.AddTo(
                        sum,
                        choice.Menu.SecondsOf(1) + who.PairSeconds(choice.Menu, 1),
                        squad.Request.ChangeOverSeconds
                    );
                }

                squad.Model.Add((LinearExpr)sum <= limit);
            }
        }
    }
}
