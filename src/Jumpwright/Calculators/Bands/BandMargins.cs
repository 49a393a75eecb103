using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>The margins behind the verdict on a band set-up: data, each with its source.</summary>
public static class BandMargins
{
    /// <summary>Greatest vertical pull, as a share of the anchor's weight.</summary>
    public static Coefficient VerticalShare { get; } =
        Of("band-anchor-vertical-share", 0.5, Unit.One, "common-practice");

    /// <summary>Greatest horizontal pull, as a share of the friction that is left.</summary>
    public static Coefficient FrictionShare { get; } =
        Of("band-anchor-friction-share", 0.5, Unit.One, "common-practice");

    /// <summary>A low coefficient of friction: smooth iron or urethane on a dusty floor.</summary>
    public static Coefficient Friction { get; } = Of("band-anchor-friction", 0.3, Unit.One, "common-practice");

    /// <summary>Greatest difference of the two bands, % of their mean.</summary>
    public static Coefficient LeftRight { get; } = Of("band-left-right", 10, Unit.Percent, "common-practice");

    /// <summary>How much higher than standing the body is when the toes leave the ground.</summary>
    public static Coefficient TakeOffRise { get; } =
        new(
            "band-take-off-rise",
            0.15,
            Unit.Metre,
            null,
            Bibliography.Get("house-rule"),
            "0.136 m in the one open recording that we computed it from (Duarte and Watanabe); taken high, because a longer band pulls harder."
        );

    private static Coefficient Of(string id, double value, Unit unit, string source) =>
        new(id, value, unit, null, Bibliography.Get(source));
}
