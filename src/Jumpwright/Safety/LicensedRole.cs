namespace Jumpwright.Safety;

/// <summary>
/// Whether a role, as somebody wrote it, is one that is licensed to judge an injury. The words are <c>common practice</c>; titles
/// and licences differ by country, and local rules go first. A bare name is not a role.
/// </summary>
internal static class LicensedRole
{
    private static readonly string[] Stems =
    [
        "physiotherap",
        "physical therap",
        "physician",
        "surgeon",
        "orthopaed",
        "orthoped",
        "podiatrist",
        "athletic trainer",
        "athletic therapist",
        "sports medicine",
        "medical doctor",
    ];

    private static readonly string[] Words = ["physio", "doctor", "dr", "md", "gp", "pt", "dpt"];

    private static readonly string[] NotYet = ["student", "assistant", "former", "trainee", "not"];

    /// <summary>True when the words name a licensed role.</summary>
    public static bool Names(string? role)
    {
        if (string.IsNullOrWhiteSpace(role))
        {
            return false;
        }

        string text = role.Trim().ToLowerInvariant();
        string[] words = TextWords.Of(text);
        return !words.Intersect(NotYet, StringComparer.Ordinal).Any()
            && (
                Stems.Any(stem => text.Contains(stem, StringComparison.Ordinal))
                || words.Intersect(Words, StringComparer.Ordinal).Any()
            );
    }
}
