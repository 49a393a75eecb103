using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>The numbers behind a dose that are no limits, each with its source; limits stand in limits.json.</summary>
internal static class DoseRules
{
    /// <summary>A light hex bar itself.</summary>
    internal static readonly Coefficient LightestBar = new(
        "lightest-hex-bar",
        15,
        Unit.Kilogram,
        null,
        Bibliography.Get("common-practice")
    );
}
