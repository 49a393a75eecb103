using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>Work done.</summary>
internal sealed class CompletedRow
{
    public int Position { get; init; }

    public required string AthleteId { get; init; }

    public LocalDate Date { get; init; }

    public required string SessionId { get; init; }

    public required string ExerciseId { get; init; }

    public int Sets { get; init; }

    public int Reps { get; init; }

    public int Contacts { get; init; }

    public int? LandingFaults { get; init; }

    public double? PainDuring { get; init; }

    public double? PainNextMorning { get; init; }

    public double? EffortRpe { get; init; }

    public double? DropHeightM { get; init; }

    public string? Note { get; init; }
}
