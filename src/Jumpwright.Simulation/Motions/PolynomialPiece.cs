namespace Jumpwright.Simulation.Motions;

/// <summary>
/// Acceleration as a cubic of the time since <paramref name="FromS"/>; velocity and displacement are its exact integrals.
/// </summary>
/// <param name="X0">Displacement at the start, m.</param>
/// <param name="V0">Velocity at the start, m/s.</param>
/// <param name="C0">Acceleration at the start, m/s².</param>
/// <param name="C1">Coefficient of time, m/s³.</param>
/// <param name="C2">Coefficient of time squared, m/s⁴.</param>
/// <param name="C3">Coefficient of time cubed, m/s⁵.</param>
public sealed record PolynomialPiece(
    double FromS,
    double ToS,
    bool InContact,
    double X0,
    double V0,
    double C0,
    double C1,
    double C2,
    double C3
) : MotionPiece(FromS, ToS, InContact)
{
    public override BodyState At(double timeS)
    {
        double t = timeS - FromS;
        double a = C0 + (t * (C1 + (t * (C2 + (t * C3)))));
        double v = V0 + (t * (C0 + (t * ((C1 / 2) + (t * ((C2 / 3) + (t * C3 / 4)))))));
        double x = X0 + (t * (V0 + (t * ((C0 / 2) + (t * ((C1 / 6) + (t * ((C2 / 12) + (t * C3 / 20)))))))));
        return new BodyState(x, v, a);
    }

    /// <summary>Instants inside the piece at which the acceleration turns.</summary>
    public IEnumerable<double> TurningPointsS()
    {
        double a = 3 * C3;
        double b = 2 * C2;
        if (Math.Abs(a) < 1e-9 * (Math.Abs(b) + Math.Abs(C1) + 1))
        {
            if (Math.Abs(b) > 1e-12)
            {
                double only = FromS - (C1 / b);
                if (only > FromS && only < ToS)
                {
                    yield return only;
                }
            }

            yield break;
        }

        double inside = (b * b) - (4 * a * C1);
        if (inside < 0)
        {
            yield break;
        }

        double root = Math.Sqrt(inside);
        double q = -0.5 * (b + Math.CopySign(root, b));
        double first = FromS + (q / a);
        double second = FromS + (q == 0 ? 0 : C1 / q);
        if (first > FromS && first < ToS)
        {
            yield return first;
        }

        if (second > FromS && second < ToS && Math.Abs(second - first) > 1e-12)
        {
            yield return second;
        }
    }
}
