using Jumpwright.Quantities;
using Jumpwright.Safety.Conditions;

namespace Jumpwright.Safety;

/// <summary>Limits' names as people say them: of the book, of a plan, and those of one kit or tissue.</summary>
public static class LimitNames
{
    /// <summary>Ids of all that rules of safety and of the day's circumstances forbid by.</summary>
    public static IEnumerable<string> OfRulings =>
        SafetyRules.All.Select(r => r.Id).Append(ConditionRules.HardFloor).Append(ConditionRules.Heat);

    /// <summary>For example <c>contacts per week</c> or <c>kit minutes plyo box</c>.</summary>
    public static Sentence Of(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return After(id, "fresh-kit-minutes-") is { } fresh ? Sentence.Of($"fresh kit minutes {new SaidKit(fresh)}")
            : After(id, "kit-minutes-") is { } kit ? Sentence.Of($"kit minutes {new SaidKit(kit)}")
            : After(id, "recovery-hours-") is { } hours && TissueIn(hours) is { } rested
                ? Sentence.Of($"recovery hours {rested}")
            : After(id, "weekly-growth-") is { } growth && TissueIn(growth) is { } loaded
                ? Sentence.Of($"weekly growth {loaded}")
            : After(id, "tissue-load-after-symptom-") is { } sore && TissueIn(sore) is { } spared
                ? Sentence.Of($"tissue load after symptom {spared}")
            : Sentence.OfCatalogue(id.Replace('-', ' '));
    }

    /// <summary>A tissue as limits name it.</summary>
    public static Sentence Of(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => $"achilles",
            Tissue.Patellar => $"patellar",
            Tissue.Hip => $"hip",
            _ => $"bone",
        };

    private static string? After(string id, string opening) =>
        id.StartsWith(opening, StringComparison.Ordinal) ? id[opening.Length..] : null;

    private static Sentence? TissueIn(string word) =>
        Enum.TryParse(word, ignoreCase: true, out Tissue tissue) ? Of(tissue) : null;
}
