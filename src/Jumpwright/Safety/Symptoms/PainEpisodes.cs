using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety.Symptoms;

/// <summary>
/// Which reports of pain and stiffness still count. All of the last days do (limit <c>pain-window</c>), and beside them what was last
/// said before: silence is no sign of healing. A later report of 0 at the same place answers the earlier ones: all of them if it is
/// about the next morning or says no time; only those during or after work if it is about that.
/// </summary>
internal static class PainEpisodes
{
    /// <summary>The limit that says how long.</summary>
    public const string Window = "pain-window";

    public static ImmutableArray<PainEpisode> Of(ImmutableArray<SymptomReport> reports, LocalDate day, int windowDays)
    {
        SymptomReport[] pains =
        [
            .. reports.Where(r =>
                SymptomKinds.Read(r.Kind) is SymptomKinds.Pain or SymptomKinds.Stiffness or SymptomKinds.Other
            ),
        ];
        ImmutableArray<PainEpisode>.Builder found = ImmutableArray.CreateBuilder<PainEpisode>();
        foreach (
            IGrouping<BodySite, SymptomReport> group in pains
                .Where(r => r.Score is not 0)
                .GroupBy(r => BodySite.Of(r.Site, r.Side))
        )
        {
            SymptomReport[] open = [.. group.Where(r => !pains.Any(zero => Answers(zero, r)))];
            SymptomReport[] inWindow = [.. open.Where(r => InWindow(r, day, windowDays))];
            SymptomReport[] before = [.. open.Where(r => !InWindow(r, day, windowDays))];
            SymptomReport[] lastBefore = [.. before.Where(r => r.Date == before[^1].Date)];
            ImmutableArray<SymptomReport> counting = [.. lastBefore, .. inWindow];
            ImmutableArray<SymptomReport> recent = [.. group.Where(r => InWindow(r, day, windowDays))];
            if (counting.Length + recent.Length > 0)
            {
                found.Add(new(group.Key, counting, recent, PainReadings.Of(group.Key, counting.Union(recent))));
            }
        }

        return found.ToImmutable();
    }

    /// <summary>What ends a judgement by the worst report that counts, as the rest of a sentence.</summary>
    public static Sentence Ends(LimitBook limits, string scoreLimit) =>
        $"with a later report of 0 for the same place and moment, or once {limits.Whole(Window)} days of reports held no more than {limits[scoreLimit]:0.#}.";

    private static bool InWindow(SymptomReport report, LocalDate day, int windowDays) =>
        Period.DaysBetween(report.Date, day) <= windowDays;

    private static bool Answers(SymptomReport zero, SymptomReport pain) =>
        zero.Score is 0
        && zero.Date > pain.Date
        && BodySite.Of(zero.Site, zero.Side) is { Name.Length: > 0 } site
        && site.Covers(BodySite.Of(pain.Site, pain.Side))
        && (
            PainTimes.Read(zero.When) is PainTime.Morning or PainTime.Unsaid
            || (
                PainTimes.Read(zero.When) is PainTime.DuringOrAfter
                && PainTimes.Read(pain.When) is PainTime.DuringOrAfter
            )
        );
}
