using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Prescribing.Reports;

/// <summary>One athlete's page.</summary>
internal static class AthleteReports
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    internal static Report Of(Prescription facts, LocalDate asOf, string foot) =>
        new(
            facts.History.Athlete.Id,
            facts.History.Athlete.Name,
            asOf,
            [Limits(facts), Changed(facts), .. CurveSections.Of(facts.Curves), Gained(facts), Next(facts)],
            foot
        )
        {
            Gains = facts.Gains.TryGet(out GainRanking? gains, out _) ? gains : null,
        };

    private static ReportSection Limits(Prescription facts) =>
        new(
            "What limits them",
            [
                facts.Profile.Summary,
                .. facts
                    .Profile.Findings.Where(f => f.Verdict is FindingVerdict.Limits or FindingVerdict.Unclear)
                    .Select(f => f.Sentence + Settles(f, facts.Profile.Summary)),
            ],
            []
        );

    /// <summary>What would settle it, where it isn't settled and the summary has not said so.</summary>
    private static string Settles(Finding finding, string said) =>
        finding is { Verdict: FindingVerdict.Unclear, NextTest: { } next }
        && next.ToString() is var test
        && !said.Contains(test.TrimEnd('.'), StringComparison.Ordinal)
            ? $" Would settle it: {char.ToLowerInvariant(test[0])}{test[1..].TrimEnd('.')}."
            : "";

    private static ReportSection Changed(Prescription facts) =>
        new(
            "What changed, and how sure",
            facts.Trends.IsEmpty
                ? ["Nothing was measured twice, so no change can be told."]
                :
                [
                    .. facts.Shown.Select(t => $"{Capital(ReportWords.Of(t.Series.Key))}. {t.Sentence}"),
                    .. OtherHeights(facts),
                ],
            [.. facts.Shown.Where(t => t.Series.Sessions.Length >= 3).Select((t, i) => TrendPlot(t, i + 1))]
        );

    private static ReportSection Gained(Prescription facts)
    {
        if (!facts.Gains.TryGet(out GainRanking? ranking, out Refusal? refusal))
        {
            return new("What training typically brings", [refusal.Sentence], []);
        }

        return new(
            $"What training typically brings in {ReportWords.Outcome(ranking.Outcome)}",
            [
                ranking.Sentence,
                .. ranking.WhatSettles is { } settles ? [settles] : (string[])[],
                .. ranking.Conditions,
                .. ranking.Ranked.Select(g => g.Sentence),
                $"No published effect on it that we know: {string.Join(", ", ranking.Unranked.Select(g => GainRankings.Said(g.Quality)))}.",
                "Effects are of groups and of whole programmes; they are never added up.",
            ],
            []
        );
    }

    private static IEnumerable<string> OtherHeights(Prescription facts)
    {
        ImmutableArray<SeriesKey> others = HeightMethods.Others(facts.Trends.Select(t => t.Series));
        return others.IsEmpty
            ? []
            :
            [
                $"{HeightMethods.Rule} Also on record, and another quantity: {string.Join("; ", others.Select(ReportWords.Of))}.",
            ];
    }

    private const string PlannedIsNotCounted =
        "What is planned for that day and its week is not counted here: the floor view counts it, and offers only what fits beside it.";

    private static ReportSection Next(Prescription facts)
    {
        TestProposal[] open =
        [
            .. facts.NextTests.Select(o => o.Test.TryGet(out TestProposal? t, out _) ? t : null).OfType<TestProposal>(),
        ];
        return new(
            "What to do next",
            [
                .. open.Length == 0
                    ? (string[])["No test is offered now."]
                    : open.Select(t =>
                        $"{t.Because} {ReportWords.Contacts(t.Contacts)}{(t.Stop.Aims is [_, ..] aims ? $" Stop when {string.Join(", or when ", aims)}." : "")}"
                    ),
                .. open.Select(t => t.Stop.Pain)
                    .Distinct(StringComparer.Ordinal)
                    .Select(pain => $"Each of them stops when {pain}."),
                .. NotNow(facts.NextTests),
                .. open.Length > 1
                    ? (string[])["All of these together fit into one day and its contacts; the first matters most."]
                    : [],
                .. open.Length > 0 ? [PlannedIsNotCounted] : (string[])[],
            ],
            []
        );
    }

    /// <summary>What is not tested now, in one line: each reason once, with what it holds back; what is known well enough apart.</summary>
    private static IEnumerable<string> NotNow(ImmutableArray<TestOffer> offers)
    {
        (string Question, string Why)[] refused =
        [
            .. offers
                .Select(o => (o.Question, Why: o.Test.TryGet(out _, out Refusal? no) ? null : no.Brief ?? no.Sentence))
                .Where(o => o.Why is not null)
                .Select(o => (o.Question, o.Why!)),
        ];
        string[] waiting =
        [
            .. refused
                .Where(r => r.Why != TestOffer.KnownWellEnough)
                .GroupBy(r => r.Why, StringComparer.Ordinal)
                .Select(g => $"{string.Join(", ", g.Select(r => r.Question))} ({g.Key})"),
        ];
        if (waiting.Length > 0)
        {
            yield return $"Not now: {string.Join("; ", waiting)}.";
        }

        string[] known = [.. refused.Where(r => r.Why == TestOffer.KnownWellEnough).Select(r => r.Question)];
        if (known.Length > 0)
        {
            yield return $"Known well enough for now: {string.Join(", ", known)}.";
        }
    }

    private static ReportPlot TrendPlot(Trend trend, int number)
    {
        double scale = ChangeWords.Scale(trend.Series.Unit);
        string unit = ChangeWords.UnitOf(trend.Series.Unit);
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
            Capital(ReportWords.Of(trend.Series.Key)),
            "Day; dots: mean of a session; band: level, 95 %",
            $"({unit})",
            line,
            [.. trend.Series.Sessions.Select(s => (s.Day, scale * s.Mean))],
            Ticks(trend),
            trend.Alarms.IsEmpty ? null : trend.Series.Sessions[trend.Alarms[^1].Session].Day,
            trend.Alarms.IsEmpty ? null : "left its level",
            trend.Sentence
        );
    }

    private static ImmutableArray<(double X, string Label)> Ticks(Trend trend)
    {
        int n = trend.Series.Days.Length;
        int step = Math.Max(1, (n + 4) / 5);
        return
        [
            .. Enumerable
                .Range(0, n)
                .Where(i => i % step == 0)
                .Select(i => (trend.Series.Sessions[i].Day, Day.Format(trend.Series.Days[i]))),
        ];
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Kebab(string text) =>
        string.Join('-', text.ToLowerInvariant().Split([' ', '_', '.', ','], StringSplitOptions.RemoveEmptyEntries));
}
