using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>
/// The bounds of the tiers (docs/catalogue.md): Achilles force and ground force in body weights, the loading index of the patellar tendon
/// (cuts of Scattone Silva 2024). The hip has none: nothing published ranks these exercises for it.
/// </summary>
public static class DemandTiers
{
    /// <summary>The tier that a number falls in, 0 to 3; null for the hip.</summary>
    public static int? Of(Tissue tissue, double value) =>
        tissue switch
        {
            Tissue.Achilles => Above(value, 2, 4, 5.5),
            Tissue.Bone => Above(value, 1.25, 1.75, 2.75),
            Tissue.Patellar => value >= 0.66 ? 3 : Above(value, 0, 0.33),
            _ => null,
        };

    /// <summary>Peak ground force on one leg that a tier of bone stands for, body weights; the top tier has no upper end.</summary>
    public static (double Least, double? Most) GroundForce(int tier) =>
        tier switch
        {
            0 => (0, 1.25),
            1 => (1.25, 1.75),
            2 => (1.75, 2.75),
            _ => (2.75, null),
        };

    private static int Above(double value, params ReadOnlySpan<double> cuts)
    {
        int tier = 0;
        foreach (double cut in cuts)
        {
            tier += value > cut ? 1 : 0;
        }

        return tier;
    }
}
