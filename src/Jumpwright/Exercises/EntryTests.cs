using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Exercises;

/// <summary>All tests that an entry criterion may name. A criterion that names none of these cannot be measured.</summary>
public static class EntryTests
{
    private static readonly ImmutableDictionary<string, EntryTest> ById = new EntryTest[]
    {
        Measured(MeasureNames.JumpHeight, "m", $"jumps on a force plate"),
        Measured(MeasureNames.JumpHeightFlightTime, "m", $"jumps on a mat, in a light gate or before a camera"),
        Measured(MeasureNames.TakeOffVelocity, "m/s", $"jumps on a force plate"),
        Measured(MeasureNames.FlightTime, "s", $"jumps on any device"),
        Measured(MeasureNames.ContactTime, "s", $"contacts on a plate, a mat or before a camera"),
        Measured(MeasureNames.ReactiveStrengthIndex, "m/s", $"rebounds on a plate, a mat or before a camera"),
        Measured(MeasureNames.ReactiveStrengthIndexModified, "m/s", $"countermovement jumps on a force plate"),
        Measured(MeasureNames.CountermovementDepth, "m", $"countermovement jumps on a force plate"),
        Measured(MeasureNames.PeakLandingForce, "N", $"landings on a force plate"),
        Measured(MeasureNames.TimeToStabilisation, "s", $"landings held still on a force plate"),
        Measured(MeasureNames.VerticalStiffness, "N/m", $"hops on a force plate"),
        Measured(MeasureNames.VerticalStiffnessTimeModel, "N/m", $"hops on a mat or before a camera"),
        Measured(MeasureNames.AsymmetryPropulsiveImpulse, "%", $"jumps on two force plates"),
        // Everard: SEM 1.0 point for one rating, within and between raters.
        Screen(
            "landing-screen",
            "faults",
            count: true,
            sides: false,
            1.0,
            "everard-less",
            $"the landing screen (a low box, a phone, five minutes)",
            "low-drop-landing"
        ),
        Screen(
            "heel-raises",
            "reps",
            count: true,
            sides: true,
            2.0,
            "house-rule",
            $"single-leg heel raises, each side",
            exhausts: Tissue.Achilles
        ),
        Screen(
            "knee-to-wall",
            "m",
            count: false,
            sides: true,
            0.01,
            "house-rule",
            $"knee to wall with a tape, each side"
        ),
        Screen(
            "single-hop",
            "m",
            count: false,
            sides: true,
            0.05,
            "house-rule",
            $"single hop with a tape, each side",
            "single-leg-forward-hop"
        ),
        Screen(
            "standing-long-jump",
            "m",
            count: false,
            sides: false,
            0.05,
            "house-rule",
            $"standing long jump with a tape",
            "standing-long-jump"
        ),
        Screen(
            "squat-load",
            "kg",
            count: false,
            sides: false,
            2.5,
            "house-rule",
            $"the squat test in the weights room",
            "hex-bar-pull"
        ),
        Screen(
            "hex-bar-load",
            "kg",
            count: false,
            sides: false,
            2.5,
            "house-rule",
            $"the hex-bar test in the weights room",
            "hex-bar-pull"
        ),
    }.ToImmutableDictionary(t => t.Id, StringComparer.Ordinal);

    /// <summary>All tests, by id in ordinal order.</summary>
    public static ImmutableArray<EntryTest> All { get; } = [.. ById.Values.OrderBy(t => t.Id, StringComparer.Ordinal)];

    /// <summary>The test of that id, or null.</summary>
    public static EntryTest? Find(string id) => ById.GetValueOrDefault(id);

    private static EntryTest Measured(string id, string unit, Sentence how) =>
        new(id, unit, IsMeasure: true, IsCount: false, HasSides: false, 0, "house-rule", how);

    private static EntryTest Screen(
        string id,
        string unit,
        bool count,
        bool sides,
        double sd,
        string source,
        Sentence how,
        string? exercise = null,
        Tissue? exhausts = null
    ) => new(id, unit, IsMeasure: false, count, sides, sd, source, how, exercise) { Exhausts = exhausts };
}
