namespace Jumpwright.Trials;

/// <summary>What is believed of one number, round its mean: normal distributions, each with its part.</summary>
/// <param name="Off">Middle of each against the mean.</param>
/// <param name="Deviation">Standard deviation of each.</param>
/// <param name="Part">Part of each; together one.</param>
internal readonly record struct Believed(double[] Off, double[] Deviation, double[] Part)
{
    public double StandardDeviation
    {
        get
        {
            double square = 0;
            for (int k = 0; k < Part.Length; k++)
            {
                square += Part[k] * ((Off[k] * Off[k]) + (Deviation[k] * Deviation[k]));
            }

            return Math.Sqrt(square);
        }
    }
}
