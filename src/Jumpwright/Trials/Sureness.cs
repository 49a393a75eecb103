namespace Jumpwright.Trials;

/// <summary>
/// When a value is too unsure to be decided from: where it may well be off by what separates one height, or one contact, from
/// the next. Of a height by impulse all that is believed of the motion is asked how likely that is; of a time, 3.3 standard
/// uncertainties must not reach the step (house rules).
/// </summary>
internal static class Sureness
{
    /// <summary>A centimetre of height.</summary>
    public const double HeightM = 0.010;

    /// <summary>Ten milliseconds of contact.</summary>
    public const double ContactS = 0.010;

    /// <summary>A height or a contact more likely off by such a step is not decided from (house rule, held by validation).</summary>
    private const double LeastLikely = 0.01;

    private const double Uncertainties = 3.3;

    /// <summary>An interval between two frames is off by one of them at most: √6 of its standard uncertainties.</summary>
    private const double FrameReach = 2.45;

    /// <summary>Names a height by impulse doubtful where it may well be off by a centimetre.</summary>
    public static void OfHeight(MeasureList list, string name, FittedMotion motion, Instant instant)
    {
        double perVelocity = Math.Abs(motion.VelocityAt(instant.Sample)) / Quantities.Gravity.MetresPerSecondSquared;
        if (
            list.Find(name) is { } height
            && (
                Uncertainties * height.StandardUncertainty > HeightM
                || PushMeasures.VelocityBeyond(motion, instant, HeightM / Math.Max(perVelocity, 1e-6)) > LeastLikely
            )
        )
        {
            list.Doubt(Cautions.HeightUnsure(2 * height.StandardUncertainty), name);
        }
    }

    /// <summary>Names a contact time doubtful where it is not known to ten milliseconds.</summary>
    public static void OfContact(MeasureList list)
    {
        if (
            list.Find(MeasureNames.ContactTime) is { } contact
            && Uncertainties * contact.StandardUncertainty > ContactS
        )
        {
            list.Doubt(Cautions.ContactUnsure(2 * contact.StandardUncertainty), MeasureNames.ContactTime);
        }
    }

    /// <summary>
    /// Names the means of hops doubtful where they are not known to a centimetre of height and ten milliseconds of contact: hops of one
    /// index may differ in both, and a breath decides which of them count.
    /// </summary>
    public static void OfHops(MeasureList list)
    {
        if (
            list.Find(MeasureNames.JumpHeightFlightTime) is { } height
            && list.Find(MeasureNames.ContactTime) is { } contact
            && (
                Uncertainties * height.StandardUncertainty > HeightM
                || Uncertainties * contact.StandardUncertainty > ContactS
            )
        )
        {
            list.Doubt(
                Cautions.HopsAlike(2 * height.StandardUncertainty, 2 * contact.StandardUncertainty),
                MeasureNames.ContactTime,
                MeasureNames.FlightTime,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.VerticalStiffnessTimeModel
            );
        }
    }

    /// <summary>Names what a timer counts too coarsely for a centimetre of height or ten milliseconds of contact.</summary>
    public static void OfTimer(MeasureList list)
    {
        if (
            list.Find(MeasureNames.JumpHeightFlightTime) is { } height
            && FrameReach * height.StandardUncertainty > HeightM
        )
        {
            list.Doubt(Cautions.CoarseHeight(2 * height.StandardUncertainty), height.Name);
        }

        if (list.Find(MeasureNames.ContactTime) is { } contact && FrameReach * contact.StandardUncertainty > ContactS)
        {
            list.Doubt(Cautions.CoarseContact(2 * contact.StandardUncertainty), contact.Name);
        }
    }

    /// <summary>Nobody's push out of a held squat takes longer, and no countermovement jump, s (house rule).</summary>
    private const double LongestSquatPushS = 1.2;

    private const double LongestJumpS = 2.0;

    /// <summary>An onset no surer than this says nothing of how fast somebody is, s.</summary>
    private const double OnsetS = 0.05;

    /// <summary>Names what rests on an onset doubtful where that is unsure, or so early that it belongs to something else.</summary>
    public static void OfOnset(MeasureList list, bool squat)
    {
        if (
            list.Find(MeasureNames.TimeToTakeOff) is { } time
            && (time.StandardUncertainty > OnsetS || time.Value > (squat ? LongestSquatPushS : LongestJumpS))
        )
        {
            if (squat)
            {
                list.Doubt(Cautions.OnsetUnsure, MeasureNames.UnwantedDip);
                OnsetAfterDip(list);
            }
            else
            {
                list.Doubt(
                    Cautions.OnsetUnsure,
                    MeasureNames.TimeToTakeOff,
                    MeasureNames.ReactiveStrengthIndexModified
                );
            }
        }
    }

    /// <summary>Names what rests on the onset of a squat jump, which came after a dip, or nobody knows where.</summary>
    public static void OnsetAfterDip(MeasureList list) =>
        list.Doubt(
            Cautions.OnsetUnsure,
            MeasureNames.TimeToTakeOff,
            MeasureNames.ReactiveStrengthIndexModified,
            MeasureNames.PropulsionDuration,
            MeasureNames.MeanPropulsivePower
        );
}
