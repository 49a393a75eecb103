using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>Exercises as a sentence lists them.</summary>
internal static class Listed
{
    /// <summary>Ids in words and in order, for example <c>ankle bounce, low box jump</c>.</summary>
    public static Sentence Of(IEnumerable<string> exerciseIds) =>
        Sentence.Join(
            ", ",
            exerciseIds.Order(StringComparer.Ordinal).Select(id => Sentence.Of($"{SaidExercise.InWords(id)}"))
        );
}
