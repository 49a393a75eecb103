using System.Collections.Frozen;
using System.Text.Json;
using Jumpwright.Quantities;
using Jumpwright.Safety.Conditions;

namespace Jumpwright.Safety;

/// <summary>Limits' names as people say them: of the book, of a plan, and those of one kit or tissue.</summary>
public static class LimitNames
{
    private const string Resource = "Jumpwright.Safety.Data.limit-names.json";

    private static readonly Lazy<FrozenDictionary<string, string>> Names = new(() =>
        JsonSerializer
            .Deserialize<Dictionary<string, string>>(Embedded.Text(Resource), Embedded.Json)!
            .ToFrozenDictionary(StringComparer.Ordinal)
    );

    /// <summary>Ids of all limits that have a name of their own.</summary>
    public static IEnumerable<string> Named => Names.Value.Keys;

    /// <summary>Ids of all that rules of safety and of the day's circumstances forbid by.</summary>
    public static IEnumerable<string> OfRulings =>
        SafetyRules.All.Select(r => r.Id).Append(ConditionRules.HardFloor).Append(ConditionRules.Heat);

    /// <summary>For example <c>contacts in a week</c> or <c>kit time, plyo box</c>; a limit without a name is named by its id in words.</summary>
    public static Sentence Of(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return After(id, "fresh-kit-minutes-") is { } fresh
                ? Sentence.Of($"kit time for fresh work, {new SaidKit(fresh)}")
            : After(id, "kit-minutes-") is { } kit ? Sentence.Of($"kit time, {new SaidKit(kit)}")
            : After(id, "recovery-hours-") is { } hours && TissueIn(hours) is { } rested
                ? Sentence.Of($"hours of recovery, {rested}")
            : After(id, "weekly-growth-") is { } growth && TissueIn(growth) is { } loaded
                ? Sentence.Of($"increase from week to week, {loaded}")
            : After(id, "tissue-load-after-symptom-") is { } sore && TissueIn(sore) is { } spared
                ? Sentence.Of($"load after a symptom, {spared}")
            : Sentence.OfCatalogue(Names.Value.GetValueOrDefault(id) ?? id.Replace('-', ' '));
    }

    /// <summary>A tissue as limits name it.</summary>
    public static Sentence Of(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => $"Achilles tendon",
            Tissue.Patellar => $"patellar tendon",
            Tissue.Hip => $"hip",
            _ => $"bone",
        };

    private static string? After(string id, string opening) =>
        id.StartsWith(opening, StringComparison.Ordinal) ? id[opening.Length..] : null;

    private static Sentence? TissueIn(string word) =>
        Enum.TryParse(word, ignoreCase: true, out Tissue tissue) ? Of(tissue) : null;
}
