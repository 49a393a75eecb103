using System.Collections.Immutable;
using System.Globalization;
using System.Resources;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>
/// The texts of the pages by key, from Texts.en.resx and Texts.de.resx. Both stand in the program itself and are chosen by
/// <see cref="Speech"/>, not by the runtime's culture, so that nothing of the system's language data is needed.
/// </summary>
internal sealed class TextBook
{
    /// <summary>English first: what stands when nothing else is asked for.</summary>
    public static readonly ImmutableArray<string> Languages = ["en", "de"];

    private static readonly ImmutableDictionary<string, ResourceManager> Books = Languages.ToImmutableDictionary(
        l => l,
        l => new ResourceManager("Jumpwright.App.Wording.Texts." + l, typeof(TextBook).Assembly)
    );

    private TextBook() { }

    /// <summary>The one book; pages call it T.</summary>
    public static TextBook T { get; } = new();

    /// <summary>The text in the language of the request.</summary>
    public string this[string key] =>
        Find(key) ?? throw new MissingManifestResourceException($"There is no text '{key}'.");

    /// <summary>The text in the language of the request, or null where there is none of that key.</summary>
    public static string? Find(string key) => Of(Speech.Now.Language, key);

    /// <summary>The text with its gaps filled.</summary>
    public string this[string key, params object?[] filled] =>
        string.Format(Numerals.In(Speech.Now.Language), this[key], filled);

    /// <summary>A count in words: the key's <c>.one</c> or <c>.many</c>.</summary>
    public static string Counted(string key, int count) => T[$"{key}.{(count == 1 ? "one" : "many")}", count];

    /// <summary>The text in that language, or null.</summary>
    public static string? Of(string language, string key) =>
        Books.GetValueOrDefault(language)?.GetString(key, CultureInfo.InvariantCulture);

    /// <summary>All keys of a language.</summary>
    public static IEnumerable<string> Keys(string language)
    {
        ResourceSet all = Books[language].GetResourceSet(CultureInfo.InvariantCulture, true, false)!;
        foreach (System.Collections.DictionaryEntry entry in all)
        {
            yield return (string)entry.Key;
        }
    }

    /// <summary>The first of our languages that a browser asks for (RFC 9110 §12.5.4); English where it asks for none of them.</summary>
    public static string Asked(string? acceptLanguage) =>
        (acceptLanguage ?? "")
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Take(20)
            .Select(part => part.Split(';', StringSplitOptions.TrimEntries))
            .Select(part => (Language: part[0].Split('-')[0].ToLowerInvariant(), Weight: Weight(part)))
            .Where(part => part.Weight > 0 && Languages.Contains(part.Language))
            .OrderByDescending(part => part.Weight)
            .Select(part => part.Language)
            .FirstOrDefault(Languages[0]);

    private static double Weight(string[] part) =>
        part.Length < 2 || !part[1].StartsWith("q=", StringComparison.Ordinal) ? 1
        : double.TryParse(part[1][2..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double q) ? q
        : 0;
}
