using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The reactive strength index with its doubt. Contact and height share the instant of take-off: what the contact gains the height loses, so that
/// their errors add in the index (propagation with covariance: JCGM 100:2008, 5.2.2, from memory).
/// </summary>
internal static class ReboundIndex
{
    /// <summary>Adds the index of a height and the contact before it.</summary>
    /// <param name="list">Receives it, m/s.</param>
    /// <param name="height">By impulse or by flight time, m, with its method.</param>
    /// <param name="contactS">Contact time, s.</param>
    /// <param name="contactU">Its standard uncertainty, s.</param>
    /// <param name="takeOffU">Standard uncertainty of the instant of take-off, s.</param>
    public static void Add(MeasureList list, Measure height, double contactS, double contactU, double takeOffU)
    {
        double index = ReactiveStrength.Index(height.Value, contactS);
        // In flight the velocity falls by g·t, and the height goes with its square; of a flight the half is lost at either end.
        double perS = Math.Sqrt(2 * Gravity.MetresPerSecondSquared / height.Value);
        bool byFlight = height.Name == MeasureNames.JumpHeightFlightTime;
        list.Add(
            MeasureNames.ReactiveStrengthIndex,
            index,
            Unit.MetrePerSecond,
            index
                * Relative(
                    height.StandardUncertainty / height.Value,
                    byFlight ? perS / 2 : perS,
                    contactS,
                    contactU,
                    takeOffU
                ),
            height.Method
        );
    }

    /// <summary>Standard uncertainty of the index of one contact and the flight after it, m/s.</summary>
    /// <param name="hop">Times, s, and index, m/s.</param>
    /// <param name="contactU">Standard uncertainty of the contact, s.</param>
    /// <param name="flightU">Standard uncertainty of the flight, s.</param>
    public static double UncertaintyOf(HopContact hop, double contactU, double flightU) =>
        hop.ReactiveStrengthIndex
        * Relative(
            2 * flightU / hop.FlightS,
            2 / hop.FlightS,
            hop.ContactS,
            contactU,
            // Which of its two ends makes an interval unsure is not kept: the half of it, and of the surer one.
            Math.Min(contactU, flightU) / Math.Sqrt(2)
        );

    private static double Relative(double height, double heightPerS, double contactS, double contactU, double takeOffU)
    {
        double contact = contactU / contactS;
        return Math.Sqrt((height * height) + (contact * contact) + (2 * heightPerS * takeOffU * takeOffU / contactS));
    }
}
