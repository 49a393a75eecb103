using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using MathNet.Numerics.Distributions;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>Judges entry criteria that name a test, from the profile's current measures and the screens typed by hand.</summary>
internal sealed class CriterionJudge(Profile profile, History history, LocalDate asOf, LadderOptions options)
{
    /// <summary>A proposal that a ruling forbids, as the rest of a sentence.</summary>
    internal static Sentence Waits(Ruling ruling) => Waits(ruling.Because, ruling);

    /// <summary>What is open that day, once all steps are known; until then no test is proposed.</summary>
    internal OpenWork? Open { get; init; }

    /// <summary>A proposal for a step that is closed, for that reason.</summary>
    internal static Sentence Waits(RungReason closed) => Waits(closed.Sentence, closed.Ruling);

    /// <summary>What waits, for that reason.</summary>
    internal static Sentence Waits(Sentence because, Ruling? ruling) =>
        Sentence.Of($"not now: {because:open}").As(new Waits(ruling));

    /// <summary>True for what says that a test or a step waits.</summary>
    internal static bool IsWaiting(Sentence said) => said.Reason is Progression.Waits;

    private readonly int _freshDays = AfterInjury(history, asOf, options)
        ? options.FreshDaysAfterInjury
        : options.FreshDays;

    /// <summary>What closes the test of a quality; null where it is open.</summary>
    internal Closing? Closing(QualityTest test) => Open!.Of(TestForms.Of(test)).First;

    /// <summary>
    /// True after an operation, while a written restriction was in force within the last weeks, or after a report of
    /// swelling, giving way or locking within them.
    /// </summary>
    internal static bool AfterInjury(History history, LocalDate asOf, LadderOptions options)
    {
        LocalDate since = asOf.PlusDays(-options.FreshDays);
        return history.Athlete.Operation is not null
            || history.Restrictions.Any(r => r.From <= asOf && (r.Until is null || r.Until >= since))
            || history.Symptoms.Any(s =>
                s.Date >= since && s.Date <= asOf && s.Kind is "swelling" or "giving-way" or "locking"
            );
    }

    /// <summary>The criterion's test, or the alternative that speaks best for it.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <param name="asking">The exercise that asks.</param>
    internal RungReason Judge(EntryCriterion criterion, string asking)
    {
        double needed =
            criterion.Kind == CriterionKind.Safety ? options.SafetyProbability : options.PerformanceProbability;
        ImmutableArray<TestReading> readings =
        [
            Read(criterion, asking, criterion.Test, criterion.Task, criterion.Value, criterion.Unit, needed),
            .. criterion.Alternatives.Select(a => Read(criterion, asking, a.Test, a.Task, a.Value, a.Unit, needed)),
        ];
        TestReading best = readings
            .OrderByDescending(r => Rank(r.Verdict))
            .ThenByDescending(r => r.Probability ?? 0)
            .First();

        // Of tests that would do, all that are allowed today are named: the reader knows which is at hand.
        Sentence? settle = best.Verdict switch
        {
            CriterionVerdict.Met => null,
            CriterionVerdict.NotTested or CriterionVerdict.Stale => AnyOf(readings),
            _ => best.Settle,
        };
        return new RungReason(
            criterion.Id,
            best.Verdict,
            $"{criterion.Said} {best.Sentence}",
            best.Probability,
            best.Date,
            settle
        )
        {
            Test = best.Test,
            Task = best.Task,
        };
    }

    private static Sentence AnyOf(ImmutableArray<TestReading> readings)
    {
        Sentence[] allowed =
        [
            .. readings.Where(r => r.How is not { IsOpen: false }).Select(r => r.Settle).OfType<Sentence>().Distinct(),
        ];
        return EitherOf(allowed.Length > 0 ? allowed : [.. readings.Select(r => r.Settle).OfType<Sentence>().Take(1)]);
    }

    /// <summary>One of them or another.</summary>
    internal static Sentence EitherOf(IEnumerable<Sentence> all) =>
        all.Aggregate((Sentence?)null, (some, one) => some is null ? one : Sentence.Of($"{some} or {one}"))
        ?? Sentence.Of($"");

    /// <summary>
    /// The test in words, or what stands in its place while it is closed: the step that leads to it, or why it waits. A test is an
    /// exercise under every limit.
    /// </summary>
    private TestWay How(EntryTest known, string? task, string asking)
    {
        if (Open is null)
        {
            return new(known.HowToDoIt, true);
        }

        Standing standing = Open.Of(known, task, asking);
        return standing.First is { } closing
                ? new(closing.By == ClosedBy.Ladder ? closing.Step! : Waits(closing.Because, closing.Ruling), false)
            : standing.With is { } jump ? new($"{known.HowToDoIt}, as {jump:small}", true)
            : new(known.HowToDoIt, true);
    }

