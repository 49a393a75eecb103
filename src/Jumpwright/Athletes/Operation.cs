using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>An operation that the practitioner was told of.</summary>
/// <param name="Date">Day of the operation; null when only the fact is known.</param>
/// <param name="Site">For example <c>knee</c>.</param>
/// <param name="Side">Side.</param>
public sealed record Operation(LocalDate? Date, string Site, Side Side);
