using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.App.Intake;

/// <summary>What became of one recording.</summary>
/// <param name="File">Relative to the path that was asked for, with <c>/</c>.</param>
/// <param name="Sha256">Of the file's bytes, lower-case hexadecimal; null when it could not be opened.</param>
/// <param name="Task">What it was to be measured as; null when nobody said.</param>
/// <param name="Warnings">Of reading; each trial has its own besides.</param>
/// <param name="Trials">At least one, or the sentence why there is none.</param>
internal sealed record MeasuredFile(
    string File,
    string? Sha256,
    JumpTask? Task,
    ImmutableArray<string> Warnings,
    Outcome<ImmutableArray<Trial>> Trials
);
