using Jumpwright.Mechanics;

namespace Jumpwright.Calculators.Bands;

/// <summary>One band between its anchor and the athlete, by the height of the attachment above the floor.</summary>
internal sealed record Pull(BandSide Side, BandCurve Curve)
{
    internal double LengthM(double heightM) =>
        Math.Sqrt((Rise(heightM) * Rise(heightM)) + Square(Side.AnchorDistanceM));

    internal double StretchM(double heightM) => Math.Max(LengthM(heightM) - Side.RestM, 0);

    internal double TensionN(double heightM) => Curve.TensionN(LengthM(heightM));

    internal double TensionUncertaintyN(double heightM) => Curve.TensionUncertaintyN(LengthM(heightM));

    internal double VerticalN(double heightM) => TensionN(heightM) * Rise(heightM) / LengthM(heightM);

    internal double VerticalUncertaintyN(double heightM) =>
        TensionUncertaintyN(heightM) * Rise(heightM) / LengthM(heightM);

    /// <summary>Work against the band: the elastic energy it gains, J.</summary>
    internal double WorkJ(double fromM, double toM) => Curve.EnergyJ(LengthM(toM)) - Curve.EnergyJ(LengthM(fromM));

    internal double WorkUncertaintyJ(double fromM, double toM) =>
        Curve.EnergyUncertaintyJ(LengthM(fromM), LengthM(toM));

    private double Rise(double heightM) => Math.Max(heightM - Side.AnchorHeightM, 0.01);

    private static double Square(double x) => x * x;
}
