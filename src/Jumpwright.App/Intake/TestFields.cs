using System.Collections.Immutable;
using Jumpwright.Athletes;

namespace Jumpwright.App.Intake;

/// <summary>Which tests a page asks for, in which order, and how its fields are named.</summary>
internal static class TestFields
{
    /// <summary>How many loads of a lift one form takes: two and more make a line.</summary>
    public const int Sets = 3;

    public const string FlightRate = "flight-rate";
    public const string RunUpSide = "run-up-side";

    /// <summary>Tests with a value alone, or one a side, by the heading they stand under.</summary>
    public static readonly ImmutableArray<(string Heading, ImmutableArray<string> Tests)> Single =
    [
        ("reach", ["standing-reach", "best-touch", "standing-long-jump", FieldTest.FlightFrames]),
        ("leg", ["single-hop", "triple-hop", "crossover-hop", "timed-hop", "heel-raises"]),
        ("faults", ["landing-screen", "single-leg-squat", "tuck-jump"]),
        ("joint", ["knee-to-wall", "knee-flexion", "knee-extension-deficit", FieldTest.Effusion]),
        ("body", ["stature", "sitting-height", "push-off-distance"]),
    ];

    /// <summary>Lifts: what is typed of each set, all under one trial number.</summary>
    public static readonly ImmutableArray<ImmutableArray<string>> Lifts =
    [
        ["squat-load", "squat-reps"],
        ["hex-bar-load", "hex-bar-reps", "hex-bar-velocity"],
    ];

    /// <summary>One approach jump with its run-up, all under one trial number.</summary>
    public static readonly ImmutableArray<string> RunUp =
    [
        "run-up-speed",
        "run-up-touch",
        "run-up-contact",
        "last-step",
        "step-before-last",
    ];

    /// <summary>The name of a field: the test, and the side where it has one.</summary>
    public static string Name(string test, Side side) =>
        side switch
        {
            Side.Left => test + "-left",
            Side.Right => test + "-right",
            _ => test,
        };

    /// <summary>The name of a field of a lift's set, from 1.</summary>
    public static string Name(string test, int set) => $"{test}-{set}";

    /// <summary>The unit a value is typed in before the reader's own units: a tape is read in centimetres.</summary>
    public static string TypedUnit(FieldTest test) =>
        test.Unit == "m" ? "cm"
        : test.Id == FieldTest.FlightFrames ? "frames"
        : test.Unit;

    /// <summary>Whether half of one can't be counted.</summary>
    public static bool IsCount(FieldTest test) => test.Unit is "faults" or "reps" || test.Id == FieldTest.FlightFrames;
}
