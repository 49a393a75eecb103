using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>An item locked, or no longer locked.</summary>
/// <param name="Exercise">Catalogue id.</param>
/// <param name="Sets">Sets it is locked at.</param>
/// <param name="Holds">False when the lock was taken off.</param>
internal sealed record LockEntry(
    [property: JsonPropertyName("exercise")] string Exercise,
    [property: JsonPropertyName("sets")] int Sets,
    [property: JsonPropertyName("holds")] bool Holds
);
