using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Sessions;

/// <summary>Why nothing is planned, and whom to ask; with no more about health than the athlete needs on paper.</summary>
internal static class Nothing
{
    internal static Sentence For(Athlete athlete, PlanRequest request, PlannedSession session)
    {
        AthleteRequest? asked = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athlete.Id);
        Ruling[] shut = [.. (asked?.RulingsOn(session.Slot.Date) ?? []).Where(r => r.Effect is NothingPlanned)];
        if (shut.Length == 0)
        {
            if (request.HasBegun(athlete.Id, session.Slot.Id))
            {
                return $"What you did in this session is logged. Nothing more is planned for you in it.";
            }

            return $"Nothing is planned for you in this session: your work stands in the week's other sessions, or what is open to you needs more rest first. Ask your coach before you do any jumps.";
        }

        IEnumerable<Sentence> whom = shut.Select(r => ((NothingPlanned)r.Effect).WhomToAsk).Distinct();
        Sentence why = shut[0].LimitId switch
        {
            "stop-sign" => $"Something you reported has to be looked at before you jump.",
            "after-operation" =>
                $"After an operation jumps are planned only from a written permission, and there is none in force for this day.",
            "restriction" => $"What was written about what you may do has run out or can't be read.",
            "logged-pain" => $"Your last session hurt too much to plan the next one.",
            _ => $"Something has to be asked before you jump.",
        };
        return $"{why} No jumps and no loaded work for now. To be asked: {Sentence.Join("; ", whom)}. Your coach has the details.";
    }
}
