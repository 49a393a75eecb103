using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Body and system weight from the fitted motion.</summary>
internal static class Weights
{
    public static void Add(MeasureList into, Plate plate, FittedMotion motion, JumpTask? task = null)
    {
        double u = PushMeasures.Quadrature(motion.WeightUncertaintyN, plate.Empty.ZeroUncertaintyN);
        const string method = "still stretches and motion, least squares";
        double load = (plate.Recording.Labels.ExternalLoadKg ?? 0) * Gravity.MetresPerSecondSquared;
        if (task == JumpTask.LoadedJump && plate.Recording.Labels.ExternalLoadKg is null)
        {
            into.Warn(Cautions.LoadNotStated);
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

        double measured = (motion.WeightN - load) / Gravity.MetresPerSecondSquared;
        if (plate.Recording.Labels.BodyMassKg is { } stated && Math.Abs(measured - stated) > Math.Max(0.03 * stated, 2))
        {
            into.Warn(Cautions.WeightDisagrees(measured, stated));
        }
    }
}
