using System.Collections.Immutable;

namespace Jumpwright.App.Wording;

/// <summary>Roles of those who allow and forbid. Files keep them in English, by which a licensed one is known.</summary>
internal static class RoleWords
{
    /// <summary>Licensed ones that a form offers.</summary>
    public static ImmutableArray<string> Licensed { get; } = ["physiotherapist", "physician", "surgeon"];

    /// <summary>A role as the page names it; one that nobody knows stands as it was written.</summary>
    public static Piece Of(string role) =>
        In(Speech.Now.Language, role) is { } said ? new(said) : new(role, IsEnglish: true);

    /// <summary>A role in that language; null where nobody gave it a word.</summary>
    public static string? In(string language, string role) =>
        TextBook.Of(language, $"role.{role.Trim().ToLowerInvariant()}");
}
