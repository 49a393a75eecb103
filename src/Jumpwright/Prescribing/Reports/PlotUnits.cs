using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Reports;

/// <summary>The units of a picture's axes: lengths and masses as the reader has them.</summary>
/// <param name="Length">What a metre is multiplied by.</param>
/// <param name="LengthName">For example <c>cm</c>.</param>
/// <param name="Mass">What a kilogram is multiplied by.</param>
/// <param name="MassName">For example <c>kg</c>.</param>
internal sealed record PlotUnits(double Length, Sentence LengthName, double Mass, Sentence MassName)
{
    private static readonly PlotUnits Metric = new(100, $"cm", 1, $"kg");

    private static readonly PlotUnits InchPound = new(Customary.InchesOf(1), $"in", Customary.PoundsOf(1), $"lb");

    public static PlotUnits Of(UnitSystem units) => units == UnitSystem.InchPound ? InchPound : Metric;
}
