using System.Text.Json.Serialization;
using Jumpwright.Trials;

namespace Jumpwright.App.Contracts;

/// <summary>One complete contact of repeated hops and the flight that follows.</summary>
internal sealed record HopContactJson(
    [property: JsonPropertyName("contact_s")] double ContactS,
    [property: JsonPropertyName("flight_s")] double FlightS,
    [property: JsonPropertyName("reactive_strength_index")] double ReactiveStrengthIndex
)
{
    public static HopContactJson Of(HopContact contact) =>
        new(contact.ContactS, contact.FlightS, contact.ReactiveStrengthIndex);
}
