using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Trials;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Events of one trial set by hand.</summary>
/// <param name="Sha256">The recording's content.</param>
/// <param name="Trial">Number of the trial in it.</param>
/// <param name="Events">The events that were moved; none gives the trial back to measuring.</param>
/// <param name="Why">Why, in the words of who did it.</param>
public sealed record CorrectionEntry(
    [property: JsonPropertyName("sha256")] string Sha256,
    [property: JsonPropertyName("trial")] int Trial,
    [property: JsonPropertyName("events")] ImmutableArray<CorrectionEntry.Moved> Events,
    [property: JsonPropertyName("why")] string Why
)
{
    /// <summary>One event.</summary>
    /// <param name="Event">Its name in the contract, without the unit: onset, bottom, take_off ….</param>
    /// <param name="TimeS">Where it was set, s, on the recording's own clock.</param>
    public sealed record Moved(
        [property: JsonPropertyName("event")] string Event,
        [property: JsonPropertyName("time_s")] double TimeS
    );

    /// <summary>As measuring takes them; events of a name that is not known are left out.</summary>
    public ImmutableArray<EventCorrection> ForMeasuring() =>
        [
            .. Events
                .Where(e => EventNames.Parse(e.Event) is not null)
                .Select(e => new EventCorrection(Trial, EventNames.Parse(e.Event)!.Value, e.TimeS)),
        ];
}
