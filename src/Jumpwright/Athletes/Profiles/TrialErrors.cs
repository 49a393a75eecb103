using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>
/// How much a measure varies from trial to trial in one athlete, in % of its value: where to start while the athlete's own
/// trials are few. Asymmetry is the exception: in points of its own %.
/// </summary>
internal static class TrialErrors
{
    /// <summary>How many degrees of freedom the published value counts for.</summary>
    internal static readonly Coefficient PriorDegreesOfFreedom = new(
        "trial-error-prior-degrees-of-freedom",
        8,
        Unit.One,
        null,
        Bibliography.Get("house-rule")
    );

    private static readonly Coefficient Unlisted = Percent("trial-error-unlisted", 10, "house-rule");

    private static readonly ImmutableDictionary<(string Measure, JumpTask Task), Coefficient> Listed =
        ImmutableDictionary.CreateRange<(string, JumpTask), Coefficient>([
            new(
                (MeasureNames.JumpHeight, JumpTask.CountermovementJump),
                Percent("cmj-height", 5.8, "cmj-reliability-2020")
            ),
            new(
                (MeasureNames.JumpHeightFlightTime, JumpTask.CountermovementJump),
                Percent("cmj-height-flight", 5.8, "cmj-reliability-2020")
            ),
            new((MeasureNames.JumpHeight, JumpTask.SquatJump), Percent("squat-jump-height", 4.6, "markovic-2004")),
            new(
                (MeasureNames.JumpHeightFlightTime, JumpTask.SquatJump),
                Percent("squat-jump-height-flight", 4.6, "markovic-2004")
            ),
            new(
                (MeasureNames.ReactiveStrengthIndex, JumpTask.DropJump),
                Percent("drop-jump-rsi", 11.2, "stratford-2021")
            ),
            new(
                (MeasureNames.ReactiveStrengthIndex, JumpTask.RepeatedHops),
                Percent("hops-rsi", 6.3, "stratford-2021")
            ),
            new(
                (MeasureNames.ReactiveStrengthIndexModified, JumpTask.CountermovementJump),
                Percent("rsi-modified", 9.3, "suchomel-2015")
            ),
            new(
                (MeasureNames.PeakForce, JumpTask.CountermovementJump),
                Percent("cmj-peak-force", 2.5, "cmj-reliability-2020")
            ),
        ]);

    private static readonly Coefficient AsymmetryPoints = new(
        "trial-error-asymmetry-points",
        2.5,
        Unit.Percent,
        null,
        Bibliography.Get("house-rule")
    );

    /// <summary>People weigh the same from trial to trial; half a percent covers clothes and where they stand.</summary>
    private static readonly Coefficient Weight = Percent("weight", 0.5, "house-rule");

    /// <summary>Flight time of countermovement jumps, 1.88 % in one group of players.</summary>
    private static readonly Coefficient Flight = Percent("flight-time", 1.88, "cormack-2008");

    /// <summary>The SD to start from, in the measure's own unit.</summary>
    internal static double StartingSd(string measure, JumpTask task, double mean) =>
        measure
            is MeasureNames.AsymmetryPropulsiveImpulse
                or MeasureNames.AsymmetryBrakingImpulse
                or MeasureNames.AsymmetryLandingImpulse
            ? AsymmetryPoints.Value
        : measure is MeasureNames.HopsFound or MeasureNames.HopsCounted ? 0
        : Math.Abs(mean) * PercentOf(measure, task) / 100;

    private static double PercentOf(string measure, JumpTask task) =>
        measure switch
        {
            MeasureNames.BodyWeight or MeasureNames.SystemWeight => Weight.Value,
            MeasureNames.FlightTime => Flight.Value,
            // Height is its square over 2 g: half the height's part.
            MeasureNames.TakeOffVelocity => PercentOf(MeasureNames.JumpHeight, task) / 2,
            _ => Listed.GetValueOrDefault((measure, task), Unlisted).Value,
        };

    private static Coefficient Percent(string id, double value, string source) =>
        new("trial-error-" + id, value, Unit.Percent, null, Bibliography.Get(source));
}
