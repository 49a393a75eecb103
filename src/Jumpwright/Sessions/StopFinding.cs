using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>A stop rule that the log says was reached, and whether the exercise went on after it.</summary>
/// <param name="ExerciseId">Exercise.</param>
/// <param name="Set">After which set it was reached; null: the log has no sets.</param>
/// <param name="WentOn">True when more sets were logged after it.</param>
/// <param name="Sentence">What was seen, with numbers.</param>
public sealed record StopFinding(string ExerciseId, int? Set, bool WentOn, Sentence Sentence)
{
    /// <summary>The sentence with the exercise's name in the place of its id, as people say it.</summary>
    public Sentence Saying(SaidExercise exercise) =>
        Sentence.Replacing(Named(ExerciseId), Quantities.Sentence.Of($"{exercise}"));

    /// <summary>An exercise as the sentence has it: by its id.</summary>
    internal static Sentence Named(string exerciseId) => $"{SaidExercise.ById(exerciseId)}";
}
