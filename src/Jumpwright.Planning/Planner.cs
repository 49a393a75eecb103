using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>The project's door: request in, plan with bound and reasons, or a collision, out.</summary>
public static class Planner
{
    /// <summary>Solves the request on CP-SAT. The plan was checked by <see cref="Judge"/> before it is returned.</summary>
    public static Plan Solve(PlanRequest request, CancellationToken cancel = default) =>
        throw new NotImplementedException();
}
