using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A weekly practice of the squad's sport: legs work there too.</summary>
/// <param name="Day">Day of the week.</param>
/// <param name="Start">Local start; null when not said.</param>
/// <param name="Minutes">Length, min; null when not said.</param>
/// <param name="Sport">In words.</param>
public sealed record Practice(IsoDayOfWeek Day, LocalTime? Start, int? Minutes, string? Sport)
{
    /// <summary>Jumps of one athlete in one practice, as somebody counted them; null when nobody did.</summary>
    public double? Jumps { get; init; }

    /// <summary>How far such a count differs from practice to practice and athlete to athlete, one standard deviation; null when not said.</summary>
    public double? JumpsSpread { get; init; }

    /// <summary>Ids of athletes who take no part in it, as somebody said.</summary>
    public ImmutableArray<string> Without { get; init; } = [];

    /// <summary>Whether that athlete takes part; who is not named, does.</summary>
    public bool Has(string athleteId) => !Without.Contains(athleteId);
}
