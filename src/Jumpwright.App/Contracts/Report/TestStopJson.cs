using System.Text.Json.Serialization;
using Jumpwright.Prescribing.Proposals;

namespace Jumpwright.App.Contracts;

/// <summary>When a test stops, as data and in words.</summary>
internal sealed record TestStopJson(
    [property: JsonPropertyName("contact_above_s")] double? ContactAboveS,
    [property: JsonPropertyName("height_loss_pct")] double? HeightLossPct,
    [property: JsonPropertyName("height_from_m")] double? HeightFromM,
    [property: JsonPropertyName("landing_faults")] int? LandingFaults,
    [property: JsonPropertyName("pain_above")] double PainAbove,
    [property: JsonPropertyName("pain_site_new")] bool PainSiteNew,
    [property: JsonPropertyName("words")] string[] Words
)
{
    public static TestStopJson Of(TestStop stop) =>
        new(
            stop.ContactCeilingS,
            stop.HeightLossPct,
            stop.ReferenceHeightM,
            stop.LandingFaults,
            stop.PainAbove,
            PainSiteNew: true,
            [.. stop.Words]
        );

    /// <summary>The rule again.</summary>
    [JsonIgnore]
    public TestStop Rule => new(ContactAboveS, HeightLossPct, HeightFromM, LandingFaults, PainAbove);
}
