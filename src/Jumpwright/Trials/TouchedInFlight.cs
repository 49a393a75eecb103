namespace Jumpwright.Trials;

/// <summary>
/// Somebody touching or leaning on a plate while the athlete flies: nobody is on it then, so a level that changes is no zero, and
/// every instant and weight that is counted from it is off.
/// </summary>
internal static class TouchedInFlight
{
    /// <summary>An empty plate's level changes by no more within a flight, N (house rule: drift, hum and ringing stay below).</summary>
    private const double MostN = 8;

    /// <summary>Means over so long, s: whole swings of the mains at 50 and 60 Hz nearly cancel.</summary>
    private const double BlockS = 0.05;

    private const double EdgeS = 0.02;

    /// <summary>A plate rings after take-off.</summary>
    private const double RingingS = 0.08;

    public static void Check(MeasureList into, Plate plate, Instant takeOff, Instant touchDown)
    {
        double change = ChangeN(plate, takeOff, touchDown);
        int block = (int)(BlockS * plate.RateHz);
        if (change > MostN + (6 * plate.Levels.NoiseN / Math.Sqrt(Math.Max(block, 1))))
        {
            into.Doubt(
                Cautions.PlateTouchedInFlight(change),
                MeasureNames.BodyWeight,
                MeasureNames.SystemWeight,
                MeasureNames.JumpHeight,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.TakeOffVelocity,
                MeasureNames.FlightTime,
                MeasureNames.ContactTime,
                MeasureNames.DropHeight,
                MeasureNames.ReactiveStrengthIndex,
                MeasureNames.ReactiveStrengthIndexModified,
                MeasureNames.CountermovementDepth,
                MeasureNames.PeakPropulsivePower,
                MeasureNames.MeanPropulsivePower,
                MeasureNames.BrakingDuration,
                MeasureNames.PropulsionDuration,
                MeasureNames.VerticalStiffness,
                MeasureNames.VerticalStiffnessTimeModel
            );
        }
    }

    /// <summary>Greatest less least mean of the plate's whole blocks within the flight, N; 0 where fewer than two fit.</summary>
    private static double ChangeN(Plate plate, Instant takeOff, Instant touchDown)
    {
        int block = (int)(BlockS * plate.RateHz);
        int from = (int)(takeOff.Sample + (RingingS * plate.RateHz));
        int to = (int)(touchDown.Sample - (EdgeS * plate.RateHz));
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        for (int i = from; i + block <= to; i += block)
        {
            double mean = ForceSums.Total(plate.ForceN.Slice(i, block)) / block;
            least = Math.Min(least, mean);
            most = Math.Max(most, mean);
        }

        return most > least ? most - least : 0;
    }
}
