using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>
/// What a body does, beyond what Newton allows: nobody trails the toes on the plate for a twentieth of a second before leaving it.
/// House rules of the simulator; without them "take-off" would be a word and no event.
/// </summary>
internal static class Plausible
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Force below a third of the weight only in the first and last sixth of the contact.</summary>
    public static bool Rebound(ImmutableArray<PolynomialPiece> pieces)
    {
        double from = pieces[0].FromS;
        double contact = pieces[^1].ToS - from;
        return Carries(pieces, from + (contact / 6), pieces[^1].ToS - (contact / 6));
    }

    /// <summary>Force below a third of the weight only in the last 35 ms before take-off, counted from an instant on.</summary>
    public static bool Push(ImmutableArray<PolynomialPiece> pieces, double fromS) =>
        Carries(pieces, fromS, pieces[^1].ToS - 0.035);

    private static bool Carries(ImmutableArray<PolynomialPiece> pieces, double fromS, double toS)
    {
        const int steps = 60;
        int piece = 0;
        for (int i = 0; i <= steps; i++)
        {
            double t = fromS + ((toS - fromS) * i / steps);
            while (piece + 1 < pieces.Length && pieces[piece].ToS < t)
            {
                piece++;
            }

            if (pieces[piece].At(t).AccelerationMS2 + G < G / 3)
            {
                return false;
            }
        }

        return true;
    }
}
