using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>Who an athlete is. Null means unknown, and unknown closes, never opens.</summary>
/// <param name="Id">Kebab-case id.</param>
/// <param name="Name">Name as it stands on the card.</param>
/// <param name="BirthDate">Null: age unknown.</param>
/// <param name="BodyMassKg">Last weighed body mass, kg.</param>
/// <param name="StatureM">Standing height, m.</param>
/// <param name="Sport">Sport or position, in words.</param>
/// <param name="Level">How used to jump training.</param>
/// <param name="Operation">The last operation on legs, hips or spine, if there was one.</param>
/// <param name="Note">Free text.</param>
public sealed record Athlete(
    string Id,
    string Name,
    LocalDate? BirthDate,
    double? BodyMassKg,
    double? StatureM,
    string? Sport,
    TrainingLevel Level,
    Operation? Operation,
    string? Note
)
{
    /// <summary>Whole years on that day, or null.</summary>
    public int? AgeOn(LocalDate day) =>
        BirthDate is { } born ? Period.Between(born, day, PeriodUnits.Years).Years : null;
}
