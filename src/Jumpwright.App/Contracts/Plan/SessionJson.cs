using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Plans;
using NodaTime.Text;

namespace Jumpwright.App.Contracts;

/// <summary>One filled session of a plan.</summary>
internal sealed record SessionJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("date")] string Date,
    [property: JsonPropertyName("start")] string Start,
    [property: JsonPropertyName("minutes")] int Minutes,
    [property: JsonPropertyName("athletes")] ImmutableArray<AthleteSessionJson> Athletes,
    [property: JsonPropertyName("rotation")] ImmutableArray<RotationJson> Rotation
)
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    public static SessionJson Of(PlannedSession session) =>
        new(
            session.Slot.Id,
            LocalDatePattern.Iso.Format(session.Slot.Date),
            Clock.Format(session.Slot.Start),
            session.Slot.Minutes,
            [.. session.Athletes.Select(AthleteSessionJson.Of)],
            [.. session.Rotation.Select(RotationJson.Of)]
        );
}
