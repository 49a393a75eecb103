namespace Jumpwright.Sessions;

/// <summary>One exercise as it stands on the card. Every text is ready to print.</summary>
public sealed record CardItem(
    string ExerciseId,
    string Name,
    string Why,
    string SetUp,
    string Cue,
    string Dose,
    string? HeightOrLoad,
    string Rest,
    string StopWhen,
    string? InsteadIfSore,
    int Sets,
    int Contacts
);
