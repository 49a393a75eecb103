using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Prescribing.Reports;

/// <summary>One athlete's page.</summary>
internal static class AthleteReports
{
    internal static Report Of(Prescription facts, LocalDate asOf, Sentence foot, PlotUnits units) =>
        new(
            facts.History.Athlete.Id,
            facts.History.Athlete.Name,
            asOf,
            [
                Limits(facts),
                Changed(facts, asOf, units),
                .. CurveSections.Of(facts.Curves, units),
                Gained(facts),
                Next(facts),
            ],
            foot
        )
        {
            Gains = facts.Gains.TryGet(out GainRanking? gains, out _) ? gains : null,
        };

    private static ReportSection Limits(Prescription facts) =>
        new(
            ReportTopic.Limits,
            $"What limits them",
            [
                facts.Profile.Summary,
                .. facts
                    .Profile.Findings.Where(f => f.Verdict is FindingVerdict.Limits or FindingVerdict.Unclear)
                    .Select(f => Settling(f, facts.Profile.Summary)),
                .. facts.InsideRestrictions.Select(told => new ReportParagraph(told)),
            ],
            []
        );

    /// <summary>The finding, with what would settle it where it isn't settled and the summary has not said so.</summary>
    private static ReportParagraph Settling(Finding finding, Sentence said) =>
        finding is { Verdict: FindingVerdict.Unclear, TestWaits: true, NextTest: { } waits }
            ? Sentence.Of($"{finding.Sentence} Its test waits ({waits:open}).")
        : finding is { Verdict: FindingVerdict.Unclear, NextTest: { } next }
        && !said.ToString().Contains(next.ToString().TrimEnd('.'), StringComparison.Ordinal)
            ? Sentence.Of($"{finding.Sentence} Would settle it: {next:small open}.")
        : finding.Sentence;

    private static ReportSection Changed(Prescription facts, LocalDate asOf, PlotUnits units) =>
        new(
            ReportTopic.Change,
            $"What changed, and how sure",
            facts.Trends.IsEmpty
                ? [Sentence.Of($"Nothing was measured twice, so no change can be told.")]
                :
                [
                    .. facts.Shown.Select(t => new ReportParagraph(
                        $"{ReportWords.Of(t.Series.Key):capital}. {t.Sentence}",
                        t
                    )),
                    Sentence.Of(
                        $"A level weighs all sessions of its trend; a height said elsewhere is the mean of its latest day."
                    ),
                    .. OtherHeights(facts),
                    .. Switched(facts, asOf),
                ],
            [.. facts.Shown.Where(t => t.Series.Sessions.Length >= 3).Select((t, i) => TrendPlot(t, i + 1, units))]
        );

    private static ReportSection Gained(Prescription facts)
    {
        if (!facts.Gains.TryGet(out GainRanking? ranking, out Refusal? refusal))
        {
            return new(ReportTopic.Gains, $"What training typically brings", [refusal.Said], []);
        }

        return new(
            ReportTopic.Gains,
            $"What training typically brings in {ReportWords.Outcome(ranking.Outcome)}",
            [
                ranking.Sentence,
                .. ranking.WhatSettles is { } settles ? [settles] : (ReportParagraph[])[],
                .. ranking.Conditions.Select(c => new ReportParagraph(c)),
                .. ranking.Ranked.Select(g => new ReportParagraph(g.Sentence)),
                Sentence.Of(
                    $"No published effect on it that we know: {Sentence.Join(", ", ranking.Unranked.Select(g => QualityNames.Of(g.Quality)))}."
                ),
                Sentence.Of($"Effects are of groups and of whole programmes; they are never added up."),
            ],
            []
        );
    }

    private static IEnumerable<ReportParagraph> OtherHeights(Prescription facts)
    {
        ImmutableArray<SeriesKey> others = HeightMethods.Others(facts.Trends.Select(t => t.Series));
        return others.IsEmpty
            ? []
            :
            [
                Sentence.Of(
                    $"{HeightMethods.Rule} Also on record, and another quantity: {Sentence.Join("; ", others.Select(ReportWords.Of))}."
                ),
            ];
    }

    /// <summary>Where a height is measured in another way by now than the one that is followed: the trend ends there, and it is said.</summary>
    private static IEnumerable<ReportParagraph> Switched(Prescription facts, LocalDate asOf) =>
        HeightMethods
            .Switched(SeriesList.Of(facts.History, asOf))
            .Select(s => new ReportParagraph(
                $"Last measured on {s.Followed.Days[^1]}: {ReportWords.Of(s.Followed.Key)}. Measured since: {ReportWords.Of(s.Since.Key)}. Those are two quantities, so no change is told from one to the other."
            ));

    private static Sentence PlannedIsNotCounted =>
        $"What is planned for that day and its week is not counted here: the floor view counts it, and offers only what fits beside it.";

