namespace Jumpwright.Trials;

/// <summary>
/// Somebody touching or leaning on a plate that nobody stands on: what it then carries is no zero, and every weight and instant
/// counted from it is off. The flight shows the plate surely empty, so its reading must not change there, and before a drop it
/// must be the same.
/// </summary>
internal static class TouchedPlate
{
    /// <summary>An empty plate's reading changes by no more, N (house rule: drift, hum and ringing stay below).</summary>
    private const double MostN = 8;

    /// <summary>Means over so long, s: whole swings of the mains at 50 and 60 Hz nearly cancel.</summary>
    private const double BlockS = 0.05;
    private const double BeforeS = 2;
    private const double EdgeS = 0.02;

    /// <summary>A plate rings after take-off.</summary>
    private const double RingingS = 0.08;

    /// <summary>Toes that reach for the plate before they land do so within this of the landing, s.</summary>
    private const double ReachingS = 0.08;

    /// <summary>Their push is looked for over so long, s, and up to so near the landing's own edge, s and samples.</summary>
    private const double ReachS = 0.005;

    private const double OwnEdgeS = 0.002;
    private const double OwnEdgeSamples = 2.5;

    /// <summary>A push as light may be hum and ringing, N; and so many times what the rest of the flight shows (house rules).</summary>
    private const double ReachN = 20;

    private const double ReachTimes = 3;

    private static readonly string[] MadeOfImpulse =
    [
        MeasureNames.BodyWeight,
        MeasureNames.SystemWeight,
        MeasureNames.JumpHeight,
        MeasureNames.TakeOffVelocity,
        MeasureNames.DropHeight,
        MeasureNames.ReactiveStrengthIndex,
        MeasureNames.PeakPropulsivePower,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.BrakingDuration,
        MeasureNames.PropulsionDuration,
        MeasureNames.VerticalStiffness,
    ];

    /// <summary>What a zero that changes in flight spoils as well: instants, and all that is counted from them.</summary>
    private static readonly string[] MadeOfInstantsToo =
    [
        .. MadeOfImpulse,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.FlightTime,
        MeasureNames.ContactTime,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.CountermovementDepth,
        MeasureNames.VerticalStiffnessTimeModel,
    ];

    /// <summary>What a flight of which nobody knows the end spoils; the push before it is whole.</summary>
    private static readonly string[] MadeOfFlight =
    [
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.FlightTime,
        MeasureNames.VerticalStiffnessTimeModel,
        MeasureNames.PeakLoadingRate,
    ];

    /// <summary>Before a drop: the plate must read what it reads in the flight after the contact.</summary>
    public static void BeforeDrop(MeasureList into, Plate plate, Instant touchDown, Instant takeOff, Instant landed)
    {
        int block = Block(plate);
        int end = (int)(touchDown.Sample - (EdgeS * plate.RateHz));
        int start = Math.Max(end - (int)(BeforeS * plate.RateHz), 0);
        (int from, int to) = Flown(plate, takeOff, landed);
        if (to - from < block)
        {
            return;
        }

        double flight = Mean(plate, from, to - from);
        double most = 0;
        for (int i = end - block; i >= start; i -= block)
        {
            double off = Mean(plate, i, block) - flight;
            if (off > 0.15 * plate.Levels.LoadN)
            {
                // Somebody stood on it before: another effort's.
                break;
            }

            most = Math.Max(most, Math.Abs(off));
        }

        if (most > LeastN(plate, block))
        {
            into.Doubt(Cautions.PlateTouched(most), MadeOfImpulse);
        }
    }

    /// <summary>In a flight: the plate's reading must not change.</summary>
    public static void InFlight(MeasureList into, Plate plate, Instant takeOff, Instant touchDown)
    {
        int block = Block(plate);
        (int from, int to) = Flown(plate, takeOff, touchDown);
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        for (int i = from; i + block <= to; i += block)
        {
            double mean = Mean(plate, i, block);
            least = Math.Min(least, mean);
            most = Math.Max(most, mean);
        }

        if (most - least > LeastN(plate, block))
        {
            into.Doubt(Cautions.PlateTouchedInFlight(most - least), MadeOfInstantsToo);
            return;
        }

        BeforeLanding(into, plate, takeOff, touchDown);
    }

    /// <summary>
    /// A foot that touches the plate for a moment and leaves it again before the landing: where the flight ended, nobody can say.
    /// </summary>
    private static void BeforeLanding(MeasureList into, Plate plate, Instant takeOff, Instant touchDown)
    {
        int block = Math.Max((int)(ReachS * plate.RateHz), 1);
        int end = (int)(touchDown.Sample - Math.Max(OwnEdgeS * plate.RateHz, OwnEdgeSamples));
        int start = Math.Max(
            end - (int)(ReachingS * plate.RateHz),
            (int)(takeOff.Sample + (RingingS * plate.RateHz)) + (2 * block)
        );
        int before = Math.Max(
            start - (int)(ReachingS * plate.RateHz),
            (int)(takeOff.Sample + (RingingS * plate.RateHz))
        );
        double usual = 0;
        for (int i = before; i + block <= start; i += block)
        {
            usual = Math.Max(usual, Math.Abs(Mean(plate, i, block) - plate.Levels.ZeroN));
        }

        double least = Math.Max(ReachN + (6 * plate.Levels.NoiseN / Math.Sqrt(block)), ReachTimes * usual);
        double most = 0;
        for (int i = end - block; i >= start; i--)
        {
            most = Math.Max(most, Mean(plate, i, block) - plate.Levels.ZeroN);
        }

        if (most > least)
        {
            into.Doubt(Cautions.PlateTouchedInFlight(most), MadeOfFlight);
        }
    }

    private static int Block(Plate plate) => (int)(BlockS * plate.RateHz);

    /// <summary>The flight without the plate's ringing and the edge of the landing.</summary>
    private static (int From, int To) Flown(Plate plate, Instant takeOff, Instant touchDown) =>
        ((int)(takeOff.Sample + (RingingS * plate.RateHz)), (int)(touchDown.Sample - (EdgeS * plate.RateHz)));

    /// <summary>A change that no noise explains, N.</summary>
    private static double LeastN(Plate plate, int block) => MostN + (6 * plate.Levels.NoiseN / Math.Sqrt(block));

    private static double Mean(Plate plate, int from, int samples) =>
        ForceSums.Total(plate.ForceN.Slice(from, samples)) / samples;
}
