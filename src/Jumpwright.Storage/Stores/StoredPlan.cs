using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>A plan that was kept.</summary>
/// <param name="Number">In order of keeping, from 1.</param>
/// <param name="From">First day.</param>
/// <param name="Weeks">Weeks.</param>
/// <param name="SavedAt">When it was kept.</param>
/// <param name="Json">As whoever kept it wrote it.</param>
public sealed record StoredPlan(int Number, LocalDate From, int Weeks, Instant SavedAt, string Json);
