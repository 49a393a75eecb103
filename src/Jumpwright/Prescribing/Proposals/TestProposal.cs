using System.Collections.Immutable;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>A test that is offered: an exercise like any other, under every limit.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="ExerciseId">Exercise of the catalogue that it is.</param>
/// <param name="DropHeightM">Height to step from, m; null without a drop.</param>
/// <param name="Trials">How many.</param>
/// <param name="Contacts">Contacts that it costs; they count.</param>
/// <param name="DoubtLeft">Share of today's doubt that is expected to be left; null where it isn't computed.</param>
/// <param name="Because">Why this test.</param>
/// <param name="StopWhen">When to stop it.</param>
public sealed record TestProposal(
    string AthleteId,
    string ExerciseId,
    double? DropHeightM,
    int Trials,
    int Contacts,
    double? DoubtLeft,
    string Because,
    ImmutableArray<string> StopWhen
);
