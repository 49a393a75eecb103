namespace Jumpwright.Trials;

/// <summary>What is believed of the instant of one edge: points in time with their weights, from one reading or several.</summary>
internal static class EdgePosterior
{
    /// <summary>What ±2u is to hold.</summary>
    private const double Held = 0.9545;

    /// <summary>What remains open beside all that, s.</summary>
    private const double LeastS = 0.00005;

    /// <summary>
    /// Devices smooth what they sample below half its rate, some less, some more, and what is smoothed meets zero farther out than the force did.
    /// Half of what a filter of second order at 0.45 of the rate makes at 200 Hz, s: so far is put right, and so far stays open (house estimate from
    /// simulated jumps through such a filter). It falls with the square of the rate, since the force between two samples does.
    /// </summary>
    private const double SmoothedS = 0.00045;

    private const double SmoothedAtHz = 200;

    /// <summary>The instant: the mean of what is believed.</summary>
    /// <param name="edge">The edge that the points are counted from.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="at">Points, samples inwards; sorted anew here.</param>
    /// <param name="parts">Their weights; sorted along.</param>
    /// <param name="grid">How far apart neighbours lie, samples.</param>
    public static Instant Tell(in EdgeSide edge, double rateHz, Span<double> at, Span<double> parts, double grid)
    {
        double sum = 0;
        double mean = 0;
        double squares = 0;
        for (int k = 0; k < at.Length; k++)
        {
            sum += parts[k];
            mean += parts[k] * at[k];
            squares += parts[k] * at[k] * at[k];
        }

        mean /= sum;
        double spread = Math.Sqrt(Math.Max((squares / sum) - (mean * mean), 0));
        // Two instants apart, one likely and one less: the width that holds 95.45 % tells of both (decision 21).
        for (int k = 0; k < at.Length; k++)
        {
            at[k] = Math.Abs(at[k] - mean);
        }

        at.Sort(parts);
        double within = 0;
        int last = 0;
        for (int k = 0; k < at.Length && within < Held * sum; k++)
        {
            within += parts[k];
            last = k;
        }

        spread = Math.Max(spread, at[last] / 2);
        double smoothedS = SmoothedS * (SmoothedAtHz / rateHz) * (SmoothedAtHz / rateHz);
        return new Instant(
            edge.First - (edge.Way * (mean + (smoothedS * rateHz))),
            PushMeasures.Quadrature(
                PushMeasures.Quadrature(spread, grid / 4) / rateHz,
                PushMeasures.Quadrature(LeastS, smoothedS)
            )
        );
    }
}
