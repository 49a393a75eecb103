using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// Tension of one elastic band, N, over its stretch x beyond rest, m: a x + b x², nothing when slack. Tension–deformation is of
/// second order (McMaster, Cronin and McGuigan 2010, doi:10.1519/jsc.0b013e3181dc4200).
/// </summary>
/// <param name="LinearNM">a, N/m.</param>
/// <param name="QuadraticNM2">b, N/m².</param>
/// <param name="RestM">Length at rest, m.</param>
/// <param name="RestUncertaintyM">Standard uncertainty of that length, m.</param>
/// <param name="LinearVariance">Variance of a.</param>
/// <param name="Covariance">Covariance of a and b.</param>
/// <param name="QuadraticVariance">Variance of b.</param>
/// <param name="GreatestStretchM">Greatest stretch measured, m; null when none was.</param>
/// <param name="Method"><c>scale-readings</c> or <c>nominal</c>.</param>
public sealed record BandCurve(
    double LinearNM,
    double QuadraticNM2,
    double RestM,
    double RestUncertaintyM,
    double LinearVariance,
    double Covariance,
    double QuadraticVariance,
    double? GreatestStretchM,
    string Method
)
{
    /// <summary>How many readings' worth of trust the scale's own error gets beside the scatter of the readings.</summary>
    private const double ScaleDegreesOfFreedom = 8;

    /// <summary>Tension at that length, N.</summary>
    public double TensionN(double lengthM) => Bands.TensionN(LinearNM, QuadraticNM2, RestM, lengthM);

    /// <summary>Standard uncertainty of the tension at that length, N.</summary>
    public double TensionUncertaintyN(double lengthM)
    {
        double x = lengthM - RestM;
        if (x <= 0)
        {
            return 0;
        }

        double slope = LinearNM + (2 * QuadraticNM2 * x);
        return Math.Sqrt(
            (x * x * LinearVariance)
                + (2 * x * x * x * Covariance)
                + (x * x * x * x * QuadraticVariance)
                + (slope * slope * RestUncertaintyM * RestUncertaintyM)
        );
    }

    /// <summary>Elastic energy stored at that length, J: a x²/2 + b x³/3.</summary>
    public double EnergyJ(double lengthM)
    {
        double x = Math.Max(lengthM - RestM, 0);
        return (LinearNM * x * x / 2) + (QuadraticNM2 * x * x * x / 3);
    }

    /// <summary>Standard uncertainty of the energy between two lengths, J, from the doubt of a and b.</summary>
    public double EnergyUncertaintyJ(double fromM, double toM)
    {
        double from = Math.Max(fromM - RestM, 0);
        double to = Math.Max(toM - RestM, 0);
        double a = ((to * to) - (from * from)) / 2;
        double b = ((to * to * to) - (from * from * from)) / 3;
        double rest = (TensionN(toM) - TensionN(fromM)) * RestUncertaintyM;
        return Math.Sqrt(
            Math.Max(0, (a * a * LinearVariance) + (2 * a * b * Covariance) + (b * b * QuadraticVariance))
                + (rest * rest)
        );
    }

    /// <summary>Least squares through the slack point from readings of a hand scale.</summary>
    /// <param name="restM">Length at rest, m.</param>
    /// <param name="restUncertaintyM">Its standard uncertainty, m.</param>
    /// <param name="lengthsM">Lengths at which the scale was read, m.</param>
    /// <param name="forcesN">What it read, N.</param>
    /// <param name="scaleUncertaintyN">Standard uncertainty of one reading, N.</param>
    public static Outcome<BandCurve> Fit(
        double restM,
        double restUncertaintyM,
        ReadOnlySpan<double> lengthsM,
        ReadOnlySpan<double> forcesN,
        double scaleUncertaintyN
    )
    {
        if (lengthsM.Length != forcesN.Length || lengthsM.Length < 3)
        {
            return Refusal.Of(
                $"{Math.Min(lengthsM.Length, forcesN.Length)} scale readings: a curve needs at least 3 at different lengths. Read the scale at three stretches."
            );
        }

        double s2 = 0;
        double s3 = 0;
        double s4 = 0;
        double f1 = 0;
        double f2 = 0;
        double longest = 0;
        for (int i = 0; i < lengthsM.Length; i++)
        {
            double x = lengthsM[i] - restM;
            if (!(x > 0) || !(forcesN[i] > 0))
            {
                return Refusal.Of(
                    $"Reading {i + 1} is at {new Length(lengthsM[i]):0.00 m} with {forcesN[i]:0.0} N: a reading needs a length beyond rest ({new Length(restM):0.00 m}) and a pull above 0."
                );
            }

            s2 += x * x;
            s3 += x * x * x;
            s4 += x * x * x * x;
            f1 += x * forcesN[i];
            f2 += x * x * forcesN[i];
            longest = Math.Max(longest, x);
        }

        double determinant = (s2 * s4) - (s3 * s3);
        if (determinant < 1e-6 * s2 * s4)
        {
            return Refusal.Of(
                $"The scale readings stand at nearly the same length: read at three clearly different stretches."
            );
        }

        double a = ((f1 * s4) - (f2 * s3)) / determinant;
        double b = ((f2 * s2) - (f1 * s3)) / determinant;
        double squares = 0;
        for (int i = 0; i < lengthsM.Length; i++)
        {
            double x = lengthsM[i] - restM;
            double miss = forcesN[i] - (a * x) - (b * x * x);
            squares += miss * miss;
        }

        if (a + (2 * b * longest) <= 0 || a <= 0)
        {
            return Refusal.Of(
                $"The readings give a band that pulls less when it is stretched more: a reading is wrong, or the band slipped. Read again."
            );
        }

        double variance =
            (squares + (ScaleDegreesOfFreedom * scaleUncertaintyN * scaleUncertaintyN))
            / (lengthsM.Length - 2 + ScaleDegreesOfFreedom);
        return new BandCurve(
            a,
            b,
            restM,
            restUncertaintyM,
            variance * s4 / determinant,
            -variance * s3 / determinant,
            variance * s2 / determinant,
            longest,
            "scale-readings"
        );
    }

    /// <summary>
    /// A straight line from a stiffness somebody stated. Bands of one colour differ by 8 to 19 % in tension (McMaster et al. 2010):
    /// the standard uncertainty is 19 %.
    /// </summary>
    public static BandCurve Nominal(double restM, double stiffnessNM) =>
        new(stiffnessNM, 0, restM, 0.02, Math.Pow(0.19 * stiffnessNM, 2), 0, 0, null, "nominal");
}
