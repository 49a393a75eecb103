using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators.Curves;
using Jumpwright.Exercises;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Safety.Conditions;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Prescribing.Reports;

/// <summary>Reports of a squad: the same words on the squad's page and on each athlete's.</summary>
public static class Reporting
{
    private static Sentence Foot =>
        $"± is one standard uncertainty; bands hold 95 %. It reports and advises; it clears nobody. What is not tested counts as not met.";

    private static Sentence NothingTwice => $"Nothing was measured twice.";

    /// <summary>The squad's report first, then one an athlete, in the squad's order.</summary>
    public static ImmutableArray<Report> Of(
        Squad squad,
        IReadOnlyList<History> histories,
        Catalogue catalogue,
        LocalDate asOf,
        UnitSystem units = UnitSystem.Metric
    )
    {
        ArgumentNullException.ThrowIfNull(squad);
        ArgumentNullException.ThrowIfNull(histories);
        ArgumentNullException.ThrowIfNull(catalogue);
        ChangeOptions options = ChangeOptions.From(squad.Policy);
        ImmutableArray<Trend> trends = Changes.Of(histories, asOf, options);
        ImmutableArray<Prescription> facts = Prescriptions(squad, histories, catalogue, asOf, trends);
        return
        [
            SquadReport(squad, facts, trends, options, asOf),
            .. facts.Select(f => AthleteReports.Of(f, asOf, Foot, PlotUnits.Of(units))),
        ];
    }

    /// <summary>What stands behind the reports, one an athlete, in the squad's order.</summary>
    public static ImmutableArray<Prescription> Prescriptions(
        Squad squad,
        IReadOnlyList<History> histories,
        Catalogue catalogue,
        LocalDate asOf
    )
    {
        ArgumentNullException.ThrowIfNull(squad);
        return Prescriptions(
            squad,
            histories,
            catalogue,
            asOf,
            Changes.Of(histories, asOf, ChangeOptions.From(squad.Policy))
        );
    }

    private static ImmutableArray<Prescription> Prescriptions(
        Squad squad,
        IReadOnlyList<History> histories,
        Catalogue catalogue,
        LocalDate asOf,
        ImmutableArray<Trend> trends
    )
    {
        Dictionary<string, Profile> profiles = histories.ToDictionary(
            h => h.Athlete.Id,
            h => Profiling.Of(h, asOf),
            StringComparer.Ordinal
        );
        return
        [
            .. histories.Select(h =>
                Prescribe(
                    squad,
                    h,
                    profiles,
                    catalogue,
                    [.. trends.Where(t => t.Series.AthleteId == h.Athlete.Id)],
                    asOf
                )
            ),
        ];
    }

    /// <summary>What stands behind one athlete's report, the same as in the squad's.</summary>
    /// <param name="squad">The squad and its circumstances.</param>
    /// <param name="history">Whose.</param>
    /// <param name="profiles">Everybody's profile as of that day, by athlete: an effect in centimetres needs the squad's spread.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="trends">The squad's trends as of that day, as <see cref="Changes.Of"/> gives them.</param>
    /// <param name="asOf">Only what happened up to that day counts.</param>
    public static Prescription OfAthlete(
        Squad squad,
        History history,
        Dictionary<string, Profile> profiles,
        Catalogue catalogue,
        ImmutableArray<Trend> trends,
        LocalDate asOf
    )
    {
        ArgumentNullException.ThrowIfNull(history);
        return Prescribe(
            squad,
            history,
            profiles,
            catalogue,
            [.. trends.Where(t => t.Series.AthleteId == history.Athlete.Id)],
            asOf
        );
    }

    /// <summary>The report that says it.</summary>
    /// <param name="facts">What stands behind it.</param>
    /// <param name="asOf">The day it is of.</param>
    /// <param name="units">Units of its pictures' axes; its sentences take those of whoever writes them out.</param>
    public static Report InWords(Prescription facts, LocalDate asOf, UnitSystem units = UnitSystem.Metric) =>
        AthleteReports.Of(facts, asOf, Foot, PlotUnits.Of(units));

    /// <summary>
    /// The tests that may be done on that day beside what is planned for it; whatever is planned counts as taken. What was done in
    /// that session itself must not stand in the history, or it counts twice.
    /// </summary>
    /// <param name="squad">The squad and its circumstances.</param>
    /// <param name="history">Whose.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="day">The day of the session.</param>
    /// <param name="planned">Contacts planned for that day and the rest of its week, and not logged.</param>
    public static ImmutableArray<TestOffer> TestsBeside(
        Squad squad,
        History history,
        Catalogue catalogue,
        LocalDate day,
        ImmutableArray<PlannedContacts> planned
    )
    {
        ArgumentNullException.ThrowIfNull(squad);
        History own = squad.Under(history);
        return Tests(squad, own, Profiling.Of(own, day), catalogue, day, planned).Offers;
    }

