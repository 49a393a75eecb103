using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>A stop rule that the log says was reached, and whether the exercise went on after it.</summary>
/// <param name="ExerciseId">Exercise.</param>
/// <param name="Set">After which set it was reached; null: the log has no sets.</param>
/// <param name="WentOn">True when more sets were logged after it.</param>
/// <param name="Seen">What was seen, with numbers.</param>
public sealed record StopFinding(string ExerciseId, int? Set, bool WentOn, Sentence Seen)
{
    /// <summary>The trial of a test after which it was reached; null where it was no test.</summary>
    public int? Trial { get; init; }

    /// <summary>All of it, the exercise by its id.</summary>
    public Sentence Sentence => Saying(SaidExercise.ById(ExerciseId));

    /// <summary>The same with the exercise named as given.</summary>
    public Sentence Saying(SaidExercise exercise)
    {
        Sentence at =
            Trial is { } trial ? Quantities.Sentence.Of($"Test, {exercise}, trial {trial}")
            : Set is { } set ? Quantities.Sentence.Of($"{exercise}, set {set}")
            : Quantities.Sentence.Of($"{exercise}");
        return WentOn
            ? Quantities.Sentence.Of($"{at}: {Seen}, and it went on.")
            : Quantities.Sentence.Of($"{at}: {Seen}.");
    }
}
