using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>A stop sign, as it was written down on a page. It stays until a licensed person lifts it in writing.</summary>
/// <param name="What">One of <see cref="All"/>.</param>
/// <param name="Site">Where, as files name it; null when not said.</param>
/// <param name="Side">left, right or both; null when not said.</param>
internal sealed record SignEntry(
    [property: JsonPropertyName("what")] string What,
    [property: JsonPropertyName("site")] string? Site,
    [property: JsonPropertyName("side")] string? Side
)
{
    /// <summary>What can be written, each with the kind and the words by which symptoms.csv says it.</summary>
    public static readonly ImmutableSortedDictionary<string, (string Kind, string? Note)> All =
        ImmutableSortedDictionary<string, (string, string?)>.Empty.AddRange(
            new Dictionary<string, (string, string?)>(StringComparer.Ordinal)
            {
                ["chest-pain"] = ("other", "chest pain"),
                ["faint"] = ("other", "fainted"),
                ["giving-way"] = ("giving-way", null),
                ["head-knock"] = ("other", "head knock"),
                ["illness"] = ("illness", null),
                ["locking"] = ("locking", null),
                ["numbness"] = ("numbness", null),
                ["pop"] = ("other", "felt pop"),
                ["swelling"] = ("swelling", null),
            }
        );
}
