using System.Text.Json.Serialization;
using Jumpwright.Quantities;

namespace Jumpwright.App.Settings;

/// <summary>How the pages speak and when they lock, for everybody who uses this program on this squad.</summary>
internal sealed record HouseSettings
{
    public static readonly HouseSettings Standard = new();

    /// <summary>Lengths and masses on pages and cards; files, API and store stay SI.</summary>
    [JsonPropertyName("units"), JsonConverter(typeof(JsonStringEnumConverter<UnitSystem>))]
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary><c>en</c> or <c>de</c>; null: what the browser asks for.</summary>
    [JsonPropertyName("language")]
    public string? Language { get; init; }

    /// <summary>Null: the pages never lock.</summary>
    [JsonPropertyName("lock")]
    public LockSettings? Lock { get; init; }
}
