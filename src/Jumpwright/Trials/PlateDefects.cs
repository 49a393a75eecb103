using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>What makes a force recording unfit to be trusted at all: wrong sign or unit, no zero, a limit reached, lost samples.</summary>
internal static class PlateDefects
{
    private const double ShortestRecordingS = 0.8;

    /// <summary>A plate that reads more than this empty was not zeroed, N (house rule).</summary>
    private const double MostZeroN = 200;

    /// <summary>Nobody who jumps here weighs less or more, N.</summary>
    public const double LeastWeightN = 180;

    private const double MostWeightN = 4000;

    /// <summary>A rough level so near to the stated mass in pounds, a part of it, is in pounds.</summary>
    private const double SamePart = 0.07;

    public static Refusal? Find(Plate plate)
    {
        double seconds = plate.ForceN.Length / plate.RateHz;
        if (seconds < ShortestRecordingS)
        {
            return Refusals.TooShort(seconds);
        }

        PlateLevels levels = plate.Levels;
        if (levels.WasEmpty && levels.ZeroN < -MostZeroN)
        {
            return Refusals.SignReversed(levels.ZeroN);
        }

        if (levels.WasEmpty && levels.ZeroN > MostZeroN)
        {
            return Refusals.NotZeroed(levels.ZeroN);
        }

        if (plate.Contacts.Count == 0 || levels.LoadN is < 20 and > -20)
        {
            return levels.LoadN is > 0.2 and < 20 ? Refusals.Unit(levels.LoadN) : Refusals.NobodyOnPlate();
        }

        if (levels.LoadN < 0)
        {
            return Refusals.SignReversed(levels.LoadN);
        }

        if (
            plate.Recording.Labels.BodyMassKg is { } kg
            && Math.Abs((InPounds(kg + (plate.Recording.Labels.ExternalLoadKg ?? 0)) / levels.LoadN) - 1) < SamePart
        )
        {
            return Refusals.PoundsForce(levels.LoadN, kg);
        }

        if (levels.LoadN is < LeastWeightN or > MostWeightN)
        {
            return Refusals.Unit(levels.LoadN);
        }

        return plate.Recording.HasTwoPlates
            ? Saturation.Find(plate, plate.Recording.LeftN.Span)
                ?? Saturation.Find(plate, plate.Recording.RightN.Span)
                ?? LostSamples.Find(plate)
            : Saturation.Find(plate, plate.Recording.TotalN.Span) ?? LostSamples.Find(plate);
    }

    private static double InPounds(double kg) => kg * Gravity.MetresPerSecondSquared / Column.NewtonsPerPoundForce;
}
