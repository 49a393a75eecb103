using Jumpwright.Athletes;
using Jumpwright.Exercises;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>Work done in the shorthand of a training book.</summary>
internal static class DoneWords
{
    /// <summary>How a day's rows of work done are said, with the exercises' names.</summary>
    /// <param name="catalogue">Whose names.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="withPain">Without it where a sheet lies about: no more about health than is needed there.</param>
    public static IEnumerable<Piece> Of(Catalogue catalogue, IEnumerable<CompletedItem> rows, bool withPain = true)
    {
        string between = "";
        foreach (CompletedItem item in rows)
        {
            yield return new(between);
            yield return SpokenExercises.Named(catalogue, item.ExerciseId);
            yield return new($" {string.Join(", ", Row(item, withPain))}");
            between = "; ";
        }

        yield return new(".");
    }

    private static IEnumerable<string> Row(CompletedItem item, bool withPain)
    {
        yield return item.Set is { } set ? T["done.set-reps", set, item.Reps] : $"{item.Sets} × {item.Reps}";
        yield return Counted("done.contacts", item.Contacts);
        if (item.LandingFaults is > 0 and var faults)
        {
            yield return Counted("done.faults", faults);
        }

        if (withPain && item.PainDuring is { } during)
        {
            yield return T["done.pain-during", ItemWords.Number(during)];
        }

        if (withPain && item.PainNextMorning is { } morning)
        {
            yield return T["done.pain-morning", ItemWords.Number(morning)];
        }
    }
}
