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
        double beyond = 0;
        density = 0;
        for (int k = 0; k < Part.Length; k++)
        {
            double deviation = Math.Max(PushMeasures.Quadrature(Deviation[k], besides), 1e-12);
            beyond +=
                Part[k]
                * (
                    NormalTail.Above((distance - Off[k]) / deviation, out double above)
                    + NormalTail.Above((distance + Off[k]) / deviation, out double below)
                );
            density += Part[k] * (above + below) / deviation;
        }

        return beyond;
    }
}
