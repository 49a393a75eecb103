using System.Collections.Immutable;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A match, or anything else for which legs must be fresh.</summary>
/// <param name="Date">Day.</param>
/// <param name="Start">Local start, or null.</param>
/// <param name="Name">In words.</param>
public sealed record Fixture(LocalDate Date, LocalTime? Start, string Name)
{
    /// <summary>Ids of athletes who do not play, as somebody said: no jumps of it count for them. The days round it stay quiet for all.</summary>
    public ImmutableArray<string> Without { get; init; } = [];

    /// <summary>Whether that athlete plays; who is not named, does.</summary>
    public bool Has(string athleteId) => !Without.Contains(athleteId);
}
