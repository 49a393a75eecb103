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
    private const double Close = 1e-3;

    /// <summary>
    /// Half of the width that holds as much as two standard deviations of a normal distribution hold: the standard uncertainty
    /// for which ±2u is what it says, also where two beliefs lie apart (JCGM 101:2008, 7.7).
    /// </summary>
    /// <param name="besides">Standard deviation of what errs besides.</param>
    public double StandardUncertainty(double besides)
    {
        double low = 0;
        double high = 0;
        for (int k = 0; k < Part.Length; k++)
        {
            high = Math.Max(high, Math.Abs(Off[k]) + (2.1 * PushMeasures.Quadrature(Deviation[k], besides)));
        }

        while (high - low > Close * high)
        {
            double middle = (low + high) / 2;
            (low, high) = Beyond(middle, besides) > 1 - Held ? (middle, high) : (low, middle);
        }

        return (low + high) / 4;
    }

    /// <summary>How likely the number lies farther from its mean than that.</summary>
    /// <param name="distance">The distance.</param>
    /// <param name="besides">Standard deviation of what errs besides.</param>
    public double Beyond(double distance, double besides)
    {
        double beyond = 0;
        for (int k = 0; k < Part.Length; k++)
        {
            double deviation = Math.Max(PushMeasures.Quadrature(Deviation[k], besides), 1e-12);
            beyond +=
                Part[k]
                * (
                    NormalTail.Above((distance - Off[k]) / deviation)
                    + NormalTail.Above((distance + Off[k]) / deviation)
                );
        }

        return beyond;
    }
}
