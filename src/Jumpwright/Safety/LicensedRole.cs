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

    private static readonly string[] Words = ["physio", "doctor", "dr", "md", "gp", "dpt"];

    /// <summary>
    /// Words that take it away: not yet or no longer licensed, or somebody else who speaks for one. "PT" alone may be a personal
    /// trainer and is no role here.
    /// </summary>
    private static readonly string[] TakenAway =
    [
        "student",
        "assistant",
        "aide",
        "intern",
        "trainee",
        "former",
        "ex",
        "retired",
        "not",
        "no",
        "unlicensed",
        "coach",
        "parent",
        "mother",
        "father",
        "athlete",
        "player",
        "self",
        "manager",
        "teacher",
    ];

    /// <summary>True when the words name a licensed role.</summary>
    public static bool Names(string? role)
    {
        if (string.IsNullOrWhiteSpace(role))
        {
            return false;
        }

        string text = role.Trim().ToLowerInvariant();
        string[] words = TextWords.Of(text);
        return !words.Intersect(TakenAway, StringComparer.Ordinal).Any()
            && (
                Stems.Any(stem => text.Contains(stem, StringComparison.Ordinal))
                || words.Intersect(Words, StringComparer.Ordinal).Any()
            );
    }
}
