using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Progression;

/// <summary>Sessions that went wrong: too many landing faults, pain in the work above what stops it, or pain the morning after.</summary>
internal static class Flaws
{
    /// <summary>What was wrong with one exercise of one session, in words, or null.</summary>
    internal static Sentence? Of(IEnumerable<CompletedItem> session, LadderOptions options)
    {
        int faults = 0;
        double pain = 0;
        double during = 0;
        foreach (CompletedItem item in session)
        {
            faults += item.LandingFaults ?? 0;
            pain = Math.Max(pain, item.PainNextMorning ?? 0);
            during = Math.Max(during, item.PainDuring ?? 0);
        }

        return pain > options.PainNextMorningAtMost ? Sentence.Of($"pain {pain:0.#}/10 the morning after")
            : during > options.PainDuringAtMost ? Sentence.Of($"pain {during:0.#}/10 in the work of")
            : faults >= options.LandingFaultsThatHold ? Sentence.Of($"{faults} landing faults on")
            : null;
    }

    /// <summary>The log without them: work that went wrong keeps nothing alive and brings nobody back.</summary>
    internal static ImmutableArray<CompletedItem> Without(IEnumerable<CompletedItem> done, LadderOptions options) =>
        [
            .. done.GroupBy(c => (c.Date, c.SessionId, c.ExerciseId))
                .Where(session => Of(session, options) is null)
                .SelectMany(session => session),
        ];
}
