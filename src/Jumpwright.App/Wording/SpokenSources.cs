using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>Sources as they are cited: literature stays in the language of the bibliography, the house's own rules and the trade's practice are said in the page's.</summary>
internal static class SpokenSources
{
    public static Piece Of(Source source) =>
        source.Kind is SourceKind.House or SourceKind.CommonPractice
        && TextBook.Find($"source.{source.Id}") is { } words
            ? new(words)
            : new(source.Text, IsEnglish: true);
}
