using System.Numerics;

namespace Jumpwright.Trials;

/// <summary>
/// A wave of force that acts in contact only, between two still stretches: its impulse and what that moves. Times count from an
/// origin at the edge of a still stretch, s; contacts are spans of that time.
/// </summary>
/// <param name="Contacts">Spans of contact, in order.</param>
internal readonly record struct Disturbance((double FromS, double ToS)[] Contacts)
{
    /// <summary>Impulse of unit waves of several angular frequencies, cosine and sine, from the origin to a time, and the double integral to the same.</summary>
    public (Vector<double> Cosine, Vector<double> Sine, Vector<double> CosineMoved, Vector<double> SineMoved) Of(
        Vector<double> omega,
        double timeS
    )
    {
        Vector<double> cosine = Vector<double>.Zero;
        Vector<double> sine = Vector<double>.Zero;
        Vector<double> cosineMoved = Vector<double>.Zero;
        Vector<double> sineMoved = Vector<double>.Zero;
        double sign = timeS < 0 ? -1 : 1;
        double low = Math.Min(timeS, 0);
        double high = Math.Max(timeS, 0);
        foreach ((double fromS, double toS) in Contacts)
        {
            double a = Math.Max(fromS, low);
            double b = Math.Min(toS, high);
            if (b <= a)
            {
                continue;
            }

            (Vector<double> sa, Vector<double> ca) = Vector.SinCos(omega * a);
            (Vector<double> sb, Vector<double> cb) = Vector.SinCos(omega * b);
            cosine += sign * (sb - sa) / omega;
            sine += sign * (ca - cb) / omega;
            cosineMoved += sign * ((((timeS - b) * sb) - ((timeS - a) * sa) - ((cb - ca) / omega)) / omega);
            sineMoved -= sign * ((((timeS - b) * cb) - ((timeS - a) * ca) + ((sb - sa) / omega)) / omega);
        }

        return (cosine, sine, cosineMoved, sineMoved);
    }

    /// <summary>The same of a constant force within one of the contacts.</summary>
    public (double Impulse, double Moved) OfConstant(int contact, double timeS)
    {
        (double fromS, double toS) = Contacts[contact];
        double sign = timeS < 0 ? -1 : 1;
        double a = Math.Max(fromS, Math.Min(timeS, 0));
        double b = Math.Min(toS, Math.Max(timeS, 0));
        return b <= a
            ? (0, 0)
            : (sign * (b - a), sign * (((timeS - a) * (timeS - a)) - ((timeS - b) * (timeS - b))) / 2);
    }

    /// <summary>The same of a force that grows by one a second from zero at a time, s.</summary>
    public (double Impulse, double Moved) OfRamp(double zeroS, double timeS)
    {
        double impulse = 0;
        double moved = 0;
        double sign = timeS < 0 ? -1 : 1;
        foreach ((double fromS, double toS) in Contacts)
        {
            double a = Math.Max(fromS, Math.Min(timeS, 0));
            double b = Math.Min(toS, Math.Max(timeS, 0));
            if (b > a)
            {
                double squares = ((b * b) - (a * a)) / 2;
                double cubes = ((b * b * b) - (a * a * a)) / 3;
                impulse += sign * (squares - (zeroS * (b - a)));
                moved += sign * ((timeS * squares) - cubes - (zeroS * ((timeS * (b - a)) - squares)));
            }
        }

        return (impulse, moved);
    }
}
