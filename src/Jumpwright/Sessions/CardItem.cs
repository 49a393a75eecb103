using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>One exercise as it stands on the card. Every text is ready to print.</summary>
/// <param name="ExerciseId">Catalogue id.</param>
/// <param name="Name">Name of the exercise.</param>
/// <param name="Why">Why this athlete does it, short.</param>
/// <param name="SetUp">How it is set up.</param>
/// <param name="Cue">The one thing to think of.</param>
/// <param name="Dose">Sets × reps, and the leg.</param>
/// <param name="HeightOrLoad">Height in cm, load in kg, band or run-up; null when there is none.</param>
/// <param name="Rest">Between reps, sets, and the two of a pair.</param>
/// <param name="StopWhen">When to stop.</param>
/// <param name="OwnStop">What ends this exercise beside that, as the catalogue says it: a bar that slows, a knee that falls in, a foot at the edge; empty where that says all.</param>
/// <param name="InsteadIfSore">What to do at pain 3 to 5: an exercise that asks less, or that this one is left out.</param>
/// <param name="Sets">Boxes to tick.</param>
/// <param name="Contacts">Ground contacts of all sets.</param>
public sealed record CardItem(
    string ExerciseId,
    string Name,
    Sentence Why,
    string SetUp,
    string Cue,
    Sentence Dose,
    Sentence? HeightOrLoad,
    Sentence Rest,
    Sentence StopWhen,
    string OwnStop,
    Sentence InsteadIfSore,
    int Sets,
    int Contacts
);
