using Jumpwright.Progression;
using Jumpwright.Safety;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>What it takes to own an exercise, with its numbers: what must be seen, and what must not.</summary>
internal static class OwnWords
{
    public static string Of(LimitBook limits)
    {
        LadderOptions options = LadderOptions.From(limits);
        return T[
            "ladder.own.what",
            options.SessionsToOwn,
            options.OwnWithinDays,
            ItemWords.Number(options.PainNextMorningAtMost),
            options.LandingFaultsThatHold,
            ItemWords.Number(options.PainDuringAtMost)
        ];
    }
}
