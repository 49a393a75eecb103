using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Prescribing;

/// <summary>
/// Tests that were done on a day on which somebody's written word, or that nobody had written one after an operation, stood against them. They are kept
/// and read like any others, since they happened; it is said, so that whoever treats the athlete can ask.
/// </summary>
public static class TestsInsideRestrictions
{
    /// <summary>One sentence for each day and each word against it, the latest first, as long as a test speaks.</summary>
    /// <param name="history">Whose.</param>
    /// <param name="catalogue">What is jumped in the tests.</param>
    /// <param name="day">Up to that day.</param>
    public static ImmutableArray<Sentence> Of(History history, Catalogue catalogue, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(catalogue);
        if (history.Restrictions.IsEmpty && history.Athlete.Operation is null)
        {
            return [];
        }

        LocalDate since = day.PlusDays(-LimitBook.For(history, day).Whole("test-stale"));
        IReadOnlySet<string> ids = catalogue.Exercises.Select(e => e.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from test in Jumped(history, catalogue)
            where test.Date >= since && test.Date <= day
            group test by test.Date into ofDay
            orderby ofDay.Key descending
            let words = SafetyRules
                .For(history, ofDay.Key, ids)
                .Where(r => r.LimitId is WrittenWord or AfterOperation)
                .ToArray()
            from against in ofDay
                .Select(t => (t.Name, Word: words.FirstOrDefault(w => w.Effect.Forbids(t.Facts))))
                .Where(t => t.Word is not null)
                .GroupBy(t => t.Word!.Because, t => t.Name)
            select Sentence.Of(
                $"Tested on {ofDay.Key} all the same: {Sentence.Join(", ", against.Distinct())}. What stood against it that day: {against.Key:open}. Ask whether the test was agreed."
            ),
        ];
    }

    private const string WrittenWord = "restriction";
    private const string AfterOperation = "after-operation";

    /// <summary>Recordings and tests by hand, each as the easiest jump that it can have been.</summary>
    private static IEnumerable<(LocalDate Date, Sentence Name, ExerciseFacts Facts)> Jumped(
        History history,
        Catalogue catalogue
    ) =>
        history
            .Trials.Select(t => (t.Date, Forms: TestForms.Of("", t.Trial.Task.Id()), t.Labels.DropHeightM))
            .Concat(
                history
                    .Screens.Where(s => EntryTests.Find(s.Test) is { ExerciseId: not null })
                    .Select(s => (s.Date, Forms: TestForms.Of(s.Test, null), DropHeightM: (double?)null))
            )
            .Where(t => !t.Forms.IsEmpty && t.Forms[^1].Exercises is [_, ..])
            .Select(t => (t.Date, Exercise: catalogue.Find(t.Forms[^1].Exercises[^1]), t.DropHeightM))
            .Where(t => t.Exercise is not null)
            .Select(t =>
                (
                    t.Date,
                    Sentence.Of($"{t.Exercise!.Said:small}"),
                    t.Exercise.FactsAt(t.DropHeightM ?? t.Exercise.DropRangeM?.MinM)
                )
            );
}
