using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Serialization.SystemTextJson;

namespace Jumpwright.App.Desk.Keeping;

/// <summary>How a kept plan is written: the records as they are, days and times as ISO 8601 has them, sentences in their parts.</summary>
internal static class KeptJson
{
    public static JsonSerializerOptions Options { get; } =
        new JsonSerializerOptions
        {
            IgnoreReadOnlyProperties = true,
            RespectRequiredConstructorParameters = true,
            Converters = { new KeptSentences(), new JsonStringEnumConverter() },
        }.ConfigureForNodaTime(DateTimeZoneProviders.Tzdb);
}
