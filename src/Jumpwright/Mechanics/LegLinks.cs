using System.Collections.Immutable;

namespace Jumpwright.Mechanics;

/// <summary>
/// A standing or squatting body as four links seen from the side: foot, shank, thigh, and all above the hip as one. Lengths from
/// stature after Winter (from memory), or with the hip height measured; masses from a table of <see cref="BodySegments"/>.
/// </summary>
/// <param name="FootM">Ankle height, m.</param>
/// <param name="ShankM">Shank, m.</param>
/// <param name="ThighM">Thigh, m.</param>
/// <param name="UpperCentreM">Hip to the centre of mass of all above it, m.</param>
/// <param name="ThighShare">Both thighs, of body mass.</param>
/// <param name="ThighCentre">Its centre of mass from the hip, of its length.</param>
/// <param name="ShankShare">Both shanks, of body mass.</param>
/// <param name="ShankCentre">Its centre of mass from the knee, of its length.</param>
/// <param name="FootShare">Both feet, of body mass.</param>
/// <param name="StatureM">Stature, m.</param>
public sealed record LegLinks(
    double FootM,
    double ShankM,
    double ThighM,
    double UpperCentreM,
    double ThighShare,
    double ThighCentre,
    double ShankShare,
    double ShankCentre,
    double FootShare,
    double StatureM
)
{
    /// <summary>Ankle dorsiflexion that goes with knee flexion when squatting, degrees for a degree (house rule), and its most.</summary>
    private const double AnklePerKnee = 0.35;
    private const double AnkleMostDeg = 35;

    /// <summary>The middle of the foot lies this far ahead of the ankle, of stature (house rule).</summary>
    private const double MidFoot = 0.04;

    /// <summary>Hip height in standing, m.</summary>
    public double HipM => FootM + ShankM + ThighM;

    /// <summary>Centre of mass above the sole in standing, m.</summary>
    public double StandingCentreM => Squat(0).CentreM;

    /// <summary>From stature; with the hip height measured (floor to trochanter), shank and thigh are scaled to it.</summary>
    /// <param name="statureM">Stature, m.</param>
    /// <param name="hipHeightM">Measured hip height, m, or null.</param>
    /// <param name="segments">A table that has thigh, shank and foot.</param>
    public static LegLinks Of(double statureM, double? hipHeightM, ImmutableArray<BodySegment> segments)
    {
        BodySegment thigh = segments.Single(s => s.Name == "thigh");
        BodySegment shank = segments.Single(s => s.Name == "shank");
        double foot = BodySegments.FootHeightFraction * statureM;
        double leg = (BodySegments.ShankFraction + BodySegments.ThighFraction) * statureM;
        double scale = hipHeightM is { } hip ? (hip - foot) / leg : 1;
        return new LegLinks(
            foot,
            scale * BodySegments.ShankFraction * statureM,
            scale * BodySegments.ThighFraction * statureM,
            BodySegments.DempsterWinter[0].CentreFraction
                * (BodySegments.ShoulderHeightFraction - BodySegments.HipHeightFraction)
                * statureM,
            2 * thigh.MassFraction,
            thigh.CentreFraction,
            2 * shank.MassFraction,
            shank.CentreFraction,
            2 * segments.Single(s => s.Name == "foot").MassFraction,
            statureM
        );
    }

    /// <summary>
    /// The balanced squat with that knee flexion: ankles bend along, the trunk leans until the centre of mass is above the middle
    /// of the foot.
    /// </summary>
    /// <param name="kneeDeg">Knee flexion, degrees; 0 is straight.</param>
    public LinkPosture Squat(double kneeDeg)
    {
        double ankle = Radians(Math.Min(AnklePerKnee * kneeDeg, AnkleMostDeg));
        double thigh = Radians(kneeDeg) - ankle;
        double kneeX = ShankM * Math.Sin(ankle);
        double kneeY = FootM + (ShankM * Math.Cos(ankle));
        double hipX = kneeX - (ThighM * Math.Sin(thigh));
        double hipY = kneeY + (ThighM * Math.Cos(thigh));
        double upperShare = 1 - ThighShare - ShankShare - FootShare;
        double target = MidFoot * StatureM;
        double thighX = hipX + (ThighCentre * (kneeX - hipX));
        double thighY = hipY + (ThighCentre * (kneeY - hipY));
        double shankX = (1 - ShankCentre) * kneeX;
        double shankY = FootM + ((1 - ShankCentre) * (kneeY - FootM));
        double rest = (ThighShare * thighX) + (ShankShare * shankX) + (FootShare * target);
        double sine = (((target - rest) / upperShare) - hipX) / UpperCentreM;
        double lean = Math.Asin(Math.Clamp(sine, -1, 1));
        double centre =
            (upperShare * (hipY + (UpperCentreM * Math.Cos(lean))))
            + (ThighShare * thighY)
            + (ShankShare * shankY)
            + (FootShare * FootM / 2);
        return new LinkPosture(
            kneeDeg,
            Degrees(thigh + lean),
            Degrees(ankle),
            Degrees(lean),
            centre,
            hipY,
            sine is >= -1 and <= 1
        );
    }

    /// <summary>Knee flexion, degrees, at which the centre of mass stands that high above the sole; null when no squat to 130° does.</summary>
    public double? KneeDegAt(double centreM)
    {
        double low = 0;
        double high = 130;
        if (centreM > Squat(low).CentreM || centreM < Squat(high).CentreM)
        {
            return null;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Squat(middle).CentreM > centreM ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Degrees(double radians) => radians * 180 / Math.PI;
}
