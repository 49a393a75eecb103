using Jumpwright.Quantities;

namespace Jumpwright.Safety.Rules;

/// <summary>Exercises as a sentence lists them.</summary>
internal static class Listed
{
    /// <summary>In order: a page names them as the catalogue does, a file by their ids in words (<c>ankle bounce; low box jump</c>). A name may hold a comma, so none stands between two.</summary>
    public static Sentence Of(IEnumerable<string> exerciseIds) =>
        Sentence.Join(
            "; ",
            exerciseIds.Order(StringComparer.Ordinal).Select(id => Sentence.Of($"{SaidExercise.InWords(id):small}"))
        );
}
