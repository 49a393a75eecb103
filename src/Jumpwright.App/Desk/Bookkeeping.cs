using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>The line from what is known to what is decided: profile, ladder, request, plan, cards.</summary>
internal static class Bookkeeping
{
    /// <summary>Each athlete's profile, rulings and ladder on that day.</summary>
    public static ImmutableArray<AthleteLeaf> Leaves(SquadMaterial material, Catalogue catalogue, LocalDate day) =>
        Leaves(material, catalogue, day, []);

    /// <summary>The same, taking over the leaves of those whose dossier and squad are the ones they were made from. Nothing is worked out yet.</summary>
    public static ImmutableArray<AthleteLeaf> Leaves(
        SquadMaterial material,
        Catalogue catalogue,
        LocalDate day,
        ImmutableArray<AthleteLeaf> before
    )
    {
        Dictionary<string, AthleteLeaf> made = before.ToDictionary(l => l.Athlete.Id, StringComparer.Ordinal);
        return
        [
            .. material.Dossiers.Select(dossier =>
                made.TryGetValue(dossier.Athlete.Id, out AthleteLeaf? leaf)
                && ReferenceEquals(leaf.Dossier, dossier)
                && ReferenceEquals(leaf.Squad, material.Squad)
                    ? leaf
                    : new AthleteLeaf(dossier, material.Squad, catalogue, day)
            ),
        ];
    }

    /// <summary>Plans the weeks and judges the plan; a plan that breaks a limit is never given out.</summary>
    /// <param name="material">What is known of the squad.</param>
    /// <param name="catalogue">The exercises.</param>
    /// <param name="from">First day.</param>
    /// <param name="weeks">How many weeks.</param>
    /// <param name="budget">How the planner may work; null takes its defaults.</param>
    /// <param name="progress">Told in words how far it is.</param>
    /// <param name="cancel">Stops it.</param>
    /// <param name="before">A plan of the same days: what can stay stays. Null plans from nothing.</param>
    /// <param name="amendments">What was asked by hand; null: nothing.</param>
    /// <returns>A week whatever its status; or the sentence why nothing could even be asked.</returns>
    public static Outcome<PlannedWeek> Plan(
        SquadMaterial material,
        Catalogue catalogue,
        LocalDate from,
        int weeks,
        SolveBudget? budget,
        IProgress<Sentence>? progress,
        CancellationToken cancel,
        Plan? before = null,
        Amendments? amendments = null
    )
    {
        if (material.StopsPlanning.Length > 0)
        {
            return Refusal.Of(
                $"Nothing is planned until this is mended: {Sentence.Join(" ", material.StopsPlanning.Select(RecalledSentences.Of))}"
            );
        }

        return Requests
            .For(material.Squad, material.Histories, catalogue, from, weeks, budget, amendments)
            .Then<PlannedWeek>(request =>
            {
                Replanned? again = before is null ? null : Replanner.Replan(before, request, progress, cancel);
                request = again?.Request ?? request;
                Plan plan = again?.Plan ?? Planner.Solve(request, progress, cancel);
                cancel.ThrowIfCancellationRequested();
                ImmutableArray<Breach> breaches = Judge.Check(plan, request);
                if (breaches.Length > 0)
                {
                    return Refusal.Of(
                        $"The plan was made but breaks a limit, so it is not shown: {breaches[0].Sentence}"
                    );
                }

                return plan.Status is PlanStatus.Optimal or PlanStatus.Feasible
                    ? new PlannedWeek(
                        request,
                        plan,
                        Cards.Of(plan, request, material.Squad, material.Histories),
                        Cards.SheetsOf(plan, request, material.Squad, material.Histories, [])
                    )
                    {
                        Changes = again?.Changes,
                        CheckedAt = SystemClock.Instance.GetCurrentInstant(),
                    }
                    : new PlannedWeek(request, plan, [], []);
            });
    }
}
