using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>A match, or anything else for which legs must be fresh.</summary>
/// <param name="Date">Day.</param>
/// <param name="Start">Local start, or null.</param>
/// <param name="Name">In words.</param>
public sealed record Fixture(LocalDate Date, LocalTime? Start, string Name);
