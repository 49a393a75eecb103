using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>A test that is offered: an exercise like any other, under every limit.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="ExerciseId">Exercise of the catalogue that it is.</param>
/// <param name="Ask">How it is done: trials, height, load or speed.</param>
/// <param name="Contacts">Contacts that it costs; they count.</param>
/// <param name="HighIntensity">Whether these are contacts of high intensity.</param>
/// <param name="DoubtLeft">Share of today's doubt that is expected to be left; null where it isn't computed.</param>
/// <param name="Because">Why this test.</param>
/// <param name="Stop">When to stop it.</param>
public sealed record TestProposal(
    string AthleteId,
    string ExerciseId,
    TestAsk Ask,
    int Contacts,
    bool HighIntensity,
    double? DoubtLeft,
    Sentence Because,
    TestStop Stop
);