    // A test that speaks now outranks one that is silent; among those that speak, the better news does not hide a
    // clear failure of the criterion's own test unless the alternative is met.
    private static int Rank(CriterionVerdict verdict) =>
        verdict switch
        {
            CriterionVerdict.Met => 4,
            CriterionVerdict.NotMet => 3,
            CriterionVerdict.Unclear => 2,
            CriterionVerdict.Stale => 1,
            _ => 0,
        };

    private TestReading Read(
        EntryCriterion criterion,
        string asking,
        string test,
        string? task,
        double threshold,
        string unit,
        double needed
    )
    {
        if (EntryTests.Find(test) is not { } known)
        {
            return NotTested(
                $"Not tested: nothing measures '{test}'.",
                $"an entry of the catalogue that can be measured"
            );
        }

        if (criterion.PerBodyMass && !(history.Athlete.BodyMassKg > 0))
        {
            return NotTested($"Not tested: body mass is unknown.", $"weighing");
        }

        TestWay how = How(known, task, asking);
        double scale = criterion.PerBodyMass ? history.Athlete.BodyMassKg!.Value : 1;
        ImmutableArray<Sided> results = known.IsMeasure ? Measured(known, task) : Screened(known);
        IEnumerable<Side> sides = known.HasSides ? [Side.Left, Side.Right] : [Side.Both];
        var readings = new List<TestReading>();
        foreach (Side side in sides)
        {
            Side? where = known.HasSides ? side : null;
            Sided? result = results
                .Where(r => !known.HasSides || r.Side == side || r.Side == Side.Both)
                .OrderByDescending(r => r.Date)
                .FirstOrDefault();
            readings.Add(
                result is null
                    ? NotTested($"{Untested(where)}{OtherUnit(known)}.", how.Said) with
                    {
                        How = how,
                    }
                    : Judge(criterion.Sense, known, how, threshold, unit, needed, scale, result, where) with
                    {
                        How = how,
                        Test = known.Id,
                        Task = JumpTasks.Parse(task),
                    }
            );
        }

        // Both legs must meet: the worse one speaks.
        return readings.Count == 1 ? readings[0] : Worse(readings[0], readings[1]);
    }

    private TestReading Judge(
        string sense,
        EntryTest known,
        TestWay how,
        double threshold,
        string unit,
        double needed,
        double scale,
        Sided result,
        Side? where
    )
    {
        double value = result.Value / scale;
        double doubt = result.StandardUncertainty / scale;
        Sentence amount = Amount(value, doubt, unit);
        Sentence shown = where switch
        {
            Side.Left => $"left {amount} on {result.Date}",
            Side.Right => $"right {amount} on {result.Date}",
            _ => $"{amount} on {result.Date}",
        };
        int age = Period.DaysBetween(result.Date, asOf);
        if (age > _freshDays)
        {
            return new TestReading(
                CriterionVerdict.Stale,
                $"Stale: {shown}, {age} days ago; {_freshDays} at most.",
                null,
                result.Date,
                how.Said
            );
        }

        double p = Chance.Keeps(value, doubt, sense, threshold, known.IsCount);
        CriterionVerdict verdict =
            p >= needed ? CriterionVerdict.Met
            : p <= 1 - needed ? CriterionVerdict.NotMet
            : CriterionVerdict.Unclear;
        Sentence word = verdict switch
        {
            CriterionVerdict.Met => $"Met",
            CriterionVerdict.NotMet => $"Not met",
            _ => $"Unclear",
        };
        return new TestReading(
            verdict,
            $"{word}: {shown}, probability {Probability.Said(p)} ({needed:0.00} needed).",
            p,
            result.Date,
            verdict switch
            {
                CriterionVerdict.Met => null,
                CriterionVerdict.Unclear => MoreOf(
                    how,
                    Margin(sense, known, value, threshold),
                    doubt,
                    needed,
                    result.Trials
                ),
                _ => AfterTraining(how),
            }
        );
    }

