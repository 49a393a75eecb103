using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>The numbers behind a dose that are no limits, each with its source; limits stand in limits.json.</summary>
internal static class DoseRules
{
    /// <summary>Centre of mass in standing less that in a half squat, as a share of stature.</summary>
    internal static readonly Coefficient HalfSquatFall = new(
        "half-squat-fall",
        0.18,
        Unit.One,
        null,
        Bibliography.Get("winter-segments"),
        "0.56 of stature standing and 0.38 in a half squat, from memory; build and posture move both."
    );

    /// <summary>A light hex bar itself.</summary>
    internal static readonly Coefficient LightestBar = new(
        "lightest-hex-bar",
        15,
        Unit.Kilogram,
        null,
        Bibliography.Get("common-practice")
    );
}
