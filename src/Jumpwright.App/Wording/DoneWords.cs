using Jumpwright.Athletes;
using Jumpwright.Exercises;

namespace Jumpwright.App.Wording;

/// <summary>Work done in the shorthand of a training book.</summary>
internal static class DoneWords
{
    /// <summary>How a row of work done is said, with the exercises' names.</summary>
    public static Func<CompletedItem, string> Of(Catalogue catalogue) =>
        item =>
            $"{catalogue.Find(item.ExerciseId)?.Name ?? item.ExerciseId} "
            + (item.Set is { } set ? $"set {set}, {item.Reps} reps" : $"{item.Sets} × {item.Reps}")
            + $", {item.Contacts} contacts"
            + (item.LandingFaults is > 0 ? $", {item.LandingFaults} landing faults" : "")
            + (item.PainDuring is { } during ? $", pain during {ItemWords.Number(during)} of 10" : "")
            + (item.PainNextMorning is { } morning ? $", the morning after {ItemWords.Number(morning)} of 10" : "");
}
