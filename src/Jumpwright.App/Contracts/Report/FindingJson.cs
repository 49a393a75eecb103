using System.Text.Json.Serialization;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>What is known of one quality.</summary>
internal sealed record FindingJson(
    [property: JsonPropertyName("quality")] string Quality,
    [property: JsonPropertyName("verdict")] string Verdict,
    [property: JsonPropertyName("probability")] double? Probability,
    [property: JsonPropertyName("sentence")] string Sentence,
    [property: JsonPropertyName("next_test")] string? NextTest,
    [property: JsonPropertyName("source")] string Source
)
{
    public static FindingJson Of(Finding finding) =>
        new(
            ContractWords.Kebab(finding.Quality.ToString()),
            ContractWords.Kebab(finding.Verdict.ToString()),
            finding.Probability,
            finding.Sentence,
            finding.NextTest,
            finding.Source.Id
        );
}
