using System.Collections.Immutable;
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
    internal static IEnumerable<ReportSection> Of(AthleteCurves curves, PlotUnits units)
    {
        var lacking = new List<Sentence>();
        var notMeasured = new List<Sentence>();
        foreach (Func<AthleteCurves, PlotUnits, Outcome<ReportSection>> make in Makers)
        {
            if (make(curves, units).TryGet(out ReportSection? section, out Refusal? refusal))
            {
                yield return section;
            }
            else if (refusal.Brief is { } brief)
            {
                notMeasured.Add(brief);
            }
            else
            {
                lacking.Add(refusal.Said);
            }
        }

        if (notMeasured.Count > 0)
        {
            lacking.Add($"Nothing was measured for these: {Sentence.Join("; ", notMeasured.Distinct())}.");
        }

        if (lacking.Count > 0)
        {
            yield return Section($"Curves that can't be drawn yet", lacking.Distinct());
        }
    }

    private static readonly Func<AthleteCurves, PlotUnits, Outcome<ReportSection>>[] Makers =
    [
        Drops,
        Loads,
        (c, units) => c.Pulls.Then<ReportSection>(pulls => Pulls(c, pulls, units)),
        (c, _) => c.ForceVelocity.Then<ReportSection>(profile => Section($"Force and velocity", Words(profile))),
        (c, units) => c.RunUp.Then<ReportSection>(run => RunUps(c, run, units)),
        (c, _) => c.Landing.Then<ReportSection>(landing => Section($"Landing force", Words(landing))),
    ];

    private static ReportSection Section(Sentence heading, IEnumerable<Sentence> words, params ReportPlot[] plots) =>
        new(ReportTopic.Curves, heading, [.. words.Select(w => new ReportParagraph(w))], [.. plots]);

    /// <summary>Why a plan may step from lower than the curve says.</summary>
    private static Sentence OfAnotherExercise =>
        $"That is the height their jumps speak for. A plan steps from lower where a limit or the ladder says so, or where the exercise planned is a low drop with a range of its own.";

    private static Outcome<ReportSection> Drops(AthleteCurves curves, PlotUnits units) =>
        curves.Drops.Then<ReportSection>(curve =>
            Section(
                $"{Sentence.Of($"drop height"):capital}",
                curve.AllTooSlow ? Words(curve) : Words(curve).Insert(1, OfAnotherExercise),
                new ReportPlot(
                    "drop-height",
                    $"Reactive strength over drop height",
                    $"Height stepped from ({new UnitName(units.LengthName)}); band: 95 %",
                    $"Index (m/s)",
                    [.. curve.Curve.Where(s => s.X > 0).Select(s => s with { X = units.Length * s.X })],
                    [.. curves.DropTrials.Select(t => (units.Length * t.DropM, t.Index))],
                    [],
                    units.Length * curve.ChosenM,
                    $"train from {new Length(curve.ChosenM):0 cm}",
                    curve.Answer
                )
            )
        );

    private static Outcome<ReportSection> Loads(AthleteCurves curves, PlotUnits units)
    {
        if (!curves.LoadSpeed.TryGet(out LoadCurve? speed, out Refusal? refusal))
        {
            return refusal;
        }

        LoadCurve? height = curves.LoadHeight.TryGet(out LoadCurve? h, out _) ? h : null;
        LoadCurve? power = curves.LoadPower.TryGet(out LoadCurve? p, out Refusal? noPower) ? p : null;
        return Section(
            $"{Sentence.Of($"load of a jump"):capital}",
            [
                $"Take-off velocity: {speed.Sentence}",
                .. height is null ? (Sentence[])[] : [$"The same as heights: {height.Sentence}"],
                power?.Sentence ?? noPower!.Said,
                .. Rest(speed),
            ],
            [
                Plot(
                    "load-velocity-at-take-off",
                    $"Take-off velocity over load",
                    $"Velocity (m/s)",
                    speed,
                    1,
                    curves.Loaded!.Speeds,
                    units
                ),
                .. power is null
                    ? (ReportPlot[])[]
                    :
                    [
                        Plot(
                            "load-power",
                            $"Peak power over load",
                            $"Power (W)",
                            power,
                            1,
                            curves.Loaded.Powers,
                            units
                        ),
                    ],
                .. height is null
                    ? (ReportPlot[])[]
                    :
                    [
                        Plot(
                            "load-height",
                            $"Jump height over load",
                            $"Height ({new UnitName(units.LengthName)})",
                            height,
                            units.Length,
                            curves.Loaded.Heights,
                            units
                        ),
                    ],
            ]
        );
    }

    private static ReportPlot Plot(
        string name,
        Sentence title,
        Sentence y,
        LoadCurve curve,
        double scale,
        ImmutableArray<LoadedJump> jumps,
        PlotUnits units
    ) =>
        new(
            name,
            title,
            $"Load, bar included ({new UnitName(units.MassName)}); band: 95 %",
            y,
            Scaled(curve.Curve, units.Mass, scale),
            [.. jumps.Select(j => (units.Mass * j.LoadKg, scale * j.Value))],
            [],
            units.Mass * curve.FromKg,
            $"{new Mass(curve.FromKg):0.# (kg)} to {new Mass(curve.ToKg):0.# kg}",
            curve.Answer
        )
        {
            MarkedTo = units.Mass * curve.ToKg,
        };

    private static ReportSection Pulls(AthleteCurves curves, LoadVelocity pulls, PlotUnits units)
    {
        Measure maximum = pulls.Value("estimated_maximum_kg");
        ImmutableArray<CurveSample> line =
        [
            .. Enumerable
                .Range(0, 31)
                .Select(i => 0.3 * maximum.Value + (0.75 * maximum.Value * i / 30))
                .Select(x =>
                {
                    (double v, double sd) = (pulls.Line.At(x), pulls.Line.UncertaintyAt(x));
                    return new CurveSample(x, v, v - (1.96 * sd), v + (1.96 * sd));
                }),
        ];
        return Section(
            $"Heavy hex-bar pull",
            Words(pulls),
            new ReportPlot(
                "pull-velocity",
                $"Mean velocity of the pull over load",
                $"Load ({new UnitName(units.MassName)}); band: 95 %; dashed: estimated maximum",
                $"Velocity (m/s)",
                Scaled(line, units.Mass, 1),
                [.. curves.PullTrials.Select(l => (units.Mass * l.LoadKg, l.Value))],
                [],
                units.Mass * maximum.Value,
                $"{new Mass(maximum.Value):0 (kg)} ± {new Mass(maximum.StandardUncertainty):0 kg}",
                pulls.Answer
            )
        );
    }

    private static ReportSection RunUps(AthleteCurves curves, RunUp run, PlotUnits units) =>
        Section(
            $"{Sentence.Of($"run-up"):capital}",
            [.. Words(run), .. curves.Approach.TryGet(out ApproachJumps? jumps, out _) ? jumps.Remarks : []],
            [
                .. new[] { run.TwoFeet, run.OneFoot }
                    .OfType<RunUpCurve>()
                    .Select(c => Plot(c, [.. curves.ApproachTrials.Where(t => t.TakeOff == c.TakeOff)], units)),
            ]
        );

    private static ReportPlot Plot(RunUpCurve curve, ImmutableArray<ApproachTrial> trials, PlotUnits units)
    {
        Sentence feet = RunUpCurves.Feet(curve.TakeOff);
        return new(
            curve.TakeOff == TakeOffFoot.TwoFeet ? "run-up-two-feet" : "run-up-one-foot",
            $"Height over run-up speed, off {feet}",
            $"Run-up speed (m/s); band: 95 %",
            $"Height ({new UnitName(units.LengthName)})",
            Scaled(curve.Curve, 1, units.Length),
            [.. trials.Select(t => (t.SpeedMS, units.Length * t.HeightM))],
            [],
            curve.GoodFromMS,
            $"{curve.GoodFromMS:0.0} to {curve.GoodToMS:0.0} m/s",
            $"Off {feet} the best run-up lies between {curve.GoodFromMS:0.0} and {curve.GoodToMS:0.0} m/s, with {new Length(curve.BestHeightM):0.0 (cm)} ± {new Length(curve.BestHeightUncertaintyM):0.0 cm} to be expected."
        )
        {
            MarkedTo = curve.GoodToMS,
        };
    }

    private static ImmutableArray<CurveSample> Scaled(ImmutableArray<CurveSample> curve, double x, double y) =>
        [.. curve.Select(s => new CurveSample(x * s.X, y * s.Mean, y * s.Low, y * s.High))];

    private static ImmutableArray<Sentence> Words(Calculation result) => [result.Answer, .. Rest(result)];

    /// <summary>What is said of a source that is no paper, and else how people cite it.</summary>
    private static Sentence Cited(Source source) =>
        source.Kind switch
        {
            SourceKind.Published => $"{source.Brief}",
            SourceKind.CommonPractice => $"common practice",
            SourceKind.House => $"house rule",
            _ => $"{source.Id.Replace('-', ' ')}",
        };

    private static IEnumerable<Sentence> Rest(Calculation result)
    {
        foreach (Sentence warning in result.Warnings)
        {
            yield return warning;
        }

        if (result.Basis.Dispute is { } dispute)
        {
            yield return $"Disputed: {dispute}";
        }

        yield return $"Sources: {Sentence.Join(", ", result.Basis.Sources.Select(Cited))}.";
    }
}
