using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Jumpwright.Simulation.Motions;

/// <summary>
/// Solves a contact's motion. The acceleration is a piecewise cubic (Hermite) through knots; velocities and displacements at
/// knots are linear in the knots' values, so the least change of the wished-for values that makes every passage exact is one
/// small linear system. Force, velocity and displacement then come from the same coefficients.
/// </summary>
public static class MotionSpline
{
    /// <summary>Solves, or gives an empty array when the answer would need the plate to pull.</summary>
    /// <param name="startS">Time of the first knot, s.</param>
    /// <param name="start">State at the first knot; its displacement and velocity are taken.</param>
    /// <param name="knots">At least two, in order of time, the first at 0.</param>
    /// <param name="passages">What must hold exactly.</param>
    /// <param name="leastMS2">Least acceleration allowed, m/s²; minus g is an unloaded plate.</param>
    public static ImmutableArray<PolynomialPiece> Solve(
        double startS,
        BodyState start,
        ReadOnlySpan<Knot> knots,
        ReadOnlySpan<Passage> passages,
        double leastMS2
    )
    {
        int n = knots.Length;
        double[] values = new double[n];
        double[] times = new double[n];
        for (int i = 0; i < n; i++)
        {
            values[i] = knots[i].ValueMS2;
            times[i] = knots[i].TimeS;
            if (i > 0 && times[i] - times[i - 1] < 1e-4)
            {
                return [];
            }
        }

        if (passages.Length > 0)
        {
            // Twice: the second round removes the rounding of the first.
            for (int round = 0; round < 2; round++)
            {
                if (!Correct(knots, times, values, start, passages))
                {
                    return [];
                }
            }
        }

        double[] slopes = Slopes(knots, times, values, withGiven: true);
        ImmutableArray<PolynomialPiece>.Builder pieces = ImmutableArray.CreateBuilder<PolynomialPiece>(n - 1);
        double x = start.DisplacementM;
        double v = start.VelocityMS;
        for (int i = 0; i + 1 < n; i++)
        {
            double h = times[i + 1] - times[i];
            double rise = (values[i + 1] - values[i]) / h;
            double c2 = ((3 * rise) - (2 * slopes[i]) - slopes[i + 1]) / h;
            double c3 = (slopes[i] + slopes[i + 1] - (2 * rise)) / (h * h);
            double from = startS + times[i];
            PolynomialPiece piece = new(from, startS + times[i + 1], true, x, v, values[i], slopes[i], c2, c3);
            foreach (double turn in piece.TurningPointsS())
            {
                if (piece.At(turn).AccelerationMS2 < leastMS2)
                {
                    return [];
                }
            }

            if (values[i] < leastMS2 - 1e-9 || values[i + 1] < leastMS2 - 1e-9)
            {
                return [];
            }

            pieces.Add(piece);
            BodyState end = piece.At(piece.ToS);
            x = end.DisplacementM;
            v = end.VelocityMS;
        }

        return pieces.ToImmutable();
    }

    private static bool Correct(
        ReadOnlySpan<Knot> knots,
        double[] times,
        double[] values,
        BodyState start,
        ReadOnlySpan<Passage> passages
    )
    {
        int n = knots.Length;
        int rows = 0;
        foreach (Passage passage in passages)
        {
            rows += (passage.VelocityMS is null ? 0 : 1) + (passage.DisplacementM is null ? 0 : 1);
        }

        double[,] sensitivity = new double[rows, n];
        double[] missing = new double[rows];
        (double[] velocityNow, double[] displacementNow) = Integrals(times, values, Slopes(knots, times, values, true));
        int row = 0;
        foreach (Passage passage in passages)
        {
            double along = times[passage.Knot];
            if (passage.VelocityMS is { } v)
            {
                missing[row++] = v - start.VelocityMS - velocityNow[passage.Knot];
            }

            if (passage.DisplacementM is { } x)
            {
                missing[row++] = x - start.DisplacementM - (start.VelocityMS * along) - displacementNow[passage.Knot];
            }
        }

        double[] unit = new double[n];
        for (int i = 0; i < n; i++)
        {
            double freedom = knots[i].Freedom;
            if (freedom <= 0)
            {
                continue;
            }

            unit[i] = 1;
            (double[] dv, double[] dx) = Integrals(times, unit, Slopes(knots, times, unit, false));
            unit[i] = 0;
            row = 0;
            foreach (Passage passage in passages)
            {
                if (passage.VelocityMS is not null)
                {
                    sensitivity[row++, i] = dv[passage.Knot] * freedom;
                }

                if (passage.DisplacementM is not null)
                {
                    sensitivity[row++, i] = dx[passage.Knot] * freedom;
                }
            }
        }

        Matrix<double> a = DenseMatrix.OfArray(sensitivity);
        Vector<double> z = (a * a.Transpose()).Solve(DenseVector.OfArray(missing));
        Vector<double> change = a.TransposeThisAndMultiply(z);
        for (int i = 0; i < n; i++)
        {
            values[i] += knots[i].Freedom * change[i];
            if (!double.IsFinite(values[i]))
            {
                return false;
            }
        }

        return true;
    }

    private static double[] Slopes(ReadOnlySpan<Knot> knots, double[] times, double[] values, bool withGiven)
    {
        int n = knots.Length;
        double[] slopes = new double[n];
        for (int i = 0; i < n; i++)
        {
            int before = Math.Max(i - 1, 0);
            int after = Math.Min(i + 1, n - 1);
            double chord = (values[after] - values[before]) / (times[after] - times[before]);
            slopes[i] = knots[i].Slope switch
            {
                KnotSlope.Through => chord,
                KnotSlope.Chord => chord * knots[i].SlopeValue,
                KnotSlope.Given when withGiven => knots[i].SlopeValue,
                _ => 0,
            };
        }

        return slopes;
    }

    /// <summary>Velocity and displacement gained up to each knot from rest.</summary>
    private static (double[] Velocity, double[] Displacement) Integrals(
        double[] times,
        double[] values,
        double[] slopes
    )
    {
        int n = times.Length;
        double[] velocity = new double[n];
        double[] displacement = new double[n];
        for (int i = 0; i + 1 < n; i++)
        {
            double h = times[i + 1] - times[i];
            double area = (h * (values[i] + values[i + 1]) / 2) + (h * h * (slopes[i] - slopes[i + 1]) / 12);
            double moment =
                (h * h * ((3.0 / 20 * values[i]) + (7.0 / 20 * values[i + 1])))
                + (h * h * h * ((slopes[i] / 30) - (slopes[i + 1] / 20)));
            displacement[i + 1] = displacement[i] + (velocity[i] * h) + (h * area) - moment;
            velocity[i + 1] = velocity[i] + area;
        }

        return (velocity, displacement);
    }
}
