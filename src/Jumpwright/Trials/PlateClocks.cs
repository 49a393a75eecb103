using System.Collections.Immutable;

namespace Jumpwright.Trials;

/// <summary>
/// Two plates whose clocks differ: the same foot is then late by the same at take-offs and at landings alike. People do otherwise: a
/// foot that is late at landings leads or keeps pace at take-offs, or is late by another time. The sum of two such plates is nobody's
/// force: contacts are too long by the lag, flights too short, and what comes from them is wrong.
/// </summary>
internal static class PlateClocks
{
    /// <summary>A smaller lag moves no height by a centimetre, s; beside it, part of a sample (house rule).</summary>
    private const double LeastS = 0.003;

    private const double LeastSamples = 0.5;

    /// <summary>Lags at take-offs and at landings are the same within this, s, this part of a sample and this part of themselves (house rule).</summary>
    private const double SameS = 0.0015;

    private const double SameSamples = 0.3;
    private const double SamePart = 0.1;

    /// <summary>A foot is on its plate from this part of the load on; noise asks for more.</summary>
    private const double OnPart = 0.05;

    private const double BeyondS = 0.01;
    private const double WithinS = 0.15;

    private static readonly string[] MadeOfBoth =
    [
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
        MeasureNames.PeakForce,
        MeasureNames.PeakLandingForce,
        MeasureNames.PeakLoadingRate,
        MeasureNames.LandingNetImpulse,
        MeasureNames.BrakingDuration,
        MeasureNames.PropulsionDuration,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
        MeasureNames.AsymmetryBrakingImpulse,
        MeasureNames.AsymmetryPropulsiveImpulse,
        MeasureNames.AsymmetryLandingImpulse,
    ];

    /// <summary>The trials, with what two clocks spoil named where there are two.</summary>
    public static ImmutableArray<Trial> Named(Plate plate, ImmutableArray<Trial> trials) =>
        LagS(plate) is { } lag ? [.. trials.Select(trial => Named(trial, lag))] : trials;

    private static Trial Named(Trial trial, double lagS) =>
        trial.Doubting(Cautions.PlatesOutOfStep(lagS > 0, Math.Abs(lagS)), MadeOfBoth);

    /// <summary>By how much the right plate's clock lags behind the left's, s; null where they keep step, or nobody can say.</summary>
    internal static double? LagS(Plate plate)
    {
        if (!plate.Recording.HasTwoPlates)
        {
            return null;
        }

        var takeOffs = new List<double>();
        var landings = new List<double>();
        foreach ((int first, int last) in plate.Stays)
        {
            for (int k = first; k < last; k++)
            {
                Add(takeOffs, plate, plate.Contacts[k].TakeOff, 1);
                Add(landings, plate, plate.Contacts[k + 1].TouchDown, -1);
            }
        }

        if (takeOffs.Count == 0 || landings.Count == 0)
        {
            return null;
        }

        double up = Middle(takeOffs);
        double down = Middle(landings);
        double mean = (up + down) / 2;
        double least = LeastS + (LeastSamples / plate.RateHz);
        double same = SameS + (SameSamples / plate.RateHz) + (SamePart * Math.Abs(mean));
        return Math.Min(Math.Abs(up), Math.Abs(down)) > least && Math.Abs(up - down) < same ? mean : null;
    }

    private static void Add(List<double> lags, Plate plate, Instant? edge, int way)
    {
        if (
            edge is { } at
            && EdgeOf(plate, plate.Recording.LeftN.Span, plate.LeftEmpty.ZeroN, at, way) is { } left
            && EdgeOf(plate, plate.Recording.RightN.Span, plate.RightEmpty.ZeroN, at, way) is { } right
        )
        {
            lags.Add(plate.Seconds(left, right));
        }
    }

    /// <summary>Where one plate's force passes the level of a foot, looked for from the empty side inwards.</summary>
    private static double? EdgeOf(Plate plate, ReadOnlySpan<double> sideN, double zeroN, Instant edge, int way)
    {
        double on = zeroN + Math.Max(Math.Max(OnPart * plate.Levels.LoadN, 8 * plate.Levels.NoiseN), 10);
        int i = (int)Math.Round(edge.Sample + (way * BeyondS * plate.RateHz));
        int steps = (int)((BeyondS + WithinS) * plate.RateHz);
        for (int k = 0; k < steps; k++, i -= way)
        {
            if (i < 1 || i > sideN.Length - 2)
            {
                return null;
            }

            if (sideN[i] > on)
            {
                double outer = sideN[i + way];
                return i + (outer < on ? way * (sideN[i] - on) / (sideN[i] - outer) : 0);
            }
        }

        return null;
    }

    private static double Middle(List<double> values)
    {
        values.Sort();
        int half = values.Count / 2;
        return values.Count % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }
}
