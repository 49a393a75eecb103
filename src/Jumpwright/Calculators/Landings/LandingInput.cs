using System.Collections.Immutable;

namespace Jumpwright.Calculators.Landings;

/// <summary>What a landing from a drop would ask of this athlete.</summary>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="Measured">Their measured landings, one device, both feet.</param>
/// <param name="DropM">The drop asked about, m.</param>
/// <param name="CapM">The highest drop their limits allow, m; null when no limit is in force.</param>
public sealed record LandingInput(
    double BodyMassKg,
    ImmutableArray<MeasuredLanding> Measured,
    double DropM,
    double? CapM = null
);
