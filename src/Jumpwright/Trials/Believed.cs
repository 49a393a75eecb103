using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>What is believed of one number, round its mean: normal distributions, each with its part.</summary>
/// <param name="Off">Middle of each against the mean.</param>
/// <param name="Deviation">Standard deviation of each.</param>
/// <param name="Part">Part of each; together one.</param>
internal readonly record struct Believed(double[] Off, double[] Deviation, double[] Part)
{
    /// <summary>What ±2u is to hold, as two standard deviations of a normal distribution do.</summary>
    private const double Held = 0.9545;

    /// <summary>The width is found to this part of itself.</summary>
    private const double Close = 1e-4;

    private const int MostSteps = 60;

    private const double LeastDeviation = 1e-12;

    /// <summary>
    /// Half of the width that holds as much as two standard deviations of a normal distribution hold: the standard uncertainty
    /// for which ±2u is what it says, also where two beliefs lie apart (JCGM 101:2008, 7.7).
    /// </summary>
    /// <param name="besides">Standard deviation of what errs besides.</param>
    public double StandardUncertainty(double besides)
    {
        double low = 0;
        double high = 0;
        double square = 0;
        for (int k = 0; k < Part.Length; k++)
        {
            double deviation = PushMeasures.Quadrature(Deviation[k], besides);
            high = Math.Max(high, Math.Abs(Off[k]) + (2.1 * deviation));
            square += Part[k] * ((Off[k] * Off[k]) + (deviation * deviation));
        }

        // Newton's steps on the logarithm, which bends but little; halving where one would leave what is known to hold it.
        double width = Math.Min(2 * Math.Sqrt(square), high);
        for (int step = 0; step < MostSteps && high - low > Close * high; step++)
        {
            double beyond = Beyond(width, besides, out double density);
            (low, high) = beyond > 1 - Held ? (width, high) : (low, width);
            double next = width + (Math.Log(beyond / (1 - Held)) * beyond / density);
            if (Math.Abs(next - width) <= Close * width)
            {
                width = next;
                break;
            }

            width = next > low && next < high ? next : (low + high) / 2;
        }

        return width / 2;
    }

    /// <summary>How likely the number lies farther from its mean than that.</summary>
    /// <param name="distance">The distance.</param>
    /// <param name="besides">Standard deviation of what errs besides.</param>
    public double Beyond(double distance, double besides) => Beyond(distance, besides, out _);

    private double Beyond(double distance, double besides, out double density)
    {
        Vector512<double> sum = Vector512<double>.Zero;
        Vector512<double> densities = sum;
        Vector512<double> square = Vector512.Create(besides * besides);
        for (int k = 0; k < Part.Length; k += Vector512<double>.Count)
        {
            Vector512<double> off = Eight(Off, k);
            Vector512<double> own = Eight(Deviation, k);
            Vector512<double> deviation = Vector512.Max(
                Vector512.Sqrt((own * own) + square),
                Vector512.Create(LeastDeviation)
            );
            Vector512<double> part = Eight(Part, k);
            Vector512<double> at = Vector512.Create(distance);
            Vector512<double> above = NormalTail.Above((at - off) / deviation, out Vector512<double> here);
            Vector512<double> below = NormalTail.Above((at + off) / deviation, out Vector512<double> there);
            sum += part * (above + below);
            densities += part * (here + there) / deviation;
        }

        density = Vector512.Sum(densities);
        return Vector512.Sum(sum);
    }

    /// <summary>Eight of them from one on; noughts beyond the last, which are no part of anything.</summary>
    private static Vector512<double> Eight(ReadOnlySpan<double> of, int from)
    {
        if (from + Vector512<double>.Count <= of.Length)
        {
            return Vector512.Create(of[from..]);
        }

        Span<double> some = stackalloc double[Vector512<double>.Count];
        some.Clear();
        of[from..].CopyTo(some);
        return Vector512.Create<double>(some);
    }
}
