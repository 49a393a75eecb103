using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Whether an athlete is at a session, as the roll was called.</summary>
/// <param name="Here">Whether they are.</param>
internal sealed record HereEntry([property: JsonPropertyName("here")] bool Here);
