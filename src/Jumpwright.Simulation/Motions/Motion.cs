using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Simulation.Motions;

/// <summary>One solved motion of a centre of mass over the whole recording.</summary>
/// <param name="SystemMassKg">All that moves: body and external load, kg.</param>
/// <param name="Pieces">Without gaps, in order of time.</param>
public sealed record Motion(double SystemMassKg, ImmutableArray<MotionPiece> Pieces)
{
    private const double G = Gravity.MetresPerSecondSquared;

    public double FromS => Pieces[0].FromS;

    public double ToS => Pieces[^1].ToS;

    public double WeightN => SystemMassKg * G;

    public BodyState At(double timeS) => PieceAt(timeS).At(timeS);

    /// <summary>Vertical force of the ground, N; exactly zero in flight.</summary>
    public double ForceAt(double timeS)
    {
        MotionPiece piece = PieceAt(timeS);
        return piece.InContact ? SystemMassKg * (piece.At(timeS).AccelerationMS2 + G) : 0;
    }

    /// <summary>The piece that holds the instant; the later one at a join.</summary>
    public MotionPiece PieceAt(double timeS)
    {
        int low = 0;
        int high = Pieces.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (Pieces[middle].FromS <= timeS)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return Pieces[low];
    }

    /// <summary>Greatest force and its instant between two instants, N.</summary>
    public (double TimeS, double Value) PeakForce(double fromS, double toS) => Greatest(fromS, toS, ForceAt);

    /// <summary>Least force and its instant, N.</summary>
    public (double TimeS, double Value) LeastForce(double fromS, double toS)
    {
        (double time, double value) = Greatest(fromS, toS, t => -ForceAt(t));
        return (time, -value);
    }

    /// <summary>Greatest power (force times velocity) and its instant, W.</summary>
    public (double TimeS, double Value) PeakPower(double fromS, double toS) =>
        Greatest(fromS, toS, t => ForceAt(t) * At(t).VelocityMS);

    /// <summary>Lowest point and its instant, m.</summary>
    public (double TimeS, double Value) Lowest(double fromS, double toS)
    {
        (double time, double value) = Greatest(fromS, toS, t => -At(t).DisplacementM);
        return (time, -value);
    }

    /// <summary>Fastest fall and its instant, m/s (negative).</summary>
    public (double TimeS, double Value) FastestFall(double fromS, double toS)
    {
        (double time, double value) = Greatest(fromS, toS, t => -At(t).VelocityMS);
        return (time, -value);
    }

    /// <summary>Integral over time by Gauss's five-point rule within each piece: exact for polynomials up to degree nine.</summary>
    public double Integral(double fromS, double toS, Func<double, double> integrand)
    {
        double sum = 0;
        foreach (MotionPiece piece in Pieces)
        {
            double from = Math.Max(fromS, piece.FromS);
            double to = Math.Min(toS, piece.ToS);
            if (to <= from)
            {
                continue;
            }

            // Long sways are cut so that the rule stays exact to rounding.
            int parts = piece is PolynomialPiece ? 1 : (int)Math.Ceiling((to - from) / 0.02);
            double width = (to - from) / parts;
            for (int part = 0; part < parts; part++)
            {
                double middle = from + (width * (part + 0.5));
                for (int k = 0; k < GaussNodes.Length; k++)
                {
                    sum += width / 2 * GaussWeights[k] * integrand(middle + (width / 2 * GaussNodes[k]));
                }
            }
        }

        return sum;
    }

    /// <summary>Greatest value of a smooth function: a fine scan of each piece, then golden sections.</summary>
    public static (double TimeS, double Value) Greatest(double fromS, double toS, Func<double, double> function)
    {
        const double step = 0.002;
        int count = Math.Max(2, (int)Math.Ceiling((toS - fromS) / step));
        double width = (toS - fromS) / count;
        int best = 0;
        double bestValue = double.NegativeInfinity;
        for (int i = 0; i <= count; i++)
        {
            double value = function(fromS + (i * width));
            if (value > bestValue)
            {
                (best, bestValue) = (i, value);
            }
        }

        double low = fromS + (Math.Max(0, best - 1) * width);
        double high = fromS + (Math.Min(count, best + 1) * width);
        double golden = (Math.Sqrt(5) - 1) / 2;
        for (int i = 0; i < 60; i++)
        {
            double left = high - (golden * (high - low));
            double right = low + (golden * (high - low));
            if (function(left) < function(right))
            {
                low = left;
            }
            else
            {
                high = right;
            }
        }

        double time = (low + high) / 2;
        double found = function(time);
        return found >= bestValue ? (time, found) : (fromS + (best * width), bestValue);
    }

    private static readonly double[] GaussNodes =
    [
        0,
        0.5384693101056831,
        -0.5384693101056831,
        0.9061798459386640,
        -0.9061798459386640,
    ];

    private static readonly double[] GaussWeights =
    [
        0.5688888888888889,
        0.4786286704993665,
        0.4786286704993665,
        0.2369268850561891,
        0.2369268850561891,
    ];
}
