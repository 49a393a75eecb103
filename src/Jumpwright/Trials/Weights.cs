using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Body and system weight from the fitted motion.</summary>
internal static class Weights
{
    /// <summary>So far from the stated mass, a part of it, the label or the plate's scale is wrong (house rule: no athlete changes so).</summary>
    private const double FarPart = 0.15;

    /// <summary>Below this weight, N, an unlabelled force may be in another unit: grown people weigh this in pounds (house rule).</summary>
    private const double LightestGrownN = 245;

    /// <summary>A zero that is worth a word, N (house rule).</summary>
    private const double SaidZeroN = 60;

    /// <summary>Hum that is said, N (house rule).</summary>
    private const double SaidHumN = 1;

    private static readonly string[] MadeOfForce =
    [
        MeasureNames.BodyWeight,
        MeasureNames.SystemWeight,
        MeasureNames.PeakPropulsivePower,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.PeakForce,
        MeasureNames.PeakLandingForce,
        MeasureNames.PeakLoadingRate,
        MeasureNames.LandingNetImpulse,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
    ];

    /// <summary>
    /// Who leans on a hand while weighed jumps too high by impulse, and a landing would show it. Where none does only the stated mass
    /// can: two and a half per cent of weight over the second from onset to take-off are a tenth of the take-off velocity (house rule).
    /// </summary>
    private const double UncheckedPart = 0.025;

    /// <summary>Holds the weight of a jump without a landing on the plate against the stated mass.</summary>
    public static void CheckWithoutLanding(MeasureList into, Plate plate, FittedMotion motion)
    {
        RecordingLabels labels = plate.Recording.Labels;
        double measured = (motion.WeightN / Gravity.MetresPerSecondSquared) - (labels.ExternalLoadKg ?? 0);
        if (labels.BodyMassKg is { } stated && Math.Abs(measured - stated) > UncheckedPart * stated)
        {
            into.Doubt(Cautions.WeightUnchecked(measured, stated), UnlikeStands.MadeOfWeight);
        }
    }

    public static void Add(MeasureList into, Plate plate, FittedMotion motion, JumpTask? task = null)
    {
        double u = PushMeasures.Quadrature(motion.WeightUncertaintyN, plate.Empty.ZeroUncertaintyN);
        const string method = "still stretches and motion, least squares";
        double load = (plate.Recording.Labels.ExternalLoadKg ?? 0) * Gravity.MetresPerSecondSquared;
        if (task == JumpTask.LoadedJump && plate.Recording.Labels.ExternalLoadKg is null)
        {
            into.Warn(Cautions.LoadNotStated);
        }
        else if (motion.WeightN - load < PlateDefects.LeastWeightN)
        {
            into.Doubt(
                Cautions.LoadHeavierThanSeen(motion.WeightN, load / Gravity.MetresPerSecondSquared),
                MadeOfForce
            );
        }
        else
        {
            into.Add(MeasureNames.BodyWeight, motion.WeightN - load, Unit.Newton, u, method);
        }

        into.Add(MeasureNames.SystemWeight, motion.WeightN, Unit.Newton, u, method);
        if (plate.Empty.Samples == 0)
        {
            into.Warn(Cautions.ZeroUnknown);
        }

        if (Math.Abs(motion.DriftNS) > 0.3)
        {
            into.Warn(Cautions.Drift(motion.DriftNS));
        }

        if (motion.PostureChanged)
        {
            into.Warn(Cautions.PostureChanged);
        }

        if (plate.HumN > SaidHumN)
        {
            into.Warn(Cautions.HumTakenOff(plate.HumN));
        }

        double measured = (motion.WeightN - load) / Gravity.MetresPerSecondSquared;
        if (plate.Recording.Labels.BodyMassKg is { } stated)
        {
            double off = Math.Abs(measured - stated);
            if (off > FarPart * stated)
            {
                into.Doubt(Cautions.WeightFarFromStated(measured, stated), MadeOfForce);
            }
            else if (off > Math.Max(0.03 * stated, 2))
            {
                into.Warn(Cautions.WeightDisagrees(measured, stated));
            }
        }
        else if (motion.WeightN < LightestGrownN)
        {
            into.Doubt(Cautions.UnitUnsure(motion.WeightN), MadeOfForce);
        }

        if (plate.Empty.Samples > 0 && Math.Abs(plate.Empty.ZeroN) > SaidZeroN)
        {
            into.Warn(Cautions.ZeroTakenOff(plate.Empty.ZeroN));
        }
    }
}
