using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Sessions;

/// <summary>Why nothing is planned, and who may change it; with no more about health than the reader needs.</summary>
/// <param name="OnCard">To the athlete, on paper.</param>
/// <param name="OnFloor">Beside the name in the roll on the floor: who alone may change it, as the rules of safety have it.</param>
/// <param name="Reason">In a few words for the coach.</param>
/// <param name="IsShut">True where a rule of safety plans nothing, and not the week's own order.</param>
internal sealed record Nothing(Sentence OnCard, Sentence OnFloor, Sentence Reason, bool IsShut)
{
    /// <summary>Rules that end by the written word of a licensed person alone.</summary>
    private static readonly string[] ByLicensed = ["stop-sign", "after-operation"];

    internal static Nothing For(Athlete athlete, PlanRequest request, PlannedSession session)
    {
        AthleteRequest? asked = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athlete.Id);
        if (ShutBy(asked?.RulingsOn(session.Slot.Date) ?? []) is { } shut)
        {
            return shut;
        }

        if (request.HasBegun(athlete.Id, session.Slot.Id))
        {
            return new(
                $"What you did in this session is logged. Nothing more is planned for you in it.",
                $"What was logged stands. Nothing more is planned in this session.",
                $"begun: what was logged stands, and nothing more is planned here",
                IsShut: false
            );
        }

        return new(
            $"Nothing is planned for you in this session: your work stands in the week's other sessions, or what is open to you needs more rest first. Ask your coach before you do any jumps.",
            $"Nothing planned. No jumps before the coach has said so.",
            $"not planned here: the work stands in the week's other sessions, or needs more rest first",
            IsShut: false
        );
    }

    /// <summary>What came after the plan was made, and closes more than it knew: until there is another, nothing of it is done.</summary>
    internal static Nothing PlannedBefore { get; } =
        new(
            $"Something was written since this was planned that closes a part of your work. No jumps before your coach has planned anew.",
            $"Planned before something was written that closes a part of it: plan anew first.",
            $"something was written since: plan anew first",
            IsShut: true
        );

    /// <summary>The same where rules of safety plan nothing; null where none of them does.</summary>
    internal static Nothing? ShutBy(IEnumerable<Ruling> rulings)
    {
        Ruling[] shut =
        [
            .. rulings
                .Where(r => r.Effect is NothingPlanned)
                // What only a licensed person ends is said before what an answer ends.
                .OrderBy(r => ByLicensed.Contains(r.LimitId) ? 0 : 1),
        ];
        if (shut.Length == 0)
        {
            return null;
        }

        IEnumerable<Sentence> whom = shut.Select(r => ((NothingPlanned)r.Effect).WhomToAsk).Distinct();
        (Sentence why, Sentence reason) = shut[0].LimitId switch
        {
            "stop-sign" => (
                Sentence.Of($"Something you reported has to be looked at before you jump."),
                Sentence.Of($"a stop sign that no licensed person has lifted")
            ),
            "after-operation" => (
                Sentence.Of(
                    $"After an operation jumps are planned only from a written permission, and there is none in force for this day."
                ),
                Sentence.Of($"operated, and no written permission is in force")
            ),
            "restriction" => (
                Sentence.Of($"What was written about what you may do forbids it, has run out or can't be read."),
                Sentence.Of($"a written restriction that forbids everything, has run out or can't be read")
            ),
            "logged-pain" => (
                Sentence.Of($"Your last session hurt too much to plan the next one."),
                Sentence.Of($"too much pain in the last session")
            ),
            _ => (
                Sentence.Of($"Something has to be asked before you jump."),
                Sentence.Of($"something has to be asked first")
            ),
        };
        return new(
            $"{why} No jumps and no loaded work for now. To be asked: {Sentence.Join("; ", whom)}. Your coach has the details.",
            ByLicensed.Contains(shut[0].LimitId)
                ? Sentence.Of(
                    $"Nothing planned: no jumps, no loaded work. The coach can't change that; only a licensed person does, in writing."
                )
                : Sentence.Of(
                    $"Nothing planned: no jumps, no loaded work, before whoever the card names has been asked."
                ),
            reason,
            IsShut: true
        );
    }
}
