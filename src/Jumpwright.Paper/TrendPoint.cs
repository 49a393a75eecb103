using NodaTime;

namespace Jumpwright.Paper;

/// <summary>One value of a trend.</summary>
/// <param name="Date">Day it was measured.</param>
/// <param name="Value">In the trend's unit.</param>
/// <param name="U">Standard uncertainty, in the trend's unit; drawn as ± bars.</param>
public sealed record TrendPoint(LocalDate Date, double Value, double U);
