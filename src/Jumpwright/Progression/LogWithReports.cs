using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>
/// The log of work with what was reported of the same days: where a report of pain and the log of its day disagree, the worse of the two
/// holds. A report names no exercise, so it counts for all of its day; pain of the next morning counts for the day before. It only takes
/// away: a low report never stands for a score that nobody logged.
/// </summary>
internal static class LogWithReports
{
    /// <summary>What was done up to a day.</summary>
    internal static ImmutableArray<CompletedItem> Of(History history, LocalDate asOf, LadderOptions options)
    {
        ILookup<(LocalDate Date, PainTime Time), double> said = history
            .Symptoms.Where(s =>
                SymptomKinds.Read(s.Kind) is SymptomKinds.Pain or SymptomKinds.Stiffness && s.Date <= asOf
            )
            .Where(s => s.Score is not null)
            .ToLookup(s => (s.Date, PainTimes.Read(s.When)), s => s.Score!.Value);
        return
        [
            .. history
                .Completed.Where(c => c.Date <= asOf)
                .Select(c =>
                    c with
                    {
                        PainDuring = Worse(
                            c.PainDuring,
                            said[(c.Date, PainTime.DuringOrAfter)],
                            options.PainDuringAtMost
                        ),
                        PainNextMorning = Worse(
                            c.PainNextMorning,
                            said[(c.Date.PlusDays(1), PainTime.Morning)],
                            options.PainNextMorningAtMost
                        ),
                    }
                ),
        ];
    }

    private static double? Worse(double? logged, IEnumerable<double> said, double atMost)
    {
        double worst = said.DefaultIfEmpty(0).Max();
        return worst > Math.Max(logged ?? 0, atMost) ? worst : logged;
    }
}
