using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>
/// How one exercise would be done by one athlete: all but the number of sets, which the planner chooses.
/// Names are those of the plan's items (contracts §3).
/// </summary>
public sealed record Dose
{
    public required string ExerciseId { get; init; }
    public required int SetsMin { get; init; }
    public required int SetsMax { get; init; }
    public required int Reps { get; init; }
    public required int ContactsPerRep { get; init; }
    public required string Limb { get; init; }
    public required string Start { get; init; }
    public required string Arms { get; init; }
    public required string Intent { get; init; }
    public double? DropHeightM { get; init; }
    public double? ExpectedDropHeightM { get; init; }
    public double? BoxHeightM { get; init; }
    public double? ExternalLoadKg { get; init; }
    public Sentence? LoadBasis { get; init; }
    public double? BandTensionStandingN { get; init; }
    public double? BandTensionApexN { get; init; }
    public int? RunUpSteps { get; init; }
    public double? RunUpSpeedMS { get; init; }
    public required int RestBetweenRepsS { get; init; }
    public required int RestBetweenSetsS { get; init; }
    public required double MinutesPerSet { get; init; }
    public required bool HighIntensity { get; init; }
    public required StopRule Stop { get; init; }

    /// <summary>
    /// How an open exercise that asks less of the sore or most loaded tissue would be done in its place: with the lowest box, and no more
    /// reps than this one; null when there is none.
    /// </summary>
    public Dose? Instead { get; init; }

    /// <summary>Which exercise that is.</summary>
    public string? ReplacesIfSore => Instead?.ExerciseId;

    /// <summary>Why this dose, in sentences with numbers.</summary>
    public required ImmutableArray<Sentence> Because { get; init; }

    /// <summary>
    /// Of so many sets, how many at the beginning are done submaximally: the first of every jump that is asked for with full
    /// effort, where there is more than one (common practice). They are among the sets, and their contacts count.
    /// </summary>
    public int EasySets(int sets) => Intent == "maximal" && ContactsPerRep > 0 && sets > 1 ? 1 : 0;

    /// <summary>
    /// What is done in place of so many sets where it is sore: half as many (common practice), so half the load on every tissue at most. Of a
    /// single set half the reps.
    /// </summary>
    public (Dose Dose, int Sets)? InsteadOf(int sets) =>
        Instead is not { } easier ? null
        : sets > 1 ? (easier, sets / 2)
        : (easier with { Reps = Math.Max(1, Math.Min(easier.Reps, Reps / 2)) }, 1);

    /// <summary>sets × reps × contacts per rep × (2 if the reps are per leg).</summary>
    public int Contacts(int sets) => sets * Reps * ContactsPerRep * (Limb == "each" ? 2 : 1);
}
