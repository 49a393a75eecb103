using System.Runtime.Intrinsics;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Start and rate from a straight line fitted to all time stamps (contracts §1).</summary>
internal readonly record struct SamplingRate(double StartS, double RateHz)
{
    /// <summary>Part of a sample that a time stamp may be off beyond its rounding.</summary>
    private const double TolerancePartOfSample = 0.01;

    /// <summary>A step so far, in samples, from any whole number of samples is uneven, not a gap.</summary>
    private const double OddPart = 0.1;

    /// <summary>Where a greater part of all steps is uneven, the clock is at fault and no sample need be missing.</summary>
    private const double MostOdd = 0.02;

    /// <summary>Rounding makes steps uneven by so much of the last digit's unit at 300 and 600 Hz, and a repeated stamp by all of it.</summary>
    private const double MostOfDigit = 0.75;

    private const double LeastHz = 200;
    private const double MostHz = 2000;

    /// <summary>Decimals printed for times of one, two, three … digits before the point: writers may keep significant digits.</summary>
    public const int Magnitudes = 8;

    /// <summary>Fits the line and checks every stamp against it.</summary>
    /// <param name="timesS">Time stamps, s.</param>
    /// <param name="decimals">Most decimals seen per magnitude of the time as written.</param>
    /// <param name="unitS">Seconds in one unit of the time as written.</param>
    /// <param name="lineOf">Line of a sample.</param>
    public static Outcome<SamplingRate> Fit(
        ReadOnlySpan<double> timesS,
        ReadOnlySpan<int> decimals,
        double unitS,
        Func<int, int> lineOf
    )
    {
        int n = timesS.Length;
        double middle = (n - 1) / 2.0;
        (double sum, double cross) = Sums(timesS, middle);
        double meanT = timesS[0] + (sum / n);
        double step = cross / (n * ((double)n * n - 1) / 12.0);
        double start = meanT - (step * middle);

        Span<double> tolerance = stackalloc double[Magnitudes];
        double least = double.PositiveInfinity;
        for (int m = 0; m < Magnitudes; m++)
        {
            tolerance[m] =
                (0.5 * Math.Pow(10, -decimals[m]) * unitS) + (TolerancePartOfSample * Math.Abs(step)) + 1e-12;
            least = Math.Min(least, tolerance[m]);
        }

        if (!AllWithin(timesS, start, step, least) && FirstOff(timesS, start, step, tolerance, unitS) is { } off)
        {
            // Rounding of few digits errs one way for long, and pulls the line of least squares with it.
            (double nearStart, double nearStep) = NearestLine.Of(timesS, start, step);
            if (
                FirstOff(timesS, nearStart, nearStep, tolerance, unitS) is not null
                || !StepsEven(timesS, nearStep, tolerance, unitS)
            )
            {
                return WhereUneven(timesS, start, step, off, lineOf);
            }

            (start, step) = (nearStart, nearStep);
        }

        double rate = 1 / step;
        return IsUsable(rate) ? new SamplingRate(start, rate) : Refusals.Rate(rate);
    }

    /// <summary>First stamp that lies farther from the line than its digits explain; null where none does.</summary>
    private static int? FirstOff(
        ReadOnlySpan<double> timesS,
        double start,
        double step,
        ReadOnlySpan<double> tolerance,
        double unitS
    )
    {
        for (int i = 0; i < timesS.Length; i++)
        {
            double off = Math.Abs(timesS[i] - (start + (step * i)));
            if (!(off <= tolerance[Magnitude(timesS[i] / unitS)]))
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>Whether no step is off by what a stamp too many or too few makes: a whole unit of the last digit.</summary>
    private static bool StepsEven(
        ReadOnlySpan<double> timesS,
        double step,
        ReadOnlySpan<double> tolerance,
        double unitS
    )
    {
        for (int i = 1; i < timesS.Length; i++)
        {
            double off = Math.Abs(timesS[i] - timesS[i - 1] - step);
            if (!(off <= MostOfDigit * 2 * tolerance[Magnitude(timesS[i] / unitS)]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Time stamps are rounded, so a rate within a whisker of a limit is at the limit.</summary>
    public static bool IsUsable(double rateHz) => rateHz is >= LeastHz * 0.999 and <= MostHz * 1.001;

    /// <summary>Digits before the point, less one, at most <see cref="Magnitudes"/> − 1.</summary>
    public static int Magnitude(double written)
    {
        double size = Math.Abs(written);
        if (size < 10)
        {
            return 0;
        }

        int m = 1;
        for (double least = 100; m < Magnitudes - 1 && size >= least; least *= 10)
        {
            m++;
        }

        return m;
    }

    /// <summary>Sums of t − t₀ and of (i − middle)(t − t₀), four lanes side by side.</summary>
    private static (double Sum, double Cross) Sums(ReadOnlySpan<double> timesS, double middle)
    {
        double first = timesS[0];
        var sums = Vector256<double>.Zero;
        var crosses = Vector256<double>.Zero;
        var place = Vector256.Create(-middle, 1 - middle, 2 - middle, 3 - middle);
        var four = Vector256.Create(4.0);
        var from = Vector256.Create(first);
        int i = 0;
        for (; i + 4 <= timesS.Length; i += 4)
        {
            Vector256<double> t = Vector256.Create(timesS.Slice(i, 4)) - from;
            sums += t;
            crosses += place * t;
            place += four;
        }

        double sum = Vector256.Sum(sums);
        double cross = Vector256.Sum(crosses);
        for (; i < timesS.Length; i++)
        {
            sum += timesS[i] - first;
            cross += (i - middle) * (timesS[i] - first);
        }

        return (sum, cross);
    }

    /// <summary>Whether every stamp is that near the line; it need not be, where stamps are written with fewer decimals further on.</summary>
    private static bool AllWithin(ReadOnlySpan<double> timesS, double start, double step, double tolerance)
    {
        var place = Vector256.Create(0.0, 1, 2, 3);
        var four = Vector256.Create(4.0);
        var starts = Vector256.Create(start);
        var steps = Vector256.Create(step);
        var within = Vector256.Create(tolerance);
        int i = 0;
        for (; i + 4 <= timesS.Length; i += 4)
        {
            Vector256<double> off = Vector256.Abs(Vector256.Create(timesS.Slice(i, 4)) - (starts + (steps * place)));
            if (!Vector256.LessThanOrEqualAll(off, within))
            {
                return false;
            }

            place += four;
        }

        for (; i < timesS.Length; i++)
        {
            if (!(Math.Abs(timesS[i] - (start + (step * i))) <= tolerance))
            {
                return false;
            }
        }

        return true;
    }

    private static Refusal WhereUneven(
        ReadOnlySpan<double> timesS,
        double start,
        double step,
        int firstOff,
        Func<int, int> lineOf
    )
    {
        var steps = new double[timesS.Length - 1];
        for (int i = 1; i < timesS.Length; i++)
        {
            steps[i - 1] = timesS[i] - timesS[i - 1];
        }

        double usual = Middle(steps);
        int odd = steps.Count(step => step > 0 && Math.Abs((step / usual) - Math.Round(step / usual)) > OddPart);
        bool restless = usual > 0 && odd > MostOdd * steps.Length;
        for (int i = 1; i < timesS.Length; i++)
        {
            double dt = timesS[i] - timesS[i - 1];
            if (dt == 0)
            {
                return Refusals.RepeatedTime(lineOf(i), timesS[i]);
            }

            if (dt < 0 && usual > 0)
            {
                return Refusals.TimeRunsBack(lineOf(i), timesS[i]);
            }

            if (usual > 0 && dt > 1.6 * usual && !restless)
            {
                return Refusals.Gap(lineOf(i), timesS[i - 1], timesS[i]);
            }
        }

        // Every step looks usual: name the sample farthest from the line.
        int worst = firstOff;
        double most = 0;
        for (int i = 0; i < timesS.Length; i++)
        {
            double off = Math.Abs(timesS[i] - (start + (step * i)));
            if (off > most)
            {
                (most, worst) = (off, i);
            }
        }

        return Refusals.Irregular(lineOf(worst), timesS[worst]);
    }

    private static double Middle(double[] values)
    {
        var sorted = (double[])values.Clone();
        Array.Sort(sorted);
        return sorted[sorted.Length / 2];
    }
}
