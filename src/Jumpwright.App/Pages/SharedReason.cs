using System.Collections.Immutable;
using Jumpwright.Progression;

namespace Jumpwright.App.Pages;

/// <summary>What stands in the way of several exercises of a stage alike, so that it is said once.</summary>
/// <param name="Reasons">The reasons that just these exercises share.</param>
/// <param name="Rungs">The exercises.</param>
public sealed record SharedReason(ImmutableArray<RungReason> Reasons, ImmutableArray<Rung> Rungs)
{
    /// <summary>All that two or more share, what most share first. Conditions that are met stay with their exercise.</summary>
    public static ImmutableArray<SharedReason> Of(ImmutableArray<Rung> stage) =>
        [
            .. stage
                .SelectMany(rung => rung.Reasons.Select(reason => (Rung: rung, Reason: reason)))
                .Where(p => p.Reason.Verdict is not CriterionVerdict.Met)
                .GroupBy(p => Key(p.Reason))
                .Select(g => (g.First().Reason, Rungs: g.Select(p => p.Rung).DistinctBy(r => r.ExerciseId).ToArray()))
                .Where(s => s.Rungs.Length > 1)
                .GroupBy(s => string.Join(' ', s.Rungs.Select(r => r.ExerciseId)))
                .Select(g => new SharedReason([.. g.Select(s => s.Reason)], [.. g.First().Rungs]))
                .OrderByDescending(s => s.Rungs.Length),
        ];

    /// <summary>True where that reason is among them.</summary>
    public bool Holds(RungReason reason) => Reasons.Any(r => Key(r) == Key(reason));

    private static (CriterionVerdict, string, string?) Key(RungReason reason) =>
        (reason.Verdict, reason.Sentence, reason.CheapestTest);
}
