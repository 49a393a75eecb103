using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Athletes.Tested;
using Jumpwright.Calculators;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Landings;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Reports;

/// <summary>How high, how heavy, how fast: a section for each curve that could be drawn, and one that says what the rest lacks.</summary>
internal static class CurveSections
{
    internal static IEnumerable<ReportSection> Of(AthleteCurves curves)
    {
        var lacking = new List<string>();
        var notMeasured = new List<string>();
        foreach (Func<AthleteCurves, Outcome<ReportSection>> make in Makers)
        {
            if (make(curves).TryGet(out ReportSection? section, out Refusal? refusal))
            {
                yield return section;
            }
            else if (refusal.Brief is { } brief)
            {
                notMeasured.Add(brief);
            }
            else
            {
                lacking.Add(refusal.Sentence);
            }
        }

        if (notMeasured.Count > 0)
        {
            lacking.Add($"Nothing was measured for these: {string.Join("; ", notMeasured.Distinct())}.");
        }

        if (lacking.Count > 0)
        {
            yield return new ReportSection("Curves that can't be drawn yet", [.. lacking.Distinct()], []);
        }
    }

    private static readonly Func<AthleteCurves, Outcome<ReportSection>>[] Makers =
    [
        Drops,
        Loads,
        c => c.Pulls.Then<ReportSection>(pulls => Pulls(c, pulls)),
        c =>
            c.ForceVelocity.Then<ReportSection>(profile => new ReportSection("Force and velocity", Words(profile), [])),
        c => c.RunUp.Then<ReportSection>(run => RunUps(c, run)),
        c => c.Landing.Then<ReportSection>(landing => new ReportSection("Landing force", Words(landing), [])),
    ];

    /// <summary>Why a plan may step from lower than the curve says.</summary>
    private const string OfAnotherExercise =
        "That is the height their jumps speak for. A plan steps from lower where a limit or the ladder says so, or where the exercise planned is a low drop with a range of its own.";

    private static Outcome<ReportSection> Drops(AthleteCurves curves) =>
        curves.Drops.Then<ReportSection>(curve => new ReportSection(
            "Drop height",
            curve.AllTooSlow ? Words(curve) : Words(curve).Insert(1, OfAnotherExercise),
            [
                new(
                    "drop-height",
                    "Reactive strength over drop height",
                    "Height stepped from (cm); band: 95 %",
                    "Index (m/s)",
                    [.. curve.Curve.Where(s => s.X > 0).Select(s => s with { X = 100 * s.X })],
                    [.. curves.DropTrials.Select(t => (100 * t.DropM, t.Index))],
                    [],
                    100 * curve.ChosenM,
                    $"train from {100 * curve.ChosenM:0} cm",
                    Answer(curve)
                ),
            ]
        ));

    private static Outcome<ReportSection> Loads(AthleteCurves curves)
    {
        if (!curves.LoadSpeed.TryGet(out LoadCurve? speed, out Refusal? refusal))
        {
            return refusal;
        }

        LoadCurve? height = curves.LoadHeight.TryGet(out LoadCurve? h, out _) ? h : null;
        LoadCurve? power = curves.LoadPower.TryGet(out LoadCurve? p, out Refusal? noPower) ? p : null;
        return new ReportSection(
            "Load of a jump",
            [
                $"Take-off velocity: {speed.Sentence}",
                .. height is null ? (string[])[] : [$"The same as heights: {height.Sentence}"],
                power?.Sentence ?? noPower!.Sentence,
                .. Rest(speed),
            ],
            [
                Plot(
                    "load-velocity-at-take-off",
                    "Take-off velocity over load",
                    "Velocity (m/s)",
                    speed,
                    1,
                    curves.Loaded!.Speeds
                ),
                .. power is null
                    ? (ReportPlot[])[]
                    : [Plot("load-power", "Peak power over load", "Power (W)", power, 1, curves.Loaded.Powers)],
                .. height is null
                    ? (ReportPlot[])[]
                    : [Plot("load-height", "Jump height over load", "Height (cm)", height, 100, curves.Loaded.Heights)],
            ]
        );
    }

    private static ReportPlot Plot(
        string name,
        string title,
        string y,
        LoadCurve curve,
        double scale,
        ImmutableArray<LoadedJump> jumps
    ) =>
        new(
            name,
            title,
            "Load, bar included (kg); band: 95 %",
            y,
            Scaled(curve.Curve, scale),
            [.. jumps.Select(j => (j.LoadKg, scale * j.Value))],
            [],
            curve.FromKg,
            $"{curve.FromKg:0.#} to {curve.ToKg:0.#} kg",
            Answer(curve)
        )
        {
            MarkedTo = curve.ToKg,
        };