    private static (AthleteCurves Curves, ImmutableArray<TestOffer> Offers, OpenWork Open) Tests(
        Squad squad,
        History history,
        Profile profile,
        Catalogue catalogue,
        LocalDate day,
        ImmutableArray<PlannedContacts> planned
    )
    {
        var open = OpenWork.On(day, squad, history, profile, catalogue);
        TestGate gate = new TestGate(history, open, squad, day).Beside(planned);
        var curves = AthleteCurves.Of(history, catalogue, open.Rulings, day, squad.Kit);
        return (curves, NextTests.For(history, profile, gate, catalogue, curves, day), open);
    }

    private static Prescription Prescribe(
        Squad squad,
        History history,
        Dictionary<string, Profile> profiles,
        Catalogue catalogue,
        ImmutableArray<Trend> trends,
        LocalDate asOf
    )
    {
        // Whoever asks, the limits are the ones the plan is made under.
        history = squad.Under(history);
        Profile profile = profiles[history.Athlete.Id];
        (AthleteCurves curves, ImmutableArray<TestOffer> tests, OpenWork open) = Tests(
            squad,
            history,
            profile,
            catalogue,
            asOf,
            []
        );
        profile = open.In(profile);
        ChosenOutcome outcome = OutcomeOf(squad, history.Athlete.Id);
        return new Prescription(
            history,
            profile,
            trends,
            curves,
            tests,
            GainRankings.Of(
                profile,
                outcome,
                Now(profile, outcome),
                BetweenSd(profiles.Values, outcome),
                id => catalogue.Find(id) is { } exercise && open.Of(exercise).IsOpen
            )
        )
        {
            InsideRestrictions = TestsInsideRestrictions.Of(history, catalogue, asOf),
        };
    }

    /// <summary>Key <c>outcome-ATHLETE</c> or <c>outcome</c> of the squad's policy: standing-jump, approach-two, approach-one, rebound, symmetric-landing.</summary>
    private static ChosenOutcome OutcomeOf(Squad squad, string athleteId) =>
        (squad.Policy.GetValueOrDefault("outcome-" + athleteId) ?? squad.Policy.GetValueOrDefault("outcome")) switch
        {
            "approach-two" => ChosenOutcome.ApproachJumpTwoFeet,
            "approach-one" => ChosenOutcome.ApproachJumpOneFoot,
            "rebound" => ChosenOutcome.Rebound,
            "symmetric-landing" => ChosenOutcome.SymmetricLanding,
            _ => ChosenOutcome.StandingJump,
        };

    private static Measure? Now(Profile profile, ChosenOutcome outcome) =>
        TaskOf(outcome) switch
        {
            null => null,
            JumpTask.CountermovementJump => StandingJump.Of(profile.Current)?.Measure,
            { } task => profile
                .Current.Where(e => e.Task == task && e.Limb is null or Limb.Both)
                .Where(e => e.Measure.Name is MeasureNames.JumpHeight or MeasureNames.JumpHeightFlightTime)
                .OrderByDescending(e => e.Date)
                .ThenBy(e => e.Measure.Name == MeasureNames.JumpHeight ? 0 : 1)
                .ThenBy(e => e.Device)
                .FirstOrDefault()
                ?.Measure,
        };

    private static JumpTask? TaskOf(ChosenOutcome outcome) =>
        outcome switch
        {
            ChosenOutcome.StandingJump => JumpTask.CountermovementJump,
            ChosenOutcome.ApproachJumpTwoFeet or ChosenOutcome.ApproachJumpOneFoot => JumpTask.ApproachJump,
            ChosenOutcome.Rebound => JumpTask.DropJump,
            _ => null,
        };

    /// <summary>
    /// Spread between athletes, m: a height by impulse and one by flight time are two quantities, so that each athlete is set against those
    /// measured the same way, and the squares are pooled. Null below five athletes, or where all were measured differently.
    /// </summary>
    private static double? BetweenSd(IEnumerable<Profile> all, ChosenOutcome outcome)
    {
        Measure[] now = [.. all.Select(p => Now(p, outcome)).OfType<Measure>()];
        double[][] ways = [.. now.GroupBy(m => m.Name).Select(g => g.Select(m => m.Value).ToArray())];
        int freedom = now.Length - ways.Length;
        return now.Length < 5 || freedom < 4
            ? null
            : Math.Sqrt(
                ways.Where(w => w.Length > 1)
                    .Sum(w => (w.Length - 1) * Math.Pow(Statistics.Spread.StandardDeviation(w), 2)) / freedom
            );
    }

