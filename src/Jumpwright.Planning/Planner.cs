using System.Collections.Immutable;
using System.Diagnostics;
using Jumpwright.Planning.Collisions;
using Jumpwright.Planning.Rotations;
using Jumpwright.Planning.Searching;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>The project's door: request in, plan with bound and reasons, or a collision, out.</summary>
public static class Planner
{
    /// <summary>Up to so many athletes one model proves the optimum fast enough.</summary>
    private const int AthletesInOneModel = 3;

    /// <summary>Solves the request on CP-SAT. The plan was checked by <see cref="Judge"/> before it is returned.</summary>
    /// <param name="request">The request.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="InvalidOperationException">The plan broke a limit: a defect of the planner; the message says which.</exception>
    public static Plan Solve(PlanRequest request, CancellationToken cancel = default) => Solve(request, null, cancel);

    /// <summary>The same, telling how far it is.</summary>
    /// <param name="request">The request.</param>
    /// <param name="progress">Told in words how far the search is.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="InvalidOperationException">The plan broke a limit: a defect of the planner; the message says which.</exception>
    public static Plan Solve(PlanRequest request, IProgress<Sentence>? progress, CancellationToken cancel)
    {
        long began = Stopwatch.GetTimestamp();
        Requesting.Check(request);
        Found found = Best(request, progress, cancel);
        Plan plan = found.Status switch
        {
            PlanStatus.Infeasible => Without(found.Status, request) with
            {
                Collisions = CollisionFinder.Find(request, cancel),
            },
            PlanStatus.NoneFound => Without(found.Status, request),
            _ => With(found, request),
        };
        plan = Judged(plan, request);
        return plan with { Seconds = Math.Round(Stopwatch.GetElapsedTime(began).TotalSeconds, 3) };
    }

    /// <summary>What was found as a plan; null when it breaks a limit.</summary>
    internal static Plan? IfKept(Found found, PlanRequest request)
    {
        Plan plan = With(found, request);
        return Judge.Check(plan, request).IsEmpty ? Read(plan, request) : null;
    }

    /// <summary>The plan with every limit's reading and what is to be said about the request.</summary>
    private static Plan Read(Plan plan, PlanRequest request) =>
        plan with
        {
            Limits = Judge.Read(plan, request),
            Remarks = [.. request.Remarks.Concat(OtherJumping(request)).Distinct()],
        };

    /// <summary>What practices and matches ask, once for all of whom it says the same.</summary>
    private static IEnumerable<Sentence> OtherJumping(PlanRequest request) =>
        request
            .Athletes.SelectMany(a => a.OtherJumping.Select(says => (a.Athlete.Name, Says: says)))
            .GroupBy(o => o.Says, o => o.Name)
            .Select(same => Sentence.Of($"{string.Join(", ", same)}: {same.Key}"));

    private static Plan Judged(Plan plan, PlanRequest request)
    {
        plan = Read(plan, request);
        ImmutableArray<Breach> breaches = Judge.Check(plan, request);
        if (!breaches.IsEmpty)
        {
            throw new InvalidOperationException(
                "The planner made a plan that breaks its own limits: "
                    + string.Join(' ', breaches.Select(b => b.Sentence))
            );
        }

        return plan;
    }

    /// <summary>A small squad in one model; a larger one athlete by athlete, with prices for kit.</summary>
    private static Found Best(PlanRequest request, IProgress<Sentence>? progress, CancellationToken cancel) =>
        request.Athletes.Length <= AthletesInOneModel
            ? new WholeSearch(request, Asked.All(), cancel).Best()
            : new SquadSearch(request, progress, cancel).Best();

    private static Plan Without(PlanStatus status, PlanRequest request) =>
        new(
            status,
            null,
            null,
            0,
            null,
            0,
            [],
            [.. request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal).SelectMany(a => a.Unmet)],
            [],
            request.Overrides,
            []
        );

    private static Plan With(Found found, PlanRequest request)
    {
        ImmutableArray<PlannedSession> sessions =
        [
            .. request
                .Slots.OrderBy(s => s.StartUtc)
                .ThenBy(s => s.Id, StringComparer.Ordinal)
                .Select(s => SessionMaker.Of(s, found, request)),
        ];
        double empty = PlanPoints.Of(SessionMaker.OnlyLocked(sessions, request), request);
        double objective = found.Objective!.Value;
        double bound = found.Bound ?? throw new InvalidOperationException("A plan without a bound.");
        double gap = bound - empty <= 1e-9 ? 0 : (bound - objective) / (bound - empty);
        Plan plan = new(found.Status, objective, bound, empty, gap, 0, sessions, [], [], request.Overrides, []);
        return plan with { Unmet = LeftOut.Of(plan, request) };
    }
}
