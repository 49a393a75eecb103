using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Safety.Conditions;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>
/// What one athlete may do on one day, asked in one place by card, page, report and plan: each exercise and each test is open, or closed with a
/// typed reason and its sentence. It asks the day's rulings, the ladder and the squad's kit. How much of it, how high, how heavy and how near to
/// other work is asked after this, and closes more. Nobody is cleared: open means that nothing known here stands against it.
/// </summary>
public sealed class OpenWork
{
    private readonly Catalogue _catalogue;
    private readonly Func<string, Rung?> _rungOf;
    private readonly ImmutableArray<KitCount>? _kit;

    /// <summary>From what was worked out already.</summary>
    /// <param name="ladder">The athlete's ladder, of that day or an earlier one.</param>
    /// <param name="rulings">Of that day, as <see cref="RulingsOn"/> gives them.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="kit">The squad's kit; what is not listed is not there.</param>
    public OpenWork(Ladder ladder, ImmutableArray<Ruling> rulings, Catalogue catalogue, ImmutableArray<KitCount> kit)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        ArgumentNullException.ThrowIfNull(catalogue);
        Ladder = ladder;
        Rulings = rulings;
        _catalogue = catalogue;
        _kit = kit;
        Dictionary<string, Rung> rungs = ladder.Rungs.ToDictionary(r => r.ExerciseId, StringComparer.Ordinal);
        _rungOf = rungs.GetValueOrDefault;
    }

    /// <summary>While a ladder is made, which speaks of the athlete alone: kit is not asked.</summary>
    internal OpenWork(Ladder ladder, Func<string, Rung?> rungOf, ImmutableArray<Ruling> rulings, Catalogue catalogue)
    {
        Ladder = ladder;
        Rulings = rulings;
        _catalogue = catalogue;
        _rungOf = rungOf;
    }

    /// <summary>Worked out for one athlete on one day, under the limits that the squad set.</summary>
    /// <param name="day">The day.</param>
    /// <param name="squad">Its kit, its floors, its air.</param>
    /// <param name="history">Whose.</param>
    /// <param name="profile">What is known of them on that day.</param>
    /// <param name="catalogue">The exercises.</param>
    public static OpenWork On(LocalDate day, Squad squad, History history, Profile profile, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(squad);
        History own = squad.Under(history);
        ImmutableArray<Ruling> safety = SafetyOn(own, catalogue, day);
        return new(
            Ladders.For(profile, own, catalogue, day, safety),
            safety.AddRange(ConditionRules.For(squad, day, LimitBook.For(own, day))),
            catalogue,
            squad.Kit
        );
    }

    /// <summary>The ladder.</summary>
    public Ladder Ladder { get; }

    /// <summary>The day's rulings.</summary>
    public ImmutableArray<Ruling> Rulings { get; }

    /// <summary>The exercises.</summary>
    internal Catalogue Catalogue => _catalogue;

    /// <summary>The squad's kit.</summary>
    internal ImmutableArray<KitCount> Kit => _kit ?? [];

    /// <summary>All rulings of the day: of the athlete's safety, then of the air and of the floors that are jumped on.</summary>
    /// <param name="history">Whose; limits that the squad set count.</param>
    /// <param name="squad">Its floors, its air.</param>
    /// <param name="catalogue">The exercises: a restriction that names one nobody knows closes everything.</param>
    /// <param name="day">The day.</param>
    /// <param name="floors">Of the sessions held that day; null: of the week's windows.</param>
    public static ImmutableArray<Ruling> RulingsOn(
        History history,
        Squad squad,
        Catalogue catalogue,
        LocalDate day,
        IEnumerable<Surface?>? floors = null
    )
    {
        ArgumentNullException.ThrowIfNull(squad);
        ArgumentNullException.ThrowIfNull(catalogue);
        History own = squad.Under(history);
        LimitBook limits = LimitBook.For(own, day);
        return SafetyOn(own, catalogue, day)
            .AddRange(
                floors is null ? ConditionRules.For(squad, day, limits) : ConditionRules.For(squad, day, floors, limits)
            );
    }

    private static ImmutableArray<Ruling> SafetyOn(History own, Catalogue catalogue, LocalDate day) =>
        SafetyRules.For(own, day, catalogue.Exercises.Select(e => e.Id).ToHashSet(StringComparer.Ordinal));

    /// <summary>The same with another ladder: what will be open once a step of the plan was done.</summary>
    internal OpenWork Under(Ladder ladder) => new(ladder, Rulings, _catalogue, Kit);

    /// <summary>The exercise, at the lowest height it is done from.</summary>
    public Standing Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Of(exercise, exercise.DropRangeM?.MinM);
    }

    /// <summary>The exercise, from that height.</summary>
    /// <param name="exercise">Which.</param>
    /// <param name="dropM">Height stepped from, m; null without a drop.</param>
    /// <param name="insteadOfBar">Kit that stands in for its bar; null: as the exercise says.</param>
    public Standing Of(Exercise exercise, double? dropM, string? insteadOfBar = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return new([
            .. Forbidden(exercise, exercise.FactsAt(dropM)),
            .. OnLadder(exercise),
            .. Lacking(exercise, insteadOfBar),
        ]);
    }

    /// <summary>The test of a finding: what would settle it.</summary>
    public Standing Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Asks is { } test ? Of(TestForms.Of(test)) : new([Unknown]);
    }

    /// <summary>The profile with why a test waits in the place of a test that is closed. What is known already stays.</summary>
    public Profile In(Profile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        bool untested = profile.Findings.All(f => f.Verdict == FindingVerdict.NotTested);
        NamedTest? named = profile.Test;
        var findings = ImmutableArray.CreateBuilder<Finding>(profile.Findings.Length);
        foreach (Finding finding in profile.Findings)
        {
            Finding told = Told(finding);
            findings.Add(told);
            if (named?.Quality == finding.Quality && told.NextTest is { } test && test != finding.NextTest)
            {
                named = told.TestWaits
                    ? Of(finding).First?.Step is { } step && !CriterionJudge.IsWaiting(step)
                        ? NamedTest.First(finding.Quality, step)
                        : Waits(finding)
                    : untested
                        ? NamedTest.First(finding.Quality, test)
                        : finding.Verdict == FindingVerdict.NotTested
                            ? NamedTest.OfUntested(finding.Quality, test)
                            : NamedTest.Settling(finding.Quality, test);
            }
        }

        ImmutableArray<Finding> all = findings.MoveToImmutable();
        // Of several that nobody tested, one that may be tested now is named before one that waits.
        if (
            !untested
            && named is not null
            && all.Any(f => f is { TestWaits: true, Verdict: FindingVerdict.NotTested } && f.Quality == named.Quality)
            && profile.Test is { Quality: not (Quality.Landing or Quality.SingleLeg) }
            && all.FirstOrDefault(f => f is { TestWaits: false, Verdict: FindingVerdict.NotTested })
                is { NextTest: { } free } instead
        )
        {
            named = NamedTest.OfUntested(instead.Quality, free);
        }

        return profile with
        {
            Findings = all,
            Test = named,
        };
    }

    private static NamedTest Waits(Finding finding) =>
        new(
            finding.Quality,
            finding.Verdict == FindingVerdict.NotTested
                ? Sentence.Of($"The test of {QualityNames.Of(finding.Quality)} waits: it is not for now.")
                : Sentence.Of($"Its test waits: it is not for now.")
        );

    private Finding Told(Finding finding)
    {
        if (finding.NextTest is not { } test)
        {
            return finding;
        }

        Standing standing = Of(finding);
        if (standing.First is { } closing)
        {
            return finding with { NextTest = closing.InPlaceOfTest, TestWaits = true };
        }

        return standing.With is { } jump ? finding with { NextTest = $"{jump}: {test:small}" } : finding;
    }

    /// <summary>A test that an entry criterion names.</summary>
    /// <param name="test">The test.</param>
    /// <param name="task">The task its measure must come from; null for a test by hand.</param>
    /// <param name="asking">The exercise that asks: no exercise waits for a test because it waits itself.</param>
    internal Standing Of(EntryTest test, string? task, string? asking)
    {
        ImmutableArray<TestForm> forms = TestForms.Of(test.Id, task);
        return forms.All(f => f.Exercises.IsEmpty) ? ByHand(test) : Of(forms, asking);
    }

    /// <summary>The first way to do it that is open; where none is, what closes the easiest.</summary>
    internal Standing Of(ImmutableArray<TestForm> forms, string? asking = null)
    {
        ImmutableArray<Closing> easiest = [Unknown];
        foreach (TestForm form in forms)
        {
            easiest = [.. form.Exercises.SelectMany(id => ClosingsOf(id, asking)).OrderBy(c => c.By)];
            if (easiest.IsEmpty)
            {
                return new([]) { With = form.IsNamed ? _catalogue.Find(form.Exercises[0])?.Said : null };
            }
        }

        return new(easiest);
    }

    private IEnumerable<Closing> ClosingsOf(string exerciseId, string? asking) =>
        _catalogue.Find(exerciseId) is not { } exercise
            ?
            [
                new Closing(ClosedBy.NotKnown, $"The catalogue has no '{exerciseId}'.")
                {
                    Brief = $"the catalogue does not have it",
                },
            ]
            : Of(exercise).Closings.Where(c => c.By != ClosedBy.Ladder || exerciseId != asking);

    /// <summary>
    /// A test that is no exercise of the catalogue: on nobody's list of what is allowed, and not while pain holds back the tissue that it
    /// works until it can no more.
    /// </summary>
    private Standing ByHand(EntryTest test) =>
        new([
            .. Rulings
                .Where(r =>
                    r.Effect is NothingPlanned or OnlyExercises
                    || r.Effect is TierAtMost { Tier: <= 1 } low && low.Tissue == test.Exhausts
                )
                .Select(Of),
        ]);

    private IEnumerable<Closing> Forbidden(Exercise exercise, ExerciseFacts facts) =>
        Rulings.Where(r => r.Effect.Forbids(facts)).Select(r => Of(r) with { Exercise = exercise.Said });

    private static Closing Unknown =>
        new(ClosedBy.NotKnown, $"Nobody here knows what is jumped in that test.") { Brief = $"nobody knows the test" };

    private static Closing Of(Ruling ruling) =>
        new(ClosedBy.Ruling, ruling.Because) { Ruling = ruling, Brief = $"{ruling.Because:open}" };

    private IEnumerable<Closing> OnLadder(Exercise exercise)
    {
        if (_rungOf(exercise.Id) is not { } rung)
        {
            yield return OnLadder(exercise, $"It is not on the athlete's ladder.", null);
            yield break;
        }

        if (rung.State != RungState.Closed)
        {
            yield break;
        }

        bool said = false;
        foreach (RungReason reason in rung.Reasons.Where(r => r.Verdict != CriterionVerdict.Met))
        {
            said = true;
            yield return OnLadder(exercise, reason.Sentence, reason.CheapestTest ?? CriterionJudge.Waits(reason));
        }

        if (!said)
        {
            yield return OnLadder(exercise, $"It is not on the athlete's ladder.", null);
        }
    }

    private static Closing OnLadder(Exercise exercise, Sentence because, Sentence? step) =>
        new(ClosedBy.Ladder, because)
        {
            Exercise = exercise.Said,
            Step = step,
            Brief = $"closed on the ladder",
        };

    private IEnumerable<Closing> Lacking(Exercise exercise, string? insteadOfBar) =>
        exercise
            .Kit.Where(need => insteadOfBar is null || need.Id != "hex-bar")
            .Concat(insteadOfBar is { } other ? [new KitNeed(other, 1)] : [])
            .Where(need => _kit is { } kit && kit.Where(k => k.Id == need.Id).Sum(k => k.Count) < need.Count)
            .Select(missing => new Closing(
                ClosedBy.Kit,
                $"{exercise.Said} needs {missing.Count} × {SaidKit.ById(missing.Id)}, which the squad's kit does not have."
            )
            {
                Exercise = exercise.Said,
                Brief = $"no {new SaidKit(missing.Id)} in the squad's kit",
            });
}
