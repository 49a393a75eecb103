namespace Jumpwright.Plans;

/// <summary>How near the plan came to one limit.</summary>
public sealed record LimitReading(
    string Id,
    string? AthleteId,
    string Sense,
    string Unit,
    string Period,
    double Limit,
    double? Highest,
    double? Lowest,
    string? At
);
