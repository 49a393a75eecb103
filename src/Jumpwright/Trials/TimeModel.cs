using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Stiffness from contact and flight time alone (half-sine; Dalleau et al. 2004), with its doubt.</summary>
internal static class TimeModel
{
    public static (double Value, double Uncertainty) Of(
        double massKg,
        double massU,
        double contactS,
        double contactU,
        double flightS,
        double flightU
    )
    {
        double k = Stiffness.HoppingNM(massKg, contactS, flightS);
        double byContact =
            Stiffness.HoppingNM(massKg, contactS + (contactU / 2), flightS)
            - Stiffness.HoppingNM(massKg, contactS - (contactU / 2), flightS);
        double byFlight =
            Stiffness.HoppingNM(massKg, contactS, flightS + (flightU / 2))
            - Stiffness.HoppingNM(massKg, contactS, flightS - (flightU / 2));
        return (k, PushMeasures.Quadrature(byContact, byFlight, k * massU / massKg));
    }

    public static void Add(
        MeasureList into,
        double massKg,
        double massU,
        double contactS,
        double contactU,
        double flightS,
        double flightU
    )
    {
        (double k, double u) = Of(massKg, massU, contactS, contactU, flightS, flightU);
        if (k > 0)
        {
            into.Add(
                MeasureNames.VerticalStiffnessTimeModel,
                k,
                Unit.NewtonPerMetre,
                u,
                "half-sine from contact and flight time"
            );
        }
    }
}
