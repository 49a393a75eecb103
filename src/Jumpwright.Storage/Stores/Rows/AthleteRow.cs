using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>An athlete.</summary>
internal sealed class AthleteRow
{
    public required string Id { get; init; }

    public int Position { get; init; }

    public required string Name { get; init; }

    public LocalDate? BirthDate { get; init; }

    public double? BodyMassKg { get; init; }

    public double? StatureM { get; init; }

    public string? Sport { get; init; }

    public TrainingLevel Level { get; init; }

    /// <summary>Null exactly when no operation is known.</summary>
    public string? OperationSite { get; init; }

    public LocalDate? OperationDate { get; init; }

    public Side? OperationSide { get; init; }

    public string? Note { get; init; }
}
