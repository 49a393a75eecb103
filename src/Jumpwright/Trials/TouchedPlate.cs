namespace Jumpwright.Trials;

/// <summary>
/// Somebody touching or leaning on the plate before a drop: what it then carries is not its zero. The flight after the contact
/// shows the plate surely empty, so the two must agree.
/// </summary>
internal static class TouchedPlate
{
    /// <summary>The empty plate before the drop and in flight differ by no more, N (house rule: drift and ringing stay below).</summary>
    private const double MostN = 8;

    private const double BlockS = 0.05;
    private const double BeforeS = 2;
    private const double EdgeS = 0.02;

    /// <summary>A plate rings after take-off.</summary>
    private const double RingingS = 0.08;

    public static void Check(MeasureList into, Plate plate, Instant touchDown, Instant takeOff, Instant landed)
    {
        int block = (int)(BlockS * plate.RateHz);
        int end = (int)(touchDown.Sample - (EdgeS * plate.RateHz));
        int start = Math.Max(end - (int)(BeforeS * plate.RateHz), 0);
        int from = (int)(takeOff.Sample + (RingingS * plate.RateHz));
        int to = (int)(landed.Sample - (EdgeS * plate.RateHz));
        if (to - from < block)
        {
            return;
        }

        double flight = Mean(plate.ForceN.Slice(from, to - from));
        double least = MostN + (6 * plate.Levels.NoiseN / Math.Sqrt(block));
        double most = 0;
        for (int i = end - block; i >= start; i -= block)
        {
            double off = Mean(plate.ForceN.Slice(i, block)) - flight;
            if (off > 0.15 * plate.Levels.LoadN)
            {
                // Somebody stood on it before: another effort's.
                break;
            }

            most = Math.Max(most, Math.Abs(off));
        }

        if (most > least)
        {
            into.Doubt(
                Cautions.PlateTouched(most),
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
                MeasureNames.VerticalStiffness
            );
        }
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double v in values)
        {
            sum += v;
        }

        return sum / values.Length;
    }
}
