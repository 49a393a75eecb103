using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// What may be seen beyond an edge: nothing or a plate that rings on a little, or after a take-off the swing that comes on top of a force
/// that is read right.
/// </summary>
/// <param name="rateHz">Sampling rate, Hz.</param>
/// <param name="swing">That swing; null for none.</param>
internal readonly struct BeyondEdge(double rateHz, PlateAnswer? swing)
{
    /// <summary>
    /// One plate in four rings on right beyond an edge, by about this part of the load at first and for about so long, s (house
    /// estimate, held by validation): what is not nothing there need not be the person's.
    /// </summary>
    private const double Rings = 0.25;

    private const double RingsPart = 0.03;
    private const double RingsS = 0.005;

    /// <summary>A swing is about as large as this part of the load (house estimate).</summary>
    private const double SwingPart = 0.04;

    /// <summary>What is seen beyond an edge before a touch-down (−1) or after a take-off (+1): before a touch-down nothing swings.</summary>
    public static BeyondEdge Of(PlateAnswer? answer, int way, double rateHz) => new(rateHz, way > 0 ? answer : null);

    /// <summary>Logarithm of how likely the samples beyond each of eight instants are.</summary>
    public Vector512<double> Of(in EdgeWindow window, Vector512<double> start) =>
        swing is { } known ? Swinging(window, start, known) : Ringing(window, start);

    private Vector512<double> Ringing(in EdgeWindow window, Vector512<double> start)
    {
        Vector512<double> nothing = Vector512<double>.Zero;
        Vector512<double> silent = nothing;
        Vector512<double> ringing = nothing;
        Vector512<double> border = start + Vector512.Create((double)window.Outside);
        double decay = 2 / (RingsS * rateHz);
        double rings = RingsPart * window.LoadN * RingsPart * window.LoadN;
        for (int k = 0; k < window.ForceN.Length; k++)
        {
            Vector512<double> inside = Vector512.Create((double)k) - border;
            Vector512<double> isInside = Vector512.GreaterThan(inside, nothing);
            if (Vector512.GreaterThanAll(inside, nothing))
            {
                break;
            }

            double y = window.ForceN[k];
            Vector512<double> w = Vector512.AndNot(Vector512.Create(window.Weights[k]), isInside);
            Vector512<double> square = w * (y * y);
            Vector512<double> wider =
                Vector512<double>.One + (w * rings * EdgePowers.Part(Vector512.Min(inside, nothing) * decay));
            silent += square;
            ringing += (square / wider) + Vector512.Log(wider);
        }

        Vector512<double> apart = (silent - ringing) / 2;
        Vector512<double> less = EdgePowers.Part(-Vector512.Abs(apart));
        Vector512<double> mixed = Vector512.ConditionalSelect(
            Vector512.GreaterThan(apart, nothing),
            Vector512.Create(Rings) + ((1 - Rings) * less),
            Vector512.Create(1 - Rings) + (Rings * less)
        );
        return Vector512.Log(mixed) - (Vector512.Min(silent, ringing) / 2);
    }

    /// <summary>A swing of any size and phase explains what it can; the rest is noise.</summary>
    private Vector512<double> Swinging(in EdgeWindow window, Vector512<double> start, PlateAnswer known)
    {
        double usual = SwingPart * window.LoadN * SwingPart * window.LoadN;
        var free = FreeSwing.Of(known.Hz, known.Damping, rateHz);
        Vector512<double> nothing = Vector512<double>.Zero;
        Vector512<double> border = start + Vector512.Create((double)window.Outside);
        (Vector512<double> cos, Vector512<double> sin) = free.After(border);
        Vector512<double> silent = nothing;
        Vector512<double> cc = Vector512.Create(1 / usual);
        Vector512<double> ss = cc;
        Vector512<double> cs = nothing;
        Vector512<double> cy = nothing;
        Vector512<double> sy = nothing;
        for (int k = 0; k < window.ForceN.Length; k++)
        {
            Vector512<double> isInside = Vector512.GreaterThan(Vector512.Create((double)k), border);
            if (Vector512.EqualsAll(isInside.AsInt64(), Vector512<long>.AllBitsSet))
            {
                break;
            }

            double y = window.ForceN[k];
            Vector512<double> w = Vector512.AndNot(Vector512.Create(window.Weights[k]), isInside);
            Vector512<double> weightedCos = w * cos;
            Vector512<double> weightedSin = w * sin;
            silent += w * (y * y);
            cc += weightedCos * cos;
            cs += weightedCos * sin;
            ss += weightedSin * sin;
            cy += weightedCos * y;
            sy += weightedSin * y;
            // One sample nearer to the edge.
            free.Back(ref cos, ref sin);
        }

        Vector512<double> explained = FreeSwing.Explained(cc, cs, ss, cy, sy, out Vector512<double> det);
        return (explained - Vector512.Log(det * usual * usual) - silent) / 2;
    }
}
