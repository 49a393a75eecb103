using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>Builds one ladder: safety first, then landings, time off, entry criteria, and what the log has earned.</summary>
internal sealed class LadderBuilder(
    Profile profile,
    History history,
    Catalogue catalogue,
    LocalDate asOf,
    LadderOptions options,
    ImmutableArray<Ruling> rulings
)
{
    private readonly CriterionJudge _judge = new(profile, history, asOf, options);
    private readonly Dictionary<string, Rung> _rungs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Rung> _proposed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CleanSessions> _own = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CleanSessions> _sessions = new(StringComparer.Ordinal);

    private CriterionJudge? _proposing;
    private RungReason? _landingHold;
    private RungReason? _timeOffHold;

    internal Ladder Build()
    {
        ImmutableArray<CompletedItem> done = LogWithReports.Of(history, asOf, options);
        ImmutableArray<CompletedItem> sound = Flaws.Without(done, options);
        _landingHold = Holds.ForLandings(history, done, asOf, options);
        _timeOffHold = Holds.ForTimeOff(history, sound, asOf, options);
        ImmutableDictionary<string, ImmutableHashSet<string>> keepers = Keepers.Of(catalogue);
        foreach (Exercise exercise in catalogue.Exercises)
        {
            _own[exercise.Id] = CleanSessions.Of(exercise, keepers[exercise.Id], done, sound, options);
        }

        foreach (Exercise exercise in catalogue.Exercises)
        {
            IEnumerable<Exercise> harder = catalogue.Exercises.Where(e => keepers[exercise.Id].Contains(e.Id));
            _sessions[exercise.Id] = _own[exercise.Id].With([.. harder.Select(e => (e, _own[e.Id]))]);
        }

        foreach (Exercise exercise in catalogue.Exercises)
        {
            RungOf(exercise);
        }

        var stands = new Ladder(profile.AthleteId, asOf, [.. catalogue.Exercises.Select(e => _rungs[e.Id])])
        {
            ComingBack = _timeOffHold,
            Drops = TrainedDrops.Of(done, catalogue, asOf, options),
        };
        OpenWork open = new(stands, id => catalogue.Find(id) is { } e ? Proposed(e) : null, rulings, catalogue);
        _proposing = new CriterionJudge(profile, history, asOf, options) { Open = open };
        return stands with { Rungs = [.. catalogue.Exercises.Select(Proposed)] };
    }

    /// <summary>
    /// What would settle each reason: a test that is open, the step that leads to one that is not, or why it waits. Asked last, when all
    /// rungs are known, so that a proposal never changes a state.
    /// </summary>
    private Rung Proposed(Exercise exercise)
    {
        if (_proposed.TryGetValue(exercise.Id, out Rung? known))
        {
            return known;
        }

        // A circle of tests and steps, which the catalogue has not, must not hang: it finds itself without a proposal.
        Rung rung = _rungs[exercise.Id];
        _proposed[exercise.Id] = rung;
        return _proposed[exercise.Id] = rung with
        {
            Reasons = [.. rung.Reasons.Select(r => r with { CheapestTest = Proposal(exercise, r) })],
        };
    }

    private Sentence? Proposal(Exercise exercise, RungReason reason)
    {
        if (reason.Verdict == CriterionVerdict.Met || reason.IsOwnership)
        {
            return reason.CheapestTest;
        }

        if (rulings.FirstOrDefault(r => r.Effect is NothingPlanned) is { } nothing)
        {
            return reason.Ruling is not null ? null : CriterionJudge.Waits(nothing);
        }

        if (exercise.Entry.FirstOrDefault(c => c.Id == reason.CriterionId) is { } criterion)
        {
            return criterion.OwnedExercise is not { } id ? _proposing!.Judge(criterion, exercise.Id).CheapestTest
                : catalogue.Find(id) is { } before ? NextStep(before, Proposed(before))
                : reason.CheapestTest;
        }

        return reason.CriterionId switch
        {
            RungReason.Faded or Holds.Drops => StepBefore(exercise),
            Holds.Landing => Landings(reason),
            _ => reason.CheapestTest,
        };
    }

    /// <summary>Of the steps before one that has faded, those that are open; where none is, what leads to the first.</summary>
    private Sentence? StepBefore(Exercise exercise)
    {
        Exercise[] before = [.. StepsBefore(exercise).Select(catalogue.Find).OfType<Exercise>()];
        Exercise[] open = [.. before.Where(e => _rungs[e.Id].State != RungState.Closed)];
        return open.Length > 0
                ? Sentence.Of(
                    $"one clean session of {CriterionJudge.EitherOf(open.Select(e => Sentence.Of($"{e.SaidId:small}")))}"
                )
            : before.Length > 0 ? NextStep(before[0], Proposed(before[0]))
            : null;
    }

    /// <summary>The landings that end a hold, or the step that leads to them, or why they wait.</summary>
    private Sentence? Landings(RungReason hold) =>
        _proposing!.Closing(hold.Test is null ? QualityTest.LandingSession : QualityTest.LandingScreen) is { } closing
            ? closing.Step ?? CriterionJudge.Waits(closing.Because, closing.Ruling)
            : hold.CheapestTest;

    private static IEnumerable<string> StepsBefore(Exercise exercise) =>
        exercise
            .Regressions.Concat(exercise.Entry.Select(c => c.OwnedExercise).OfType<string>())
            .Distinct(StringComparer.Ordinal);

    private Rung RungOf(Exercise exercise)
    {
        if (_rungs.TryGetValue(exercise.Id, out Rung? known))
        {
            return known;
        }

        // A circle of owned criteria, which the linter refuses, must not hang: it finds itself closed.
        _rungs[exercise.Id] = new Rung(exercise.Id, RungState.Closed, []);
        return _rungs[exercise.Id] = Judge(exercise);
    }

    private Rung Judge(Exercise exercise)
    {
        CleanSessions log = _sessions[exercise.Id];
        ImmutableArray<RungReason> entry = [.. exercise.Entry.Select(c => EntryReason(c, exercise, log))];
        ImmutableArray<RungReason> closing =
        [
            .. rulings
                .Where(r => r.Effect.Forbids(exercise.Facts))
                .Select(r => new RungReason(r.LimitId, CriterionVerdict.NotMet, r.Because, null, null, null)
                {
                    Ruling = r,
                }),
            .. Held(exercise),
        ];

        bool earned = log.Earned && DaysSince(log) <= options.FadesToOpenAfterDays;

        // Who owns an exercise need not show performance again to keep it; safety criteria always stand.
        IEnumerable<EntryCriterion> standing = earned
            ? exercise.Entry.Where(c => c.Kind == CriterionKind.Safety)
            : exercise.Entry;
        bool entered = standing.All(c => entry.First(r => r.CriterionId == c.Id).Verdict == CriterionVerdict.Met);

        RungState state =
            !closing.IsEmpty || !entered ? RungState.Closed
            : earned ? RungState.Owned
            : RungState.Open;
        if (closing.IsEmpty && entered && !earned && FadedShut(exercise, log) is { } faded)
        {
            return new Rung(exercise.Id, RungState.Closed, [faded, .. entry]);
        }

        // What stands in the way first; how far the log has come only where nothing does.
        IEnumerable<RungReason> reasons = closing.Concat(entry.OrderBy(r => r.Verdict == CriterionVerdict.Met));
        return new Rung(
            exercise.Id,
            state,
            state == RungState.Closed ? [.. reasons] : [.. reasons, LogReason(exercise, log, earned)]
        );
    }

    private RungReason EntryReason(EntryCriterion criterion, Exercise exercise, CleanSessions asking)
    {
        if (criterion.OwnedExercise is not { } id)
        {
            return _judge.Judge(criterion, exercise.Id);
        }

        if (catalogue.Find(id) is not { } before)
        {
            return new RungReason(
                criterion.Id,
                CriterionVerdict.NotTested,
                $"{criterion.Said} Not tested: '{id}' is not in the catalogue.",
                null,
                null,
                $"an entry of the catalogue that exists"
            );
        }

        Rung rung = RungOf(before);
        CleanSessions log = _sessions[id];

        // Who had earned the exercise that asks finds it open while the step before it has faded no further than open.
        bool fadedTogether =
            asking.Earned
            && log.Earned
            && rung.State == RungState.Open
            && DaysSince(log) <= options.FadesToClosedAfterDays;
        return rung.State == RungState.Owned || fadedTogether
            ? new RungReason(
                criterion.Id,
                CriterionVerdict.Met,
                $"{criterion.Said} Met: {Earned(log)}.",
                1,
                log.LastUse,
                null
            )
            : new RungReason(
                criterion.Id,
                Verdict(log),
                $"{criterion.Said} {NotOwned(rung, log)}.",
                0,
                log.LastUse,
                null
            );
    }

    private IEnumerable<RungReason> Held(Exercise exercise)
    {
        if (exercise.Entry.IsEmpty)
        {
            yield break;
        }

        // Bad landings are mended on both legs first; one leg is no easier step.
        if (_landingHold is { } landing && (exercise.Stage != Stage.Landing || exercise.SingleLegLanding))
        {
            yield return landing;
        }
        else if (
            _landingHold is { Date: { } since }
            && exercise.DropRangeM is not null
            && !catalogue.Exercises.Any(e =>
                e is { Stage: Stage.Landing, DropRangeM: null } && _own[e.Id].Clean.Any(d => d > since)
            )
        )
        {
            yield return new RungReason(
                Holds.Drops,
                CriterionVerdict.NotMet,
                $"{_landingHold.Sentence} Nothing is stepped off until a landing on the floor was clean since then.",
                null,
                since,
                null
            )
            {
                Test = _landingHold.Test,
            };
        }

        if (
            _timeOffHold is { } off
            && HighestEarned() is { } highest
            && exercise.Stage >= highest
            && exercise.Intent == "maximal"
        )
        {
            yield return off;
        }
    }

    /// <summary>The highest stage in which something maximal was ever earned.</summary>
    private Stage? HighestEarned() =>
        catalogue
            .Exercises.Where(e => e.Intent == "maximal" && e.Stage != Stage.RunUp && _sessions[e.Id].EverEarned)
            .Select(e => (Stage?)e.Stage)
            .Max();

    private RungReason? FadedShut(Exercise exercise, CleanSessions log)
    {
        if (exercise.Entry.IsEmpty || !log.EverEarned || log.LastUse is not { } last)
        {
            return null;
        }

        int days = DaysSince(log);
        bool steppedUpAgain = StepsBefore(exercise)
            .Any(id => _sessions.TryGetValue(id, out CleanSessions? b) && b.LastClean > last);
        return days <= options.FadesToClosedAfterDays || steppedUpAgain
            ? null
            : new RungReason(
                RungReason.Faded,
                CriterionVerdict.Stale,
                $"Faded: last done on {last}, {days} days ago; a step before it comes first.",
                null,
                last,
                null
            );
    }

    private RungReason LogReason(Exercise exercise, CleanSessions log, bool earned)
    {
        if (earned)
        {
            return new RungReason(
                RungReason.Ownership,
                CriterionVerdict.Met,
                $"Owned: {Earned(log)}.",
                1,
                log.LastUse,
                null
            );
        }

        Sentence sentence =
            log.LastUse is { } last && log.Earned
                ? Sentence.Of($"Not owned any more: last done on {last}; {options.FadesToOpenAfterDays} days at most.")
            : log.LastFlaw is { } flaw
                ? Sentence.Of(
                    $"Not owned, because of {flaw}: {log.Clean.Length} of {options.SessionsToOwn} clean sessions since then."
                )
            : exercise.Entry.IsEmpty && log.LastUse is null
                ? Sentence.Of($"Needs no test: it is where everybody begins.")
            : Sentence.Of(
                $"Not owned yet: {log.Clean.Length} of {options.SessionsToOwn} clean sessions within {options.OwnWithinDays} days."
            );
        return new RungReason(
            RungReason.Ownership,
            Verdict(log),
            sentence,
            0,
            log.LastUse,
            $"{Times(options.SessionsToOwn)} clean sessions within {options.OwnWithinDays} days"
        );
    }

    private int DaysSince(CleanSessions log) => log.LastUse is { } last ? Period.DaysBetween(last, asOf) : int.MaxValue;

    /// <summary>
    /// What leads to owning it: its own clean sessions while it is open; while it is closed, whatever would open it first,
    /// and nothing while a ruling stands against it.
    /// </summary>
    private Sentence NextStep(Exercise exercise, Rung rung) =>
        rung.State != RungState.Closed
            ? Sentence.Of(
                $"{Times(options.SessionsToOwn)} clean sessions within {options.OwnWithinDays} days: {exercise.Said:small}"
            )
        : rung.Reasons.FirstOrDefault() is { } first ? first.CheapestTest ?? CriterionJudge.Waits(first)
        : Sentence.Of($"an entry of the catalogue without a circle");

    private static Sentence Earned(CleanSessions log)
    {
        Sentence days = log.Clean.TakeLast(2).ToArray() switch
        {
            [] => $"",
            [var only] => $"{only}",
            [var first, var second, ..] => $"{first} and {second}",
        };
        return log.Through is { } harder
            ? Sentence.Of($"through {harder.Said:small}, clean on {days}, last kept on {log.LastUse!.Value}")
            : Sentence.Of($"clean on {days}, last kept on {log.LastUse!.Value}");
    }

    private Sentence NotOwned(Rung rung, CleanSessions log) =>
        IsUntried(log) ? Sentence.Of($"Not done yet, so not tested")
        : rung.State == RungState.Closed && log.Earned ? Sentence.Of($"Stale: it was owned, but is closed now")
        : log is { Earned: true, LastUse: { } last } ? Sentence.Of($"Stale: last done on {last}")
        : log.LastFlaw is { } flaw
            ? Sentence.Of(
                $"Not met, because of {flaw}: {log.Clean.Length} of {options.SessionsToOwn} clean sessions since then"
            )
        : Sentence.Of($"Not met: {log.Clean.Length} of {options.SessionsToOwn} clean sessions");

    /// <summary>Never done, neither well nor badly.</summary>
    private static bool IsUntried(CleanSessions log) => log is { LastUse: null, LastFlaw: null };

    private static CriterionVerdict Verdict(CleanSessions log) =>
        IsUntried(log) ? CriterionVerdict.NotTested
        : log.Earned ? CriterionVerdict.Stale
        : CriterionVerdict.NotMet;

    private static Sentence Times(int n) => n == 2 ? Sentence.Of($"two") : Sentence.Of($"{n}");
}
