using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>
/// A curve with one peak, y = R exp(−k (x − p)²), seen through few noisy trials. The belief stands on a grid of p and k; R (flat)
/// and the noise (scaled inverse-χ²) are integrated out exactly. A quadratic near its top, and never below zero.
/// </summary>
public sealed class PeakedCurve
{
    private const int Places = 61;
    private const int Bends = 13;
    private const int Outcomes = 15;

    private readonly Cell[] _cells;
    private readonly double _noiseVariance;

    private PeakedCurve(Cell[] cells, double noiseVariance, int points)
    {
        _cells = cells;
        _noiseVariance = noiseVariance;
        Points = points;
    }

    /// <summary>How many trials it was drawn from.</summary>
    public int Points { get; }

    /// <summary>Trial-to-trial SD about the curve, in the unit of y.</summary>
    public double NoiseSd => Math.Sqrt(_noiseVariance);

    /// <summary>Belief after the trials.</summary>
    /// <exception cref="ArgumentException">No trial, or one that is not finite and above zero.</exception>
    public static PeakedCurve Of(ReadOnlySpan<CurvePoint> points, CurvePrior prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        if (points.IsEmpty)
        {
            throw new ArgumentException("A curve needs at least one trial.", nameof(points));
        }

        double mean = 0;
        double squares = 0;
        foreach (CurvePoint point in points)
        {
            if (!double.IsFinite(point.X) || !(point.Y > 0) || !double.IsFinite(point.Y))
            {
                throw new ArgumentException("A trial on a curve must be finite and above zero.", nameof(points));
            }

            mean += point.Y / points.Length;
            squares += point.Y * point.Y;
        }

        double startingVariance = Math.Pow(prior.NoisePct / 100 * mean, 2);
        double freedom = prior.NoiseDegreesOfFreedom + points.Length - 1;
        var cells = new Cell[Places * Bends];
        double top = double.MinValue;
        int at = 0;
        for (int i = 0; i < Places; i++)
        {
            double p = prior.PeakLow + ((prior.PeakHigh - prior.PeakLow) * i / (Places - 1));
            for (int j = 0; j < Bends; j++)
            {
                double z = -2.4 + (4.8 * j / (Bends - 1));
                double k = prior.BendMedian * Math.Exp(z * prior.BendLogSd);
                double ss = 0;
                double sy = 0;
                foreach (CurvePoint point in points)
                {
                    double shape = Math.Exp(-k * (point.X - p) * (point.X - p));
                    ss += shape * shape;
                    sy += shape * point.Y;
                }

                // Where the curve is all but zero at every trial it explains none of them.
                double left = ss > 1e-12 ? Math.Max(0, squares - (sy * sy / ss)) : squares;
                double log =
                    (-0.5 * Math.Pow((p - prior.PeakAt) / prior.PeakSd, 2))
                    - (0.5 * z * z)
                    - (0.5 * Math.Log(Math.Max(ss, 1e-12)))
                    - (0.5 * freedom * Math.Log((prior.NoiseDegreesOfFreedom * startingVariance) + left));
                cells[at++] = new Cell(p, k, ss > 1e-12 ? sy / ss : 0, ss, left, log);
                top = Math.Max(top, log);
            }
        }

        double sum = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i].Weight = Math.Exp(cells[i].Weight - top);
            sum += cells[i].Weight;
        }

        double variance = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i].Weight /= sum;
            variance +=
                cells[i].Weight
                * ((prior.NoiseDegreesOfFreedom * startingVariance) + cells[i].Left)
                / (prior.NoiseDegreesOfFreedom + points.Length - 1);
        }

        return new PeakedCurve(cells, variance, points.Length);
    }

    /// <summary>Mean and SD of the curve at x.</summary>
    public (double Mean, double Sd) At(double x)
    {
        double mean = 0;
        double square = 0;
        foreach (ref readonly Cell cell in _cells.AsSpan())
        {
            double shape = cell.Shape(x);
            double y = cell.Height * shape;
            mean += cell.Weight * y;
            square += cell.Weight * ((y * y) + (shape * shape * _noiseVariance / cell.Information));
        }

        return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }

    /// <summary>Where the best lies between two bounds: mean and SD.</summary>
    public (double Mean, double Sd) BestPlace(double low, double high) => Moments(_cells, low, high);

    /// <summary>The best value between two bounds: mean and SD.</summary>
    public (double Mean, double Sd) BestValue(double low, double high)
    {
        double mean = 0;
        double square = 0;
        foreach (ref readonly Cell cell in _cells.AsSpan())
        {
            double shape = cell.Shape(Math.Clamp(cell.Place, low, high));
            double y = cell.Height * shape;
            mean += cell.Weight * y;
            square += cell.Weight * ((y * y) + (shape * shape * _noiseVariance / cell.Information));
        }

        return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }

    /// <summary>Expected loss at x against the best between two bounds, as a share of that best.</summary>
    public double ExpectedLoss(double x, double low, double high)
    {
        double loss = 0;
        foreach (ref readonly Cell cell in _cells.AsSpan())
        {
            loss += cell.Weight * cell.Loss(x, low, high);
        }

        return loss;
    }

    /// <summary>Probability that x loses at most that share against the best between two bounds.</summary>
    public double ProbabilityLossWithin(double x, double share, double low, double high)
    {
        double probability = 0;
        foreach (ref readonly Cell cell in _cells.AsSpan())
        {
            if (cell.Loss(x, low, high) <= share)
            {
                probability += cell.Weight;
            }
        }

        return Math.Min(probability, 1);
    }

    /// <summary>
    /// What the choice among some places is expected to lose against the best between two bounds once some more trials at x are
    /// known: averaged over what those trials may give.
    /// </summary>
    public double LossAfter(double x, int trials, ReadOnlySpan<double> places, double low, double high)
    {
        (double mean, double sd) = At(x);
        double spread = Math.Sqrt((sd * sd) + (_noiseVariance / trials));
        int[] kept = [.. Enumerable.Range(0, _cells.Length).Where(i => _cells[i].Weight > 1e-6)];
        var loss = new double[places.Length, kept.Length];
        var centre = new double[kept.Length];
        var halfPrecision = new double[kept.Length];
        var weight = new double[kept.Length];
        for (int c = 0; c < kept.Length; c++)
        {
            ref readonly Cell cell = ref _cells[kept[c]];
            double shape = cell.Shape(x);
            double doubt = _noiseVariance * ((1.0 / trials) + (shape * shape / cell.Information));
            centre[c] = cell.Height * shape;
            halfPrecision[c] = 0.5 / doubt;
            weight[c] = cell.Weight / Math.Sqrt(doubt);
            for (int p = 0; p < places.Length; p++)
            {
                loss[p, c] = cell.Loss(places[p], low, high);
            }
        }

        double total = 0;
        var after = new double[kept.Length];
        for (int o = 0; o < Outcomes; o++)
        {
            double y = mean + (spread * Normal.InvCDF(0, 1, (o + 0.5) / Outcomes));
            double sum = 0;
            for (int c = 0; c < kept.Length; c++)
            {
                double miss = y - centre[c];
                after[c] = weight[c] * Math.Exp(-miss * miss * halfPrecision[c]);
                sum += after[c];
            }

            double least = double.MaxValue;
            for (int p = 0; p < places.Length; p++)
            {
                double expected = 0;
                for (int c = 0; c < kept.Length; c++)
                {
                    expected += after[c] * loss[p, c];
                }

                least = Math.Min(least, expected / sum);
            }

            total += least / Outcomes;
        }

        return total;
    }

    /// <summary>
    /// The SD of the best place that is to be expected after some more trials at x: averaged over what those trials may give
    /// (their predictive distribution, matched by a normal one).
    /// </summary>
    public double DoubtAfter(double x, int trials, double low, double high)
    {
        (double mean, double sd) = At(x);
        double spread = Math.Sqrt((sd * sd) + (_noiseVariance / trials));
        int n = _cells.Length;
        var centre = new double[n];
        var halfPrecision = new double[n];
        var weight = new double[n];
        var place = new double[n];
        for (int i = 0; i < n; i++)
        {
            ref readonly Cell cell = ref _cells[i];
            double shape = cell.Shape(x);
            double doubt = _noiseVariance * ((1.0 / trials) + (shape * shape / cell.Information));
            centre[i] = cell.Height * shape;
            halfPrecision[i] = 0.5 / doubt;
            weight[i] = cell.Weight < 1e-7 ? 0 : cell.Weight / Math.Sqrt(doubt);
            place[i] = Math.Clamp(cell.Place, low, high);
        }

        double variance = 0;
        for (int o = 0; o < Outcomes; o++)
        {
            double y = mean + (spread * Normal.InvCDF(0, 1, (o + 0.5) / Outcomes));
            double sum = 0;
            double first = 0;
            double second = 0;
            for (int i = 0; i < n; i++)
            {
                if (weight[i] > 0)
                {
                    double miss = y - centre[i];
                    double w = weight[i] * Math.Exp(-miss * miss * halfPrecision[i]);
                    sum += w;
                    first += w * place[i];
                    second += w * place[i] * place[i];
                }
            }

            if (sum > 0)
            {
                variance += ((second / sum) - (first / sum * (first / sum))) / Outcomes;
            }
        }

        return Math.Sqrt(Math.Max(0, variance));
    }

    private static (double Mean, double Sd) Moments(Cell[] cells, double low, double high)
    {
        double mean = 0;
        double square = 0;
        foreach (ref readonly Cell cell in cells.AsSpan())
        {
            double p = Math.Clamp(cell.Place, low, high);
            mean += cell.Weight * p;
            square += cell.Weight * p * p;
        }

        return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }

    private record struct Cell(double Place, double Bend, double Height, double Information, double Left, double Weight)
    {
        public readonly double Shape(double x) => Math.Exp(-Bend * (x - Place) * (x - Place));

        public readonly double Loss(double x, double low, double high)
        {
            double best = Math.Clamp(Place, low, high);
            return 1 - Math.Exp(-Bend * (((x - Place) * (x - Place)) - ((best - Place) * (best - Place))));
        }
    }
}
