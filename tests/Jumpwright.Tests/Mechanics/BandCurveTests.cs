using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Mechanics;

public class BandCurveTests
{
    [Fact]
    public void Fit_ReadingsOnASecondOrderCurve_FindsIt()
    {
        double[] lengths = [1.1, 1.3, 1.5, 1.7];
        double[] forces = [.. lengths.Select(l => (150 * (l - 0.9)) + (60 * (l - 0.9) * (l - 0.9)))];
        BandCurve curve = BandCurve.Fit(0.9, 0.005, lengths, forces, 2).Require();
        Assert.Equal(150, curve.LinearNM, 6);
        Assert.Equal(60, curve.QuadraticNM2, 6);
        Assert.Equal(0, curve.TensionN(0.85));
    }

    [Fact]
    public void Energy_IsTheIntegralOfTension()
    {
        BandCurve curve = BandCurve.Fit(0.9, 0, [1.1, 1.4, 1.8], [35, 90, 200], 2).Require();
        double sum = 0;
        const int n = 20000;
        for (int i = 0; i < n; i++)
        {
            sum += curve.TensionN(0.7 + (1.1 * (i + 0.5) / n)) * 1.1 / n;
        }

        Assert.Equal(sum, curve.EnergyJ(1.8) - curve.EnergyJ(0.7), 4);
    }

    [Theory]
    [InlineData(new[] { 1.1, 1.3 }, new[] { 30.0, 60 }, "at least 3")]
    [InlineData(new[] { 1.1, 1.1, 1.1 }, new[] { 30.0, 31, 30 }, "same length")]
    [InlineData(new[] { 0.8, 1.3, 1.5 }, new[] { 30.0, 60, 90 }, "beyond rest")]
    [InlineData(new[] { 1.1, 1.5, 1.9 }, new[] { 80.0, 60, 20 }, "pulls less")]
    public void Fit_ReadingsThatMakeNoCurve_RefusesWithASentence(double[] lengths, double[] forces, string says)
    {
        Assert.False(BandCurve.Fit(0.9, 0.005, lengths, forces, 2).TryGet(out _, out Refusal? refusal));
        Assert.Contains(says, refusal.Sentence, StringComparison.Ordinal);
    }

    /// <summary>Beyond the readings the doubt grows.</summary>
    [Fact]
    public void Uncertainty_BeyondTheLongestReading_Grows()
    {
        BandCurve curve = BandCurve.Fit(0.9, 0.005, [1.1, 1.3, 1.5], [33, 70, 105], 3).Require();
        Assert.True(curve.TensionUncertaintyN(1.9) > 2 * curve.TensionUncertaintyN(1.4));
    }
}
