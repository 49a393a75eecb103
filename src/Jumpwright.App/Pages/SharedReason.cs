using System.Collections.Immutable;
using Jumpwright.Progression;

namespace Jumpwright.App.Pages;

/// <summary>What stands in the way of several exercises of a stage alike, so that it is said once.</summary>
/// <param name="Reason">The reason.</param>
/// <param name="Rungs">The exercises it stands in the way of.</param>
public sealed record SharedReason(RungReason Reason, ImmutableArray<Rung> Rungs)
{
    /// <summary>All that two or more share, what most share first. Conditions that are met stay with their exercise.</summary>
    public static ImmutableArray<SharedReason> Of(ImmutableArray<Rung> stage) =>
        [
            .. stage
                .SelectMany(rung => rung.Reasons.Select(reason => (Rung: rung, Reason: reason)))
                .Where(p => p.Reason.Verdict is not CriterionVerdict.Met)
                .GroupBy(p => Key(p.Reason))
                .Select(g => new SharedReason(g.First().Reason, [.. g.Select(p => p.Rung).Distinct()]))
                .Where(s => s.Rungs.Length > 1)
                .OrderByDescending(s => s.Rungs.Length),
        ];

    /// <summary>True where that reason is this one.</summary>
    public bool Is(RungReason reason) => Key(reason) == Key(Reason);

    private static (CriterionVerdict, string, string?) Key(RungReason reason) =>
        (reason.Verdict, reason.Sentence, reason.CheapestTest);
}
