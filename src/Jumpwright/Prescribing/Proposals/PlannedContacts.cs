using NodaTime;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>Contacts that a plan holds for an athlete on a day and that are not logged yet.</summary>
/// <param name="Date">The day.</param>
/// <param name="Contacts">How many.</param>
/// <param name="HighIntensity">Whether they are of high intensity.</param>
public readonly record struct PlannedContacts(LocalDate Date, int Contacts, bool HighIntensity)
{
    /// <summary>Exercise of the catalogue, for the hours that must lie between it and a test; null: nobody knows which.</summary>
    public string? ExerciseId { get; init; }
}