    private static ReportSection Pulls(AthleteCurves curves, LoadVelocity pulls)
    {
        Measure maximum = pulls.Value("estimated_maximum_kg");
        return new ReportSection(
            "Heavy hex-bar pull",
            Words(pulls),
            [
                new(
                    "pull-velocity",
                    "Mean velocity of the pull over load",
                    "Load (kg); band: 95 %; dashed: estimated maximum",
                    "Velocity (m/s)",
                    [
                        .. Enumerable
                            .Range(0, 31)
                            .Select(i => 0.3 * maximum.Value + (0.75 * maximum.Value * i / 30))
                            .Select(x =>
                            {
                                (double v, double sd) = (pulls.Line.At(x), pulls.Line.UncertaintyAt(x));
                                return new CurveSample(x, v, v - (1.96 * sd), v + (1.96 * sd));
                            }),
                    ],
                    [.. curves.PullTrials.Select(l => (l.LoadKg, l.Value))],
                    [],
                    maximum.Value,
                    $"{maximum.Value:0} ± {maximum.StandardUncertainty:0} kg",
                    Answer(pulls)
                ),
            ]
        );
    }

    private static ReportSection RunUps(AthleteCurves curves, RunUp run) =>
        new(
            "Run-up",
            [.. Words(run), .. curves.Approach.TryGet(out ApproachJumps? jumps, out _) ? jumps.Remarks : []],
            [
                .. new[] { run.TwoFeet, run.OneFoot }
                    .OfType<RunUpCurve>()
                    .Select(c => Plot(c, [.. curves.ApproachTrials.Where(t => t.TakeOff == c.TakeOff)])),
            ]
        );

    private static ReportPlot Plot(RunUpCurve curve, ImmutableArray<ApproachTrial> trials)
    {
        string feet = curve.TakeOff == TakeOffFoot.TwoFeet ? "two feet" : "one foot";
        return new(
            $"run-up-{feet.Replace(' ', '-')}",
            $"Height over run-up speed, off {feet}",
            "Run-up speed (m/s); band: 95 %",
            "Height (cm)",
            Scaled(curve.Curve, 100),
            [.. trials.Select(t => (t.SpeedMS, 100 * t.HeightM))],
            [],
            curve.GoodFromMS,
            $"{curve.GoodFromMS:0.0} to {curve.GoodToMS:0.0} m/s",
            $"Off {feet} the best run-up lies between {curve.GoodFromMS:0.0} and {curve.GoodToMS:0.0} m/s, with {100 * curve.BestHeightM:0.0} ± {100 * curve.BestHeightUncertaintyM:0.0} cm to be expected."
        )
        {
            MarkedTo = curve.GoodToMS,
        };
    }

    private static ImmutableArray<CurveSample> Scaled(ImmutableArray<CurveSample> curve, double scale) =>
        [.. curve.Select(s => new CurveSample(s.X, scale * s.Mean, scale * s.Low, scale * s.High))];

    private static ImmutableArray<string> Words(Calculation result) => [Answer(result), .. Rest(result)];

    /// <summary>As people cite it in a line: who, and the year where it is known, or what kind of rule it is.</summary>
    private static string Short(Source source)
    {
        string[] words = source.Id.Split('-');
        if (source.Kind != SourceKind.Published)
        {
            return string.Join(' ', words);
        }

        // An id begins with its first author, or else with a word for a paper whose text begins with the journal.
        string[] opening = source.Text.Split(' ', 4);
        string who = opening.Take(3).Any(w => w.StartsWith(words[0], StringComparison.OrdinalIgnoreCase))
            ? CultureInfo.InvariantCulture.TextInfo.ToTitleCase(words[0])
            : source.Text.Split([". ", ", "], 2, StringSplitOptions.None)[0];
        string? year = words.FirstOrDefault(w => w is [>= '1' and <= '2', _, _, _] && w.All(char.IsAsciiDigit));
        return year is null || who.Contains(year, StringComparison.Ordinal) ? who : $"{who} {year}";
    }

    /// <summary>The answer without the test that it would wish for: which test is offered, the gate says further down.</summary>
    private static string Answer(Calculation result) =>
        result.NextTest is { } test
            ? result.Sentence.Replace(" " + test, "", StringComparison.Ordinal)
            : result.Sentence;

    private static IEnumerable<string> Rest(Calculation result)
    {
        foreach (string warning in result.Warnings)
        {
            yield return warning;
        }

        if (result.Basis.Dispute is { } dispute)
        {
            yield return $"Disputed: {dispute}";
        }

        yield return $"Sources: {string.Join(", ", result.Basis.Sources.Select(Short))}.";
    }
}
