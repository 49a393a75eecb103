namespace Jumpwright.Statistics;

/// <summary>One session of one measure: mean of single trials of one method and device, never a best.</summary>
/// <param name="Day">Day number; only differences count.</param>
/// <param name="Mean">Mean of the trials.</param>
/// <param name="Trials">How many trials.</param>
/// <param name="SumOfSquares">Squared deviations of the trials from their mean.</param>
/// <param name="DeviceVariance">Variance from the device alone, of one trial.</param>
public readonly record struct SessionMean(
    double Day,
    double Mean,
    int Trials,
    double SumOfSquares,
    double DeviceVariance = 0
)
{
    /// <summary>From single trials.</summary>
    public static SessionMean Of(double day, ReadOnlySpan<double> trials, double deviceVariance = 0)
    {
        double mean = 0;
        foreach (double trial in trials)
        {
            mean += trial / trials.Length;
        }

        double squares = 0;
        foreach (double trial in trials)
        {
            squares += (trial - mean) * (trial - mean);
        }

        return new SessionMean(day, mean, trials.Length, squares, deviceVariance);
    }
}
