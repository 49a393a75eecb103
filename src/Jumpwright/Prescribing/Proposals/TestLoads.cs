using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Safety;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>How heavy a test may be: one rule for the gate and for whoever looks for the next load.</summary>
internal static class TestLoads
{
    /// <summary>The exercise that loaded jumps are tested with.</summary>
    internal const string Jump = "hex-bar-jump";

    /// <summary>
    /// Kit that stands in for a bar that is too heavy for a light load: what is held at the sides as the bar's handles are comes first.
    /// </summary>
    internal static readonly ImmutableArray<string> InsteadOfBar = ["light-dumbbells", "weight-vest"];

    /// <summary>The lightest pair of dumbbells, or the lightest filling of a vest, kg (common practice).</summary>
    internal const double LightestInsteadKg = 5;

    /// <summary>The lightest load that the squad's kit makes, kg; the bar itself where nothing lighter is there.</summary>
    internal static double LeastKg(ImmutableArray<KitCount> kit) =>
        Lighter(kit) is null ? DoseRules.LightestBar.Value : LightestInsteadKg;

    /// <summary>What a load is made with: null for the bar, which every load at or above its own weight is made with.</summary>
    internal static string? InsteadFor(double loadKg, ImmutableArray<KitCount> kit) =>
        loadKg > 0 && loadKg < DoseRules.LightestBar.Value - 1e-9 ? Lighter(kit) : null;

    private static string? Lighter(ImmutableArray<KitCount> kit) =>
        kit.IsDefault ? null : InsteadOfBar.FirstOrDefault(id => kit.Any(k => k.Id == id && k.Count > 0));

    /// <summary>
    /// The heaviest that a test may be done with, kg: 110 % of the heaviest measured, never more than the exercise's own share of body
    /// mass, and in a jump, or where nothing was measured, never more than what counts as light. Null where nothing bounds it.
    /// </summary>
    /// <param name="exercise">What is done; it carries its range of loads.</param>
    /// <param name="massKg">Body mass, kg; null when not known.</param>
    /// <param name="limits">The limits in force.</param>
    /// <param name="heaviestKg">The heaviest measured in the same lift or jump, kg; null or 0 when none was.</param>
    internal static double? MostKg(Exercise exercise, double? massKg, LimitBook limits, double? heaviestKg)
    {
        double? measured = heaviestKg is > 0 and { } heaviest ? heaviest * Bounds.Share.Value / 100 : null;
        if (exercise.Load is not { Of: "body-mass" } range)
        {
            return measured;
        }

        double share =
            exercise.ContactsPerRep > 0 || measured is null
                ? Math.Clamp(limits["light-load"], range.MinShare, range.MaxShare)
                : range.MaxShare;
        return massKg is not { } mass ? null : Math.Min(share * mass, measured ?? double.MaxValue);
    }
}
