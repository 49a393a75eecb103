using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The same body weighs the same before and after. Where two stands of one stay differ by more than sway and a plate's drift
/// explain, somebody or something else carried part of the weight, and nobody can say in which of them.
/// </summary>
internal static class UnlikeStands
{
    /// <summary>A plate's drift and slow force under load change the reading by no more between two stands, N (house rule).</summary>
    private const double MostN = 10;

    /// <summary>No usable plate drifts faster, N/s: beyond it the fit has taken something else for drift (house rule).</summary>
    private const double MostDriftNS = 1.2;

    /// <summary>One that the empty plate itself shows, to within this part of it, may drift so fast, N/s (house rule).</summary>
    private const double MostShownDriftNS = 2.5;

    private const double ShownPart = 0.3;

    private const double Uncertainties = 4;

    /// <summary>What a wrong weight spoils.</summary>
    public static readonly string[] MadeOfWeight =
    [
        MeasureNames.BodyWeight,
        MeasureNames.SystemWeight,
        MeasureNames.JumpHeight,
        MeasureNames.TakeOffVelocity,
        MeasureNames.DropHeight,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.CountermovementDepth,
        MeasureNames.PeakPropulsivePower,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.BrakingDuration,
        MeasureNames.PropulsionDuration,
        MeasureNames.LandingNetImpulse,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
    ];

    /// <summary>What a zero that runs away so fast spoils as well: edges are counted from it.</summary>
    private static readonly string[] MadeOfInstants =
    [
        MeasureNames.ContactTime,
        MeasureNames.FlightTime,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.ReactiveStrengthIndex,
    ];

    public static void Check(MeasureList into, Plate plate, FittedMotion motion, List<QuietStanding> still)
    {
        QuietStanding? least = null;
        QuietStanding? most = null;
        foreach (QuietStanding stand in still)
        {
            least = least is { } l && l.MeanN <= stand.MeanN ? least : stand;
            most = most is { } m && m.MeanN >= stand.MeanN ? most : stand;
        }

        if (least is not { } light || most is not { } heavy)
        {
            return;
        }

        double u = PushMeasures.Quadrature(MeanUncertaintyN(plate, light), MeanUncertaintyN(plate, heavy));
        if (heavy.MeanN - light.MeanN > MostN + (Uncertainties * u))
        {
            bool lightFirst = light.Samples.From < heavy.Samples.From;
            into.Doubt(
                Cautions.WeightsDiffer(lightFirst ? light.MeanN : heavy.MeanN, lightFirst ? heavy.MeanN : light.MeanN),
                MadeOfWeight
            );
        }
        else if (
            Math.Abs(motion.DriftNS) is var drift
            && drift > (plate.Empty.DriftUncertaintyNS < ShownPart * drift ? MostShownDriftNS : MostDriftNS)
        )
        {
            into.Doubt(Cautions.DriftBeyondPlates(motion.DriftNS), MadeOfWeight);
        }
    }

    /// <summary>
    /// Names the times of a series of hops doubtful where the zero runs away through it: a single flight is read against the zero of its
    /// own edges, but by the end of a series these may be out of sight.
    /// </summary>
    public static void CheckTimes(MeasureList into, Plate plate, FittedMotion motion)
    {
        // The empty plate itself must show it, for a lean looks like a drift to the fit.
        if (
            Math.Abs(motion.DriftNS) > MostShownDriftNS
            && Math.Abs(plate.Empty.DriftNS) > Math.Max(MostShownDriftNS, 2 * plate.Empty.DriftUncertaintyNS)
        )
        {
            into.Doubt(Cautions.Drift(motion.DriftNS), MadeOfInstants);
        }
    }

    /// <summary>Sway turns about once a second, so that many of its readings are worth one (house estimate).</summary>
    private static double MeanUncertaintyN(Plate plate, QuietStanding stand) =>
        stand.SwayN / Math.Sqrt(Math.Max(stand.Samples.Length / plate.RateHz, 1));
}