    private static Report SquadReport(
        Squad squad,
        ImmutableArray<Prescription> facts,
        ImmutableArray<Trend> trends,
        ChangeOptions options,
        LocalDate asOf
    )
    {
        Trend[] watched = [.. trends.Where(t => t.Watched)];
        ImmutableArray<ReportParagraph> changed =
        [
            .. facts.Select(f => new ReportParagraph($"{f.History.Athlete.Name}: {Moved(f, asOf)}")),
        ];
        ImmutableArray<ReportParagraph> limits =
        [
            .. facts.Select(f => new ReportParagraph($"{f.History.Athlete.Name}: {f.Profile.Summary}")),
        ];
        ImmutableArray<ReportParagraph> next =
        [
            .. facts.Select(f => new ReportParagraph($"{f.History.Athlete.Name}: {NextOf(f)}")),
        ];
        ImmutableArray<ReportParagraph> noise =
        [
            .. trends
                .Select(t => t.Noise)
                .Distinct()
                .OrderByDescending(n => n.Athletes)
                .ThenBy(n => n.Key.Task)
                .ThenBy(n => n.Key.Measure, StringComparer.Ordinal)
                .Take(12)
                .Select(n => new ReportParagraph(Noise(n, trends.First(t => t.Noise == n).Series.Unit))),
        ];
        return new Report(
            "squad",
            squad.Name,
            asOf,
            [
                new(ReportTopic.Change, $"What changed", changed, []),
                new(ReportTopic.Limits, $"What limits whom", limits, []),
                new(ReportTopic.Next, $"Which test next", next, []),
                new(ReportTopic.Noise, $"How noisy the tests are here", noise.IsEmpty ? [NothingTwice] : noise, []),
                new(
                    ReportTopic.Noise,
                    $"How often an alarm is false",
                    [
                        watched.Length == 0
                            ? Sentence.Of($"Nothing is watched: no watched measure has two sessions.")
                            : Sentence.Of(
                                $"{watched.Length} trends are watched, at most {ChangeOptions.MostWatched} an athlete, chosen before looking ({Sentence.Join(", ", options.Watched.Select(m => Sentence.Of($"{ReportWords.Measure(m)}")))}). Over all of them {Changes.FalseAlarmsAWeek(watched.Select(t => t.Series), options):0.##} false alarms a week are to be expected when nobody changes."
                            ),
                    ],
                    []
                ),
            ],
            Foot
        );
    }

    private static Sentence Moved(Prescription facts, LocalDate asOf)
    {
        Sentence[] moved =
        [
            .. facts
                .Shown.Where(t => t.Change.Rose >= 0.75 || t.Change.Fell >= 0.75 || IsFresh(t, asOf))
                .Select(t => Sentence.Of($"{ReportWords.Of(t.Series.Key)}: {t.Sentence}")),
        ];
        return moved.Length > 0 ? Sentence.Join(" ", moved)
            : facts.Trends.IsEmpty ? Sentence.Of($"{NothingTwice:small}")
            : Sentence.Of($"nothing moved that can be told from noise.");
    }

    private static Sentence Noise(SquadNoise noise, Unit unit)
    {
        Sentence said =
            $"{ReportWords.Of(noise.Key)}: typical error {Fine(noise.TypicalError)} ({noise.TypicalErrorPct:0.0} %; {noise.DegreesOfFreedom} degrees of freedom of this squad, pulled to {noise.PublishedPct:0.0} %), detectable change of two single trials {Coarse(noise.DetectableChange)}, smallest worthwhile change {Fine(noise.SmallestWorthwhile)} ({noise.SmallestWorthwhileSource.Id})";
        return noise.IntraclassCorrelationOneWay is { } icc
            ? Sentence.Of($"{said}, ICC(1,1) {icc:0.00}.")
            : Sentence.Of($"{said}.");

        Sentence Fine(double value) =>
            unit == Unit.Metre
                ? Sentence.Of($"{new Length(value):0.00 cm}")
                : Sentence.Of($"{ChangeWords.Scale(unit) * value:0.00} {ChangeWords.UnitOf(unit)}");
        Sentence Coarse(double value) =>
            unit == Unit.Metre
                ? Sentence.Of($"{new Length(value):0.0 cm}")
                : Sentence.Of($"{ChangeWords.Scale(unit) * value:0.0} {ChangeWords.UnitOf(unit)}");
    }

    private static Sentence NextOf(Prescription facts)
    {
        Sentence? offered = facts
            .NextTests.Select(o => o.Test.TryGet(out TestProposal? test, out _) ? test.Because : null)
            .FirstOrDefault(b => b is not null);
        Sentence? refused = facts
            .NextTests.Select(o => o.Test.TryGet(out _, out Refusal? no) ? null : no.Said)
            .FirstOrDefault(n => n is not null);
        return offered
            ?? (
                refused is null
                    ? Sentence.Of($"{AthleteReports.NoTest:small}")
                    : Sentence.Of($"{AthleteReports.NoTest:small} {refused}")
            );
    }

    private static bool IsFresh(Trend trend, LocalDate asOf) =>
        !trend.Alarms.IsEmpty && Period.DaysBetween(trend.Series.Days[trend.Alarms[^1].Session], asOf) <= 14;
}