    /// <summary>
    /// How many more trials would settle it if they come out the same: doubt shrinks with the root of their number, which
    /// holds for the part of the error that changes from trial to trial (Hopkins 2000).
    /// </summary>
    private static Sentence MoreOf(TestWay way, double margin, double doubt, double needed, int? trials)
    {
        Sentence how = way.Said;
        if (!way.IsOpen)
        {
            return how;
        }

        if (margin <= 0)
        {
            return $"more trials of {how}; so far it leans to not met";
        }

        double times = Math.Pow(doubt * Normal.InvCDF(0, 1, needed) / margin, 2);
        return trials is { } n && times * n <= 50
            ? Sentence.Of(
                $"{(int)Math.Ceiling((times * n) - n - 1e-9)} more trials of {how}, if they come out the same"
            )
            : Sentence.Of($"about {times:0.#} times as many trials of {how}, if they come out the same");
    }

    private static double Margin(string sense, EntryTest known, double value, double threshold)
    {
        double grace = known.IsCount ? 0.5 : 0;
        return sense == "at-most" ? threshold + grace - value : value - threshold + grace;
    }

    private static Sentence AfterTraining(TestWay how) =>
        how.IsOpen ? Sentence.Of($"{how.Said}, after training for it") : how.Said;

    private static TestReading Worse(TestReading a, TestReading b)
    {
        // Not met outranks silence: a known failure is the better sentence, and both keep the rung closed.
        static int Badness(CriterionVerdict v) =>
            v switch
            {
                CriterionVerdict.NotMet => 4,
                CriterionVerdict.NotTested => 3,
                CriterionVerdict.Stale => 2,
                CriterionVerdict.Unclear => 1,
                _ => 0,
            };
        if (Badness(a.Verdict) != Badness(b.Verdict))
        {
            return Badness(a.Verdict) > Badness(b.Verdict) ? a : b;
        }

        return (a.Probability ?? 0) <= (b.Probability ?? 0) ? a : b;
    }

    private static TestReading NotTested(Sentence sentence, Sentence settle) =>
        new(CriterionVerdict.NotTested, sentence, null, null, settle);

    private ImmutableArray<Sided> Measured(EntryTest known, string? task)
    {
        JumpTask? wanted = JumpTasks.Parse(task);
        return
        [
            .. profile
                .Current.Where(e =>
                    e.Measure.Name == known.Id && e.Task == wanted && wanted is not null && e.Date <= asOf
                )
                .Where(e => e.Limb is null or Limb.Both)
                .Select(e => new Sided(Side.Both, e.Date, e.Measure.Value, e.Measure.StandardUncertainty, null)),
        ];
    }

    private ImmutableArray<Sided> Screened(EntryTest known) =>
        [
            .. history
                .Screens.Where(s => s.Test == known.Id && s.Date <= asOf && Fits(s.Unit, known))
                .GroupBy(s => (s.Date, Side: s.Side == Side.Unknown && !known.HasSides ? Side.Both : s.Side))
                .Select(g => new Sided(
                    g.Key.Side,
                    g.Key.Date,
                    g.Average(s => s.Value),
                    known.StandardUncertainty / Math.Sqrt(g.Count()),
                    g.Count()
                )),
        ];

    /// <summary>Says that a result was left aside because nobody may guess what its unit means.</summary>
    private Sentence OtherUnit(EntryTest known) =>
        history.Screens.Where(s => s.Test == known.Id && s.Date <= asOf && !Fits(s.Unit, known)).MaxBy(s => s.Date)
            is { } unread
            ? Sentence.Of($": the result of {unread.Date} is in '{unread.Unit}', not in {known.Unit}")
            : Sentence.Of($"");

    private static Sentence Untested(Side? where) =>
        where switch
        {
            Side.Left => $"Not tested, left",
            Side.Right => $"Not tested, right",
            _ => $"Not tested",
        };

    private static bool Fits(string unit, EntryTest known) =>
        unit == known.Unit || (known.IsCount && unit is "" or "1" or "count");

    /// <summary>A value with its doubt, as exactly as that lets it be.</summary>
    private static Sentence Amount(double value, double doubt, string unit) =>
        unit switch
        {
            "m" => $"{new DoubtedLength(value, doubt)}",
            "s" => Doubted.Milliseconds(value, doubt),
            _ => $"{Doubted.Number(value, doubt)}{Unit(unit)}",
        };

    private static Sentence Unit(string unit) =>
        unit switch
        {
            "1" => $"",
            "faults" => $" faults",
            "reps" => $" reps",
            _ => $" {unit}",
        };

    private sealed record Sided(Side Side, LocalDate Date, double Value, double StandardUncertainty, int? Trials);
}
