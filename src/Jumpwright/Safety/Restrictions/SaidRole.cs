using Jumpwright.Quantities;

namespace Jumpwright.Safety.Restrictions;

/// <summary>A role as somebody wrote it; the usual ones have words in the page's language, any other stands as it was written.</summary>
/// <param name="Written">What stands in the entry.</param>
internal sealed record SaidRole(string Written) : ISaid
{
    private static readonly Dictionary<string, string> German = new(StringComparer.OrdinalIgnoreCase)
    {
        ["physiotherapist"] = "Physiotherapie",
        ["physical therapist"] = "Physiotherapie",
        ["physio"] = "Physiotherapie",
        ["physician"] = "ärztlich",
        ["doctor"] = "ärztlich",
        ["team doctor"] = "ärztlich",
        ["surgeon"] = "Chirurgie",
    };

    public string In(string language) =>
        language == "de" && German.TryGetValue(Written, out string? words) ? words : Written;
}
