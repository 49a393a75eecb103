namespace Jumpwright.Trials;

/// <summary>The reading of an edge where no power can be fitted: its straight part, or a parabola, is drawn on to the plate's zero.</summary>
internal static class StraightEdge
{
    /// <summary>Part of the load up to which the edge is taken to be straight.</summary>
    private const double StraightPart = 0.15;

    private const double StraightS = 0.012;

    /// <summary>From so many samples on, and so far above noise, an edge is drawn as a curve.</summary>
    private const int CurveSamples = 6;

    private const double CurveNoises = 15;

    /// <summary>What the unknown shape of an edge below its straight part leaves open, s.</summary>
    private const double EdgeShapeS = 0.00008;

    /// <summary>The line of an edge is not believed farther out than this, s.</summary>
    private const double FarthestS = 0.006;

    /// <summary>How unsure an instant is where the recording, or the empty plate, ends before the edge, s.</summary>
    private const double NoEdgeS = 0.04;

    /// <summary>Where the edge meets zero, not believed below a given level, N; its slope, N a sample.</summary>
    public static Instant Above(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double low,
        out double slope
    )
    {
        double step = 1 / rateHz;
        slope = 0;
        if (EdgeSurroundings.FirstBelow(forceN, rateHz, last, way, levels, low) is not { } i)
        {
            return new Instant(last, NoEdgeS, Unsettled: true);
        }

        // Straight part of the edge: samples i − way, i − 2 way, … up to the top level.
        double top = low + (StraightPart * levels.LoadN);
        int longest = Math.Max((int)(StraightS * rateHz), 2);
        double n = 0;
        double sk = 0;
        double sf = 0;
        double skk = 0;
        double skf = 0;
        double skkk = 0;
        double skkkk = 0;
        double skkf = 0;
        for (int k = 1; k <= longest; k++)
        {
            int j = i - (way * k);
            if (j < 0 || j >= forceN.Length || (n >= 2 && forceN[j] > top))
            {
                break;
            }

            n++;
            sk += k;
            sf += forceN[j];
            skk += (double)k * k;
            skf += k * forceN[j];
            skkk += (double)k * k * k;
            skkkk += (double)k * k * k * k;
            skkf += (double)k * k * forceN[j];
        }

        double inner = forceN[Math.Clamp(i - way, 0, forceN.Length - 1)];
        double crossing = inner > forceN[i] ? Math.Clamp((low - forceN[i]) / (inner - forceN[i]), 0, 1) : 0.5;
        slope = n < 2 ? 0 : ((n * skf) - (sk * sf)) / ((n * skk) - (sk * sk));
        if (!(slope > 0))
        {
            return new Instant(i - (way * crossing), step);
        }

        double corner = 0.05;
        int second = i - (2 * way);
        int third = i - (3 * way);
        if (n <= 2 && forceN[second] > top && third >= 0 && third < forceN.Length)
        {
            // Too coarse for a straight part: let the slope go on changing as it does between the nearest samples.
            double before = forceN[third] - forceN[second];
            double change = Math.Clamp((slope - before) / slope, -0.5, 1);
            double inmost = inner - (slope * (1 + (0.5 * change)));
            slope *= 1 + (0.5 * change);
            n = 2;
            sk = 1;
            sf = inner + inmost;
            skk = 1;
            corner = 0.08;
        }

        // k counts inwards from sample i; the line meets zero at k0, not far beyond what sample i itself allows.
        double k0 = (levels.ZeroN - ((sf - (slope * sk)) / n)) / slope;
        double curved = 1;
        if (n >= CurveSamples && top - low > CurveNoises * Math.Max(levels.NoiseN, 0.1))
        {
            // Many samples on a slow edge: it curves, and a straight line would miss where it ends.
            double root = Root(
                n,
                sk,
                skk,
                skkk,
                skkkk,
                sf - (n * levels.ZeroN),
                skf - (sk * levels.ZeroN),
                skkf - (skk * levels.ZeroN)
            );
            k0 = double.IsNaN(root) ? k0 : root;
            curved = 2.5;
        }

        double outermost = Math.Max(-(low - levels.ZeroN) / slope, -FarthestS * rateHz);
        double k1 = Math.Clamp(k0, Math.Min(outermost, 0), 1);
        double middle = (sk / n) - k0;
        double spread = Math.Max(skk - (sk * sk / n), 0.5);
        double noise = curved * Math.Max(levels.NoiseN, 0.3) / slope * Math.Sqrt((1 / n) + (middle * middle / spread));
        // A curved edge bends away from its straight part; between two samples a corner may hide.
        double bend = 0.04 * (1 - k1);
        double u = PushMeasures.Quadrature(
            Math.Sqrt((noise * noise) + (bend * bend) + (corner * corner)) * step,
            EdgeShapeS
        );
        return new Instant(i - (way * k1), Math.Min(u, 0.01));
    }

    /// <summary>Where the least-squares parabola through the sums of an edge meets zero, going outwards; NaN where it is no edge.</summary>
    private static double Root(double n, double s1, double s2, double s3, double s4, double y0, double y1, double y2)
    {
        double d0 = (s2 * s4) - (s3 * s3);
        double d1 = (s1 * s4) - (s2 * s3);
        double d2 = (s1 * s3) - (s2 * s2);
        double det = (n * d0) - (s1 * d1) + (s2 * d2);
        double a = ((y0 * d0) - (y1 * d1) + (y2 * d2)) / det;
        double b = ((-y0 * d1) + (y1 * ((n * s4) - (s2 * s2))) - (y2 * ((n * s3) - (s1 * s2)))) / det;
        double c = ((y0 * d2) - (y1 * ((n * s3) - (s1 * s2))) + (y2 * ((n * s2) - (s1 * s1)))) / det;
        double reach = (b * b) - (4 * a * c);
        if (!(b > 0) || !double.IsFinite(c))
        {
            return double.NaN;
        }

        // Beyond its own turning point the parabola says nothing: the edge ends there at the latest.
        return reach <= 0 ? -b / (2 * c) : -2 * a / (b + Math.Sqrt(reach));
    }
}
