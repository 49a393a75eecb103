using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>The height really fallen, from the velocity at touch-down; never the box's.</summary>
internal static class Falls
{
    private const double BoxDiffersM = 0.02;

    public static void Add(MeasureList list, Plate plate, FittedMotion motion, Instant touchDown)
    {
        double v = motion.VelocityAt(touchDown.Sample);
        double u = PushMeasures.TakeOffVelocityUncertainty(motion, touchDown);
        double height = Flight.HeightFromVelocityM(v);
        list.Add(
            MeasureNames.DropHeight,
            height,
            Unit.Metre,
            Math.Abs(v) / Gravity.MetresPerSecondSquared * u,
            "impulse-momentum, backward from standing"
        );
        Sureness.OfHeight(list, MeasureNames.DropHeight, motion, touchDown);
        if (plate.Recording.Labels.DropHeightM is { } nominal && Math.Abs(nominal - height) > BoxDiffersM)
        {
            list.Warn(Cautions.DropNotBox(height, nominal));
        }
    }
}
