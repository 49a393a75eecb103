using System.Text.Json.Serialization;
using Jumpwright.Dosing;

namespace Jumpwright.App.Contracts;

/// <summary>When to stop, as data.</summary>
internal sealed record StopJson(
    [property: JsonPropertyName("height_loss_pct")] double? HeightLossPct,
    [property: JsonPropertyName("contact_gain_pct")] double? ContactGainPct,
    [property: JsonPropertyName("landing_faults")] int? LandingFaults,
    [property: JsonPropertyName("pain_during_above")] double PainDuringAbove,
    [property: JsonPropertyName("pain_site_new")] bool PainSiteNew
)
{
    public static StopJson Of(StopRule stop) =>
        new(stop.HeightLossPct, stop.ContactGainPct, stop.LandingFaults, stop.PainDuringAbove, stop.PainSiteNew);
}
