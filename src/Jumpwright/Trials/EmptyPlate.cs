namespace Jumpwright.Trials;

/// <summary>The plate's zero and noise, from the stretches in which nobody stood on it.</summary>
/// <param name="ZeroN">Mean reading, N.</param>
/// <param name="ZeroUncertaintyN">Standard uncertainty of that mean, N.</param>
/// <param name="NoiseN">Standard deviation of one sample, N.</param>
/// <param name="Samples">How many samples it rests on; 0 where the plate was never empty.</param>
internal readonly record struct EmptyPlate(double ZeroN, double ZeroUncertaintyN, double NoiseN, int Samples)
{
    /// <summary>A plate that was never empty may be off by this much, N: what a plate drifts after it was zeroed.</summary>
    private const double UnknownZeroN = 3;

    private const double RingingS = 0.08;
    private const double EdgeS = 0.02;

    public static EmptyPlate Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        IReadOnlyList<Contact> contacts,
        PlateLevels rough
    )
    {
        int ringing = (int)(RingingS * rateHz);
        int edge = (int)(EdgeS * rateHz);
        double n = 0;
        double sum = 0;
        double squares = 0;
        double shift = rough.ZeroN;
        int from = 0;
        for (int k = 0; k <= contacts.Count; k++)
        {
            int to = k < contacts.Count ? contacts[k].Samples.From : forceN.Length;
            int start = from + (k == 0 ? 0 : edge);
            int end = to - (k == contacts.Count ? 0 : edge);
            // A plate rings after take-off: leave that out where enough remains.
            if (k > 0 && end - start > 3 * ringing)
            {
                start += ringing;
            }

            for (int i = start; i < end; i++)
            {
                double f = forceN[i] - shift;
                sum += f;
                squares += f * f;
                n++;
            }

            from = k < contacts.Count ? contacts[k].Samples.To : to;
        }

        if (n < 8)
        {
            return new EmptyPlate(0, UnknownZeroN, rough.NoiseN, 0);
        }

        double mean = sum / n;
        double deviation = Math.Sqrt(Math.Max((squares / n) - (mean * mean), 0));
        // Hum and drift make neighbours alike: count one independent sample in four.
        return new EmptyPlate(shift + mean, (deviation / Math.Sqrt(n / 4)) + 0.02, deviation, (int)n);
    }
}
