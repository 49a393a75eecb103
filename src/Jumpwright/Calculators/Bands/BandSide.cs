using System.Collections.Immutable;

namespace Jumpwright.Calculators.Bands;

/// <summary>One band with what holds it.</summary>
/// <param name="RestM">Length at rest, m.</param>
/// <param name="Readings">Readings of a hand scale; empty when the band was not measured.</param>
/// <param name="NominalStiffnessNM">Stiffness somebody stated, N/m; used only where there are no readings, and marked.</param>
/// <param name="Anchor">What holds the lower end.</param>
/// <param name="AnchorMassKg">Its mass, kg; null when not known.</param>
/// <param name="AnchorDistanceM">How far beside the attachment the anchor lies on the floor, m.</param>
/// <param name="AnchorHeightM">Height at which the band leaves the anchor, m.</param>
/// <param name="GreatestStretchStatedM">Greatest stretch beyond rest that the band's maker states, m; null when not stated.</param>
/// <param name="WearChecked">Whether the band was looked over before this use; null when nobody said.</param>
public sealed record BandSide(
    double RestM,
    ImmutableArray<BandReading> Readings,
    double? NominalStiffnessNM,
    AnchorKind Anchor,
    double? AnchorMassKg,
    double AnchorDistanceM,
    double AnchorHeightM = 0.05,
    double? GreatestStretchStatedM = null,
    bool? WearChecked = null
);
