using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Boxes;

/// <summary>The numbers behind boxes: data, each with its source.</summary>
public static class BoxNumbers
{
    /// <summary>Knee flexion of a half squat.</summary>
    public static Coefficient HalfSquat { get; } =
        new(
            "half-squat-knee",
            90,
            new Unit("deg"),
            null,
            Bibliography.Get("common-practice"),
            "Half a squat is drawn at a knee of 80 to 100°."
        );

    /// <summary>Knee flexion of a soft landing that keeps most of the height.</summary>
    public static Coefficient SoftLanding { get; } =
        new("soft-landing-knee", 30, new Unit("deg"), null, Bibliography.Get("house-rule"));

    /// <summary>Space between the soles and the box's edge.</summary>
    public static Coefficient Clearance { get; } =
        new("box-clearance", 0.10, Unit.Metre, null, Bibliography.Get("house-rule"));

    /// <summary>What is proposed lies this much below the ceiling.</summary>
    public static Coefficient Step { get; } = new("box-step", 0.10, Unit.Metre, null, Bibliography.Get("house-rule"));

    /// <summary>Above this a padded or folding edge is asked for: the risk of a box is the shin.</summary>
    public static Coefficient PaddedAbove { get; } =
        new("box-padded-above", 0.60, Unit.Metre, null, Bibliography.Get("house-rule"));

    /// <summary>
    /// Doubt of how far the centre of mass falls into a half squat, of stature: this link model gives 0.16, the illustration of the
    /// literature notes 0.18.
    /// </summary>
    public static Coefficient PostureDoubt { get; } =
        new("box-posture-doubt", 0.02, Unit.One, null, Bibliography.Get("winter-segments"));

    /// <summary>The hip joint above the seat when sitting, of stature.</summary>
    public static Coefficient HipAboveSeat { get; } =
        new("hip-above-seat", 0.04, Unit.One, null, Bibliography.Get("house-rule"));
}
