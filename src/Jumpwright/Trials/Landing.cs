using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>What follows the last touch-down: peak force, and the time until the force stays within 5 % of the weight.</summary>
internal static class Landing
{
    private const double BandPart = 0.05;
    private const double StandingS = 1;

    /// <summary>Adds the landing's measures; gives the sample at which the athlete was stable, or null.</summary>
    public static double? Measure(
        MeasureList into,
        Plate plate,
        Instant touchDown,
        int end,
        double? weightN,
        double weightU
    )
    {
        int from = (int)Math.Ceiling(touchDown.Sample);
        PushMeasures.PeakForce(into, plate, MeasureNames.PeakLandingForce, from, end);
        if (weightN is not { } weight)
        {
            return null;
        }

        double band = BandPart * weight;
        int last = end - 1;
        while (last > from && Math.Abs(plate.ForceN[last] - weight) <= band)
        {
            last--;
        }

        if (plate.Seconds(last, end - 1) < StandingS || last <= from)
        {
            return null;
        }

        double slope =
            Math.Max(Math.Abs(plate.ForceN[last] - plate.ForceN[Math.Min(last + 1, end - 1)]), 0.5) * plate.RateHz;
        double u = Math.Min((weightU + (2 * plate.Levels.NoiseN)) / slope, 0.1) + (0.5 / plate.RateHz);
        into.Add(
            MeasureNames.TimeToStabilisation,
            plate.Seconds(touchDown.Sample, last),
            Unit.Second,
            u,
            "last sample outside 5 % of weight"
        );
        return last;
    }
}
