using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Athletes;

/// <summary>
/// A test that is typed by hand (screens.csv): its unit, what a single value may be off, and bounds that catch a slip of the
/// pen. The bounds judge nobody.
/// </summary>
/// <param name="Id">As in screens.csv.</param>
/// <param name="Unit">Its unit; frames counted by eye carry their rate, as in <c>frames@240</c>.</param>
/// <param name="Least">Least value that is believed (house rule).</param>
/// <param name="Most">Greatest value that is believed (house rule).</param>
/// <param name="StandardUncertainty">Of one value, in the unit; NaN where the value's own unit gives it.</param>
/// <param name="Source">Where that comes from: an id of the bibliography.</param>
/// <param name="Sided">Left and right are two tests: without a side the value says nothing.</param>
/// <param name="What">What is written down, in a few words.</param>
public sealed record FieldTest(
    string Id,
    string Unit,
    double Least,
    double Most,
    double StandardUncertainty,
    string Source,
    bool Sided,
    string What
)
{
    /// <summary>Frames of the flight counted by eye in a video.</summary>
    public const string FlightFrames = "flight-frames";

    /// <summary>Fluid in the knee by the stroke test.</summary>
    public const string Effusion = "knee-effusion";

    /// <summary>From this grade on (1+) an effusion counts as a swelling.</summary>
    public const double SwollenFrom = 1;

    private const string FramesAt = "frames@";

    /// <summary>No jump is higher (contracts §1), m.</summary>
    private const double MostHeightM = 1.2;

    /// <summary>The grades of the stroke test as a clinician writes them. A bare 1, 2 or 3 could be either scale and is none.</summary>
    public static readonly ImmutableArray<(string Written, double Grade)> EffusionGrades =
    [
        ("0", 0),
        ("trace", 0.5),
        ("1+", 1),
        ("2+", 2),
        ("3+", 3),
    ];

    public static readonly ImmutableArray<FieldTest> All =
    [
        new("landing-screen", "faults", 0, 30, 1.0, "everard-less", false, "faults of a jump landing; fewer is better"),
        new("single-leg-squat", "faults", 0, 5, 1.0, "house-rule", true, "of five faults (below), those seen"),
        new("tuck-jump", "faults", 0, 10, 1.0, "read-2016", false, "of ten faults in 10 s (below), those seen"),
        new("standing-reach", "m", 1.0, 3.5, 0.015, "house-rule", false, "height of the hand, feet flat"),
        new("best-touch", "m", 1.2, 4.5, 0.015, "house-rule", false, "highest touch of a jump"),
        new("standing-long-jump", "m", 0.2, 4.0, 0.05, "house-rule", false, "toe to heel, two feet"),
        new("single-hop", "m", 0.1, 3.5, 0.05, "house-rule", true, "one hop for distance, held"),
        new("triple-hop", "m", 0.5, 10.5, 0.10, "house-rule", true, "three hops on one leg for distance"),
        new("crossover-hop", "m", 0.5, 10.5, 0.10, "house-rule", true, "three hops across a line for distance"),
        new("timed-hop", "s", 0.8, 15, 0.10, "house-rule", true, "6 m on one leg, hand stopwatch; less is better"),
        new(
            FlightFrames,
            "frames@240",
            1,
            5000,
            double.NaN,
            "house-rule",
            false,
            "frames from take-off to touch-down, and the capture rate"
        ),
        new("knee-to-wall", "m", 0, 0.3, 0.01, "house-rule", true, "toe to wall, knee touching it, heel down"),
        new("heel-raises", "reps", 0, 300, 2, "house-rule", true, "single-leg heel raises to fatigue"),
        new("squat-load", "kg", 0, 600, 2.5, "house-rule", false, "load of a squat"),
        new("squat-reps", "reps", 1, 50, 1, "house-rule", false, "repetitions with that load, same trial number"),
        new("hex-bar-load", "kg", 0, 600, 2.5, "house-rule", false, "load of a hex-bar pull"),
        new("hex-bar-reps", "reps", 1, 50, 1, "house-rule", false, "repetitions with that load, same trial number"),
        new(
            "hex-bar-velocity",
            "m/s",
            0.05,
            3,
            0.03,
            "house-rule",
            false,
            "mean velocity of that pull's upward phase, same trial number"
        ),
        new(
            "push-off-distance",
            "m",
            0.15,
            0.8,
            0.01,
            "house-rule",
            false,
            "leg to the toes, foot pointed, less the height of the hip at the start of a squat jump"
        ),
        new(
            "run-up-speed",
            "m/s",
            0.3,
            11,
            0.05,
            "house-rule",
            false,
            "speed of the last metres before take-off; side says the take-off: both, left or right"
        ),
        new("run-up-touch", "m", 1.2, 4.5, 0.015, "house-rule", false, "highest touch of that approach jump"),
        new("run-up-contact", "s", 0.05, 1, 0.005, "house-rule", false, "take-off contact of that approach jump"),
        new("last-step", "m", 0.2, 4, 0.05, "house-rule", false, "length of the last step of that run-up"),
        new("step-before-last", "m", 0.2, 4, 0.05, "house-rule", false, "length of the step before it"),
        new(Effusion, "grade", 0, 3, 0.5, "house-rule", true, "stroke test: 0, trace, 1+, 2+ or 3+"),
        new("knee-flexion", "deg", 0, 170, 3, "house-rule", true, "greatest bend of the knee, by goniometer"),
        new(
            "knee-extension-deficit",
            "deg",
            -20,
            60,
            2,
            "house-rule",
            true,
            "what is missing to a straight knee; negative where it bends beyond"
        ),
        new("stature", "m", 0.8, 2.6, 0.005, "house-rule", false, "standing height, barefoot"),
        new("sitting-height", "m", 0.4, 1.4, 0.01, "house-rule", false, "seat to crown"),
    ];

    /// <summary>The test of that id, or null.</summary>
    public static FieldTest? Find(string? id) => All.FirstOrDefault(t => t.Id == id);

    /// <summary>The capture rate in <c>frames@240</c>, frames a second from 20 to 5000; null where the unit says none.</summary>
    public static double? FramesPerSecond(string? unit) =>
        unit is not null
        && unit.StartsWith(FramesAt, StringComparison.OrdinalIgnoreCase)
        && double.TryParse(
            unit.AsSpan(FramesAt.Length),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out double rate
        )
        && rate is >= 20 and <= 5000
            ? rate
            : null;

    /// <summary>Why counted frames can't be believed, or null.</summary>
    public static string? FramesFault(double frames, double framesPerSecond)
    {
        double heightM = Flight.HeightFromTimeM(frames / framesPerSecond);
        return heightM > MostHeightM
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{frames:0.#} frames at {framesPerSecond:0.#} a second would be a jump of {heightM:0.0} m: check that it is the capture rate, not the playback rate"
            )
            : null;
    }

    /// <summary>
    /// What a result measures, with its doubt. Frames give flight time and flight-time height; the standard uncertainty of an
    /// interval counted in frames is that of two roundings to a frame, 1 / (√6 · frames a second) (contracts §1).
    /// </summary>
    public static ImmutableArray<Measure> MeasuresOf(ScreenResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Test == FlightFrames)
        {
            if (FramesPerSecond(result.Unit) is not { } rate || FramesFault(result.Value, rate) is not null)
            {
                return [];
            }

            double seconds = result.Value / rate;
            double u = 1 / (Math.Sqrt(6) * rate);
            return
            [
                new Measure("flight_time_s", seconds, Quantities.Unit.Second, u, "frames counted by eye"),
                new Measure(
                    "jump_height_flight_time_m",
                    Flight.HeightFromTimeM(seconds),
                    Quantities.Unit.Metre,
                    Flight.HeightResolutionM(seconds, u),
                    "flight-time, frames counted by eye"
                ),
            ];
        }

        return Find(result.Test) is { } test && result.Unit == test.Unit
            ? [new Measure(test.Id, result.Value, new Unit(test.Unit), test.StandardUncertainty, "by hand")]
            : [];
    }
}
