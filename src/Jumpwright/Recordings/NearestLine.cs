namespace Jumpwright.Recordings;

/// <summary>
/// The line whose farthest stamp lies nearest: what stamps of few digits allow. How far the farthest lies from the middle line of a
/// slope is convex in the slope, so that thirds find the least.
/// </summary>
internal static class NearestLine
{
    private const int Rounds = 50;

    /// <summary>Start, s, and step, s, of that line.</summary>
    /// <param name="timesS">Time stamps, s.</param>
    /// <param name="start">Start of a line near it, such as that of least squares, s.</param>
    /// <param name="step">Step of that, s.</param>
    public static (double StartS, double StepS) Of(ReadOnlySpan<double> timesS, double start, double step)
    {
        (double least, double most) = Ends(timesS, start, step);
        // The line sought is nowhere farther from this one than this one's farthest stamp and its own.
        double reach = 2 * (most - least) / (timesS.Length - 1);
        double low = step - reach;
        double high = step + reach;
        for (int round = 0; round < Rounds; round++)
        {
            double third = (high - low) / 3;
            if (Width(timesS, start, low + third) < Width(timesS, start, high - third))
            {
                high -= third;
            }
            else
            {
                low += third;
            }
        }

        double nearest = (low + high) / 2;
        (least, most) = Ends(timesS, start, nearest);
        return (start + ((least + most) / 2), nearest);
    }

    private static double Width(ReadOnlySpan<double> timesS, double start, double step)
    {
        (double least, double most) = Ends(timesS, start, step);
        return most - least;
    }

    /// <summary>Least and greatest distance of a stamp from a line, s.</summary>
    private static (double Least, double Most) Ends(ReadOnlySpan<double> timesS, double start, double step)
    {
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        for (int i = 0; i < timesS.Length; i++)
        {
            double off = timesS[i] - (start + (step * i));
            least = Math.Min(least, off);
            most = Math.Max(most, off);
        }

        return (least, most);
    }
}
