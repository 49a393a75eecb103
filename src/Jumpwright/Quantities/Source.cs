using System.Text.RegularExpressions;

namespace Jumpwright.Quantities;

/// <summary>A source that a formula or threshold carries beside it.</summary>
/// <param name="Id">Kebab-case id in the bibliography.</param>
/// <param name="Text">Author, year, place, and what it supports, in our own words.</param>
/// <param name="Kind">What kind of authority it is.</param>
/// <param name="FromMemory">True while the value was not checked in the source itself.</param>
/// <param name="Doi">Digital object identifier without a prefix, where one is known.</param>
public sealed partial record Source(
    string Id,
    string Text,
    SourceKind Kind,
    bool FromMemory = false,
    string? Doi = null
)
{
    /// <summary>As people cite it in a line: who and which year, or what its text begins with where no year is known.</summary>
    public string Brief =>
        Opened()
            .Replace(" and colleagues", " et al.", StringComparison.Ordinal)
            .Replace(" and ", " & ", StringComparison.Ordinal);

    private string Opened()
    {
        if (WhoAndYear().Match(Text) is { Success: true } cited)
        {
            return cited.Value;
        }

        string opening = Opening().Match(Text).Value;
        return opening.EndsWith("et al", StringComparison.Ordinal) ? opening + "." : opening;
    }

    [GeneratedRegex(@"^[^:;()\d]{3,90}? (?:1[89]|20)\d\d(?=[,. ])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex WhoAndYear();

    [GeneratedRegex(@"^(?:[A-Z]\. )?.+?(?=\. |, |: | \(|\.?$)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Opening();
}
