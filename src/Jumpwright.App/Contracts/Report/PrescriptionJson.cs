using System.Text.Json.Serialization;
using Jumpwright.Prescribing.Reports;
using NodaTime;

namespace Jumpwright.App.Contracts;

/// <summary>One athlete's report as data: a line of <c>report --json</c>, and what the page's API gives.</summary>
internal sealed record PrescriptionJson(
    [property: JsonPropertyName("schema")] int Schema,
    [property: JsonPropertyName("athlete")] string Athlete,
    [property: JsonPropertyName("as_of")] string AsOf,
    [property: JsonPropertyName("summary")] string Summary,
    [property: JsonPropertyName("findings")] FindingJson[] Findings,
    [property: JsonPropertyName("trends")] TrendJson[] Trends,
    [property: JsonPropertyName("curves")] CurveJson[] Curves,
    [property: JsonPropertyName("curves_missing")] string[] CurvesMissing,
    [property: JsonPropertyName("next_tests")] NextTestJson[] NextTests
)
{
    public static PrescriptionJson Of(Prescription prescription, LocalDate asOf) =>
        new(
            ContractJson.Schema,
            prescription.History.Athlete.Id,
            asOf.ToString("uuuu-MM-dd", null),
            prescription.Profile.Summary,
            [.. prescription.Profile.Findings.Select(FindingJson.Of)],
            [.. prescription.Trends.Select(TrendJson.Of)],
            [.. prescription.Curves.Computed.Select(CurveJson.Of)],
            [.. prescription.Curves.Missing],
            [.. prescription.NextTests.Select(NextTestJson.Of)]
        );
}
