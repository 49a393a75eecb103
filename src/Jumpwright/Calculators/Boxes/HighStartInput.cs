namespace Jumpwright.Calculators.Boxes;

/// <summary>Starting from a seat, or with one foot on a box.</summary>
/// <param name="Start">Which.</param>
/// <param name="StatureM">Stature, m.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="HeightM">Height of the seat or box, m; null asks which height brings the hips to 90°.</param>
/// <param name="HipHeightM">Floor to trochanter, m, where it was measured.</param>
public sealed record HighStartInput(
    HighStart Start,
    double StatureM,
    double BodyMassKg,
    double? HeightM = null,
    double? HipHeightM = null
);
