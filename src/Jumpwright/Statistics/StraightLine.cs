using Jumpwright.Quantities;
using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>
/// Least squares y = a + b x. The residual variance is pooled with one to start from, so that two or three points give no
/// false certainty.
/// </summary>
/// <param name="Intercept">a.</param>
/// <param name="Slope">b.</param>
/// <param name="ResidualSd">Pooled residual SD.</param>
/// <param name="MeanX">Mean of x.</param>
/// <param name="SumOfSquaresX">Σ (x − mean)².</param>
/// <param name="Points">Number of points.</param>
/// <param name="RSquared">Share of variance that the line holds.</param>
/// <param name="DegreesOfFreedom">Of the pooled variance.</param>
public sealed record StraightLine(
    double Intercept,
    double Slope,
    double ResidualSd,
    double MeanX,
    double SumOfSquaresX,
    int Points,
    double RSquared,
    double DegreesOfFreedom
)
{
    /// <summary>y at x.</summary>
    public double At(double x) => Intercept + (Slope * x);

    /// <summary>Standard uncertainty of the line at x.</summary>
    public double UncertaintyAt(double x) =>
        ResidualSd * Math.Sqrt((1.0 / Points) + ((x - MeanX) * (x - MeanX) / SumOfSquaresX));

    /// <summary>x at which the line has the value y.</summary>
    public double Solve(double y) => (y - Intercept) / Slope;

    /// <summary>Standard uncertainty of that x, first order; <paramref name="yUncertainty"/> is the doubt of y itself.</summary>
    public double SolveUncertainty(double y, double yUncertainty)
    {
        double line = UncertaintyAt(Solve(y));
        return Math.Sqrt((line * line) + (yUncertainty * yUncertainty)) / Math.Abs(Slope);
    }

    /// <summary>
    /// What would be left of the line's doubt at one place after some more points at x, as a share of today's; the scatter about the
    /// line is taken as it is.
    /// </summary>
    public double DoubtLeftAt(double place, double x, int more)
    {
        double points = Points + more;
        double mean = ((Points * MeanX) + (more * x)) / points;
        double squares = SumOfSquaresX + (Points * more / points * (x - MeanX) * (x - MeanX));
        double after = (1 / points) + ((place - mean) * (place - mean) / squares);
        double today = (1.0 / Points) + ((place - MeanX) * (place - MeanX) / SumOfSquaresX);
        return Math.Sqrt(after / today);
    }

    /// <summary>Half the width of the interval of that confidence over one standard uncertainty (Student's t).</summary>
    public double Factor(double confidence) => StudentT.InvCDF(0, 1, DegreesOfFreedom, (1 + confidence) / 2);

    /// <summary>The line; refused with fewer than two distinct x.</summary>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="startingSd">Residual SD to start from.</param>
    /// <param name="startingDegreesOfFreedom">How many degrees of freedom it counts for; 0 for plain least squares.</param>
    public static Outcome<StraightLine> Fit(
        ReadOnlySpan<double> x,
        ReadOnlySpan<double> y,
        double startingSd = 0,
        double startingDegreesOfFreedom = 0
    )
    {
        int n = Math.Min(x.Length, y.Length);
        double meanX = 0;
        double meanY = 0;
        for (int i = 0; i < n; i++)
        {
            meanX += x[i] / n;
            meanY += y[i] / n;
        }

        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < n; i++)
        {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
            yy += (y[i] - meanY) * (y[i] - meanY);
        }

        if (n < 2 || xx <= 1e-12 * Math.Max(1, meanX * meanX))
        {
            return Refusal.Of($"A line needs points at two different places at least.");
        }

        double slope = xy / xx;
        double squares = Math.Max(0, yy - (slope * xy));
        double freedom = Math.Max(n - 2, 0) + startingDegreesOfFreedom;
        double sd =
            freedom > 0 ? Math.Sqrt((squares + (startingDegreesOfFreedom * startingSd * startingSd)) / freedom) : 0;
        return new StraightLine(
            meanY - (slope * meanX),
            slope,
            sd,
            meanX,
            xx,
            n,
            yy > 0 ? 1 - (squares / yy) : 1,
            Math.Max(freedom, 1)
        );
    }
}