    private static ReportSection Next(Prescription facts)
    {
        TestProposal[] open =
        [
            .. facts.NextTests.Select(o => o.Test.TryGet(out TestProposal? t, out _) ? t : null).OfType<TestProposal>(),
        ];
        return new(
            ReportTopic.Next,
            $"What to do next",
            [
                .. open.Length == 0 ? [NoTest] : open.Select(Offered),
                .. open.Select(t => t.Stop.Pain)
                    .Distinct()
                    .Select(pain =>
                        open.Length == 1
                            ? new ReportParagraph($"It stops when {pain}.")
                            : new ReportParagraph($"Each of them stops when {pain}.")
                    ),
                .. NotNow(facts.NextTests),
                .. open.Length > 1
                    ? [Sentence.Of($"All of these together fit into one day and its contacts; the first matters most.")]
                    : (ReportParagraph[])[],
                .. open.Length > 0 ? [PlannedIsNotCounted] : (ReportParagraph[])[],
            ],
            []
        );
    }

    /// <summary>Where every question has its refusal.</summary>
    internal static Sentence NoTest => $"No test is offered now.";

    private static ReportParagraph Offered(TestProposal test) =>
        test.Stop.Aims is [_, ..] aims
            ? Sentence.Of(
                $"{test.Because} {ReportWords.Contacts(test.Contacts)} Stop when {Alternatives(aims.AsSpan())}."
            )
            : Sentence.Of($"{test.Because} {ReportWords.Contacts(test.Contacts)}");

    private static Sentence Alternatives(ReadOnlySpan<Sentence> all) =>
        all.Length == 1 ? all[0] : Sentence.Of($"{all[0]}, or when {Alternatives(all[1..])}");

    /// <summary>What is not tested now, in one line: each reason once, with what it holds back; what is known well enough apart.</summary>
    private static IEnumerable<ReportParagraph> NotNow(ImmutableArray<TestOffer> offers)
    {
        (Sentence Question, Sentence Why)[] refused =
        [
            .. offers
                .Select(o => (o.Question, Why: o.Test.TryGet(out _, out Refusal? no) ? null : no.Brief ?? no.Said))
                .Where(o => o.Why is not null)
                .Select(o => (o.Question, o.Why!)),
        ];
        (Sentence Question, Sentence Why)[] waiting = [.. refused.Where(r => r.Why != TestOffer.KnownWellEnough)];
        if (waiting.Length > 0)
        {
            yield return new ReportParagraph(Grouped(waiting))
            {
                UnderRulings = waiting.Any(r => IsRuling(r.Why))
                    ? Grouped([
                        .. waiting
                            .OrderBy(r => IsRuling(r.Why) ? 0 : 1)
                            .Select(r => IsRuling(r.Why) ? (r.Question, Sentence.Of($"what forbids today, above")) : r),
                    ])
                    : null,
            };
        }

        Sentence[] known = [.. refused.Where(r => r.Why == TestOffer.KnownWellEnough).Select(r => r.Question)];
        if (known.Length > 0)
        {
            yield return Sentence.Of($"Known well enough for now: {Sentence.Join(", ", known)}.");
        }
    }

    private static bool IsRuling(Sentence why) => why.Reason is Waits { For: not null };

    private static Sentence Grouped((Sentence Question, Sentence Why)[] refused)
    {
        Sentence[] said =
        [
            .. refused
                .GroupBy(r => r.Why)
                .Select(g => Sentence.Of($"{Sentence.Join(", ", g.Select(r => r.Question))} ({g.Key})")),
        ];
        return $"Not now: {Sentence.Join("; ", said)}.";
    }

    private static ReportPlot TrendPlot(Trend trend, int number, PlotUnits units)
    {
        (double scale, string unit) =
            trend.Series.Unit == Unit.Metre
                ? (units.Length, units.LengthName)
                : (ChangeWords.Scale(trend.Series.Unit), ChangeWords.UnitOf(trend.Series.Unit));
        ImmutableArray<CurveSample> line =
        [
            .. trend.Series.Sessions.Select(
                (s, i) =>
                    new CurveSample(
                        s.Day,
                        scale * trend.Band[i].Level,
                        scale * (trend.Band[i].Level - (1.96 * trend.Band[i].Sd)),
                        scale * (trend.Band[i].Level + (1.96 * trend.Band[i].Sd))
                    )
            ),
        ];
        return new(
            Kebab($"{trend.Series.Key.Measure} {trend.Series.Key.Task} {100 * trend.Series.Key.Condition:0} {number}"),
            $"{ReportWords.Of(trend.Series.Key):capital}",
            $"Day; dots: mean of a session; band: level, 95 %",
            $"({new UnitName(unit)})",
            line,
            [.. trend.Series.Sessions.Select(s => (s.Day, scale * s.Mean))],
            Ticks(trend),
            trend.Alarms.IsEmpty ? null : trend.Series.Sessions[trend.Alarms[^1].Session].Day,
            trend.Alarms.IsEmpty ? null : Sentence.Of($"left its level"),
            trend.Sentence
        );
    }

    private static ImmutableArray<(double X, Sentence Label)> Ticks(Trend trend)
    {
        int n = trend.Series.Days.Length;
        int step = Math.Max(1, (n + 4) / 5);
        return
        [
            .. Enumerable
                .Range(0, n)
                .Where(i => i % step == 0)
                .Select(i => (trend.Series.Sessions[i].Day, Sentence.Of($"{trend.Series.Days[i]:d MMM}"))),
        ];
    }

    private static string Kebab(string text) =>
        string.Join('-', text.ToLowerInvariant().Split([' ', '_', '.', ','], StringSplitOptions.RemoveEmptyEntries));
}
