using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>The second judge: one pure check a limit, of a finished plan. A plan is shown only after it passed.</summary>
public static class Judge
{
    /// <summary>All breaches; empty when every hard limit is kept.</summary>
    public static ImmutableArray<Breach> Check(Plan plan, PlanRequest request) =>
        [.. Limits.All.SelectMany(limit => limit.Check(plan, request))];

    /// <summary>How near the plan came to every limit that can be counted.</summary>
    public static ImmutableArray<LimitReading> Read(Plan plan, PlanRequest request) =>
        [.. Limits.All.SelectMany(limit => limit.Read(plan, request))];
}
