using System.Collections.Immutable;

namespace Jumpwright.App.Wording;

/// <summary>Roles of those who allow and forbid. Files keep them in English, by which a licensed one is known.</summary>
internal static class RoleWords
{
    /// <summary>Licensed ones that a form offers.</summary>
    public static ImmutableArray<string> Licensed { get; } = ["physiotherapist", "physician", "surgeon"];

    /// <summary>A role as the page names it; one that nobody knows stands as it was written.</summary>
    public static Piece Of(string role) =>
        TextBook.Find($"role.{role.Trim().ToLowerInvariant()}") is { } said ? new(said) : new(role, IsEnglish: true);
}
