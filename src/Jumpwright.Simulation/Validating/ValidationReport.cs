using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Devices;
using Jumpwright.Trials;

namespace Jumpwright.Simulation.Validating;

/// <summary>What a validation run found. Every number in its text was measured by that run.</summary>
/// <param name="Options">What was run.</param>
/// <param name="CleanCountermovementJumps">Results in order.</param>
/// <param name="CleanDropJumps">Results in order.</param>
/// <param name="CleanOthers">Results of the other tasks, task by task.</param>
/// <param name="Disturbed">Clean jumps and drop jumps whose slow force is no motion.</param>
/// <param name="Timed">Efforts timed by mats and cameras.</param>
/// <param name="Varied">Results of all tasks, task by task.</param>
/// <param name="Spoiled">Results by defect.</param>
public sealed record ValidationReport(
    ValidationOptions Options,
    ImmutableArray<CaseResult> CleanCountermovementJumps,
    ImmutableArray<CaseResult> CleanDropJumps,
    ImmutableArray<CaseResult> CleanOthers,
    ImmutableArray<CaseResult> Disturbed,
    ImmutableArray<CaseResult> Timed,
    ImmutableArray<CaseResult> Varied,
    ImmutableArray<SpoiledResult> Spoiled
)
{
    internal static readonly string[] Order =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.DropHeight,
        MeasureNames.ContactTime,
        MeasureNames.FlightTime,
        MeasureNames.BodyWeight,
        MeasureNames.TakeOffVelocity,
        MeasureNames.ReactiveStrengthIndex,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.TimeToTakeOff,
        MeasureNames.CountermovementDepth,
        MeasureNames.UnwantedDip,
        MeasureNames.PeakPropulsivePower,
        MeasureNames.MeanPropulsivePower,
        MeasureNames.PeakForce,
        MeasureNames.PeakLandingForce,
        MeasureNames.BrakingDuration,
        MeasureNames.PropulsionDuration,
        MeasureNames.VerticalStiffness,
        MeasureNames.VerticalStiffnessTimeModel,
        MeasureNames.TimeToStabilisation,
        MeasureNames.LandingNetImpulse,
        MeasureNames.AsymmetryBrakingImpulse,
        MeasureNames.AsymmetryPropulsiveImpulse,
        MeasureNames.AsymmetryLandingImpulse,
    ];

    /// <summary>Words of the conditions that the table by what was added groups by.</summary>
    private static readonly string[] Added =
    [
        "one plate",
        "slow disturbance",
        "hum",
        "drift",
        "ringing",
        "steps of",
        "first",
        "steps on",
        "ends early",
    ];

    internal static readonly string[] Watched =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.DropHeight,
        MeasureNames.ContactTime,
        MeasureNames.BodyWeight,
    ];

    /// <summary>Errors of one measure over one group, or null where nothing was measured.</summary>
    public static ErrorSummary? Summary(IEnumerable<CaseResult> results, string measure) =>
        ErrorSummary.Of(results, [measure]) is [var only, ..] ? only : null;

    /// <summary>The report as a page.</summary>
    /// <param name="command">The command that makes it, as a person types it.</param>
    public string Markdown(string command = "./jumpwright validate --write docs/validation.md")
    {
        StringBuilder page = new();
        page.Append(
            $"""
            # Validation on simulated recordings

            Made by `{command}`; don't edit it by hand. Seed {Options.Seed}: the same version gives the same page.

            The recordings come from `src/Jumpwright.Simulation`, in which force, velocity and displacement are one motion that was
            solved for, so the truth is exact. Each goes as the bytes of a file through the same doors as a real one. **They are
            simulated: real people do more than a simulator thinks of, and the simulator and the engine are of one house.**

            Error = measured − true. 95 % limits = bias ± 1.96 SD. Coverage = how often the stated value ± 2u held the truth, with
            its 95 % binomial interval (Wilson 1927); u = stated standard uncertainty. Values named doubtful are counted apart and
            stand in no error. A silent failure is a height more than 1 cm off or a contact more than 10 ms off, neither refused nor
            named doubtful.

            Sway is a real motion of the centre of mass (0.3–3 Hz) from which the movement is solved; "slow disturbance" is a force
            of the same colour that no motion explains. A recording can't tell the two apart, so the engine's doubt allows for both:
            it is too wide where people really sway and too narrow where the slow force is the device's, and right over both.
            Noise is white. A height that may well be a centimetre off (a house bound on how likely that is) is named doubtful: above all drop and box jumps
            with little or restless standing.


            """
        );
        Clean(
            page,
            "Clean countermovement jumps",
            CleanCountermovementJumps,
            "1000 Hz, two plates, sway 1–4 N, noise 0.5–2 N, plate zero off by up to ±8 N each; still for 2–3.5 s before and 3–4 s after."
        );
        Clean(
            page,
            "Clean drop jumps",
            CleanDropJumps,
            "The same plates; true drops 0.12–0.60 m, contacts 0.14–0.35 s, a third with an impact peak; the label's box height is drawn at random, so that trusting it fails."
        );
        page.Append(
            "## Clean recordings of the other tasks\n\nThe same plates; a plate that a snap-down never leaves was zeroed to ±4 N.\n\n"
        );
        page.Append("| task | recordings | refused | values doubtful | silent failures |\n|---|---|---|---|---|\n");
        foreach (IGrouping<JumpTask, CaseResult> task in CleanOthers.GroupBy(r => r.Task))
        {
            Counts(page, task.Key.Id(), [.. task]);
        }

        Counts(page, "**all clean**", [.. CleanCountermovementJumps, .. CleanDropJumps, .. CleanOthers]);
        page.Append('\n');
        Groups(page, "task", CleanOthers.GroupBy(r => r.Task.Id()));
        page.Append(
            "## Clean, but the slow force is the plate's\n\nA disturbance of 1–4 N, 0.3–3 Hz, and people who stand perfectly still.\n\n"
        );
        Groups(page, "task", Disturbed.GroupBy(r => r.Task.Id()));
        page.Append(
            "## Timed, without force\n\nA contact mat that counts milliseconds, and a person who steps through a film. The doubt of an interval is 1/(√6 · frames a second).\n\n"
        );
        Groups(page, "device and task", Timed.GroupBy(r => r.Difficulties + ", " + r.Task.Id()));
        page.Append(
            $"""
            ## Varied recordings

            {Options.VariedOfEachTask} of each task, {Varied.Length} in all. Rates 200–2000 Hz, one or two plates, noise 0.5–8 N; half with sway of 0.5–6 N, half with a
            slow disturbance of 0.5–5 N; and each of these in some of them: both at once, hum to 5 N, drift to 6 N, zero off by up to ±25 N a plate, ringing to 60 N, steps of up to 2 N, one foot up to
            30 ms first, stepping on, a bounce after landing, a recording that ends early.

            | task | recordings | refused | values doubtful | silent failures |
            |---|---|---|---|---|

            """
        );
        foreach (IGrouping<JumpTask, CaseResult> task in Varied.GroupBy(r => r.Task))
        {
            Counts(page, task.Key.Id(), [.. task]);
        }

        Counts(page, "**all**", Varied);
        page.Append('\n');
        foreach (IGrouping<JumpTask, CaseResult> task in Varied.GroupBy(r => r.Task))
        {
            page.Append($"### {task.Key.Id()}\n\n");
            Errors(page, ErrorSummary.Of(task, Order));
        }

        Rates(page, Varied);
        page.Append("### By what was added, all tasks\n\n");
        Groups(
            page,
            "with",
            Added
                .SelectMany(a =>
                    Varied.Where(r => r.Difficulties.Contains(a, StringComparison.Ordinal)).Select(r => (a, r))
                )
                .GroupBy(x => x.a, x => x.r)
        );
        Failures(
            page,
            CleanCountermovementJumps.Concat(CleanDropJumps).Concat(CleanOthers).Concat(Disturbed).Concat(Varied)
        );
        page.Append(
            "## Spoiled recordings\n\nHalf countermovement jumps, half drop jumps, clean before they were spoiled.\n\n| defect | what | recordings | refused | silent failures | first sentence |\n|---|---|---|---|---|---|\n"
        );
        foreach (SpoiledResult s in Spoiled)
        {
            page.Append(
                $"| `{s.Defect}` | {s.What} | {s.Count} | {s.Refused} | {s.Silent} | {(s.Sentence ?? "none was refused").Replace("|", "\\|", StringComparison.Ordinal)} |\n"
            );
        }

        return page.ToString();
    }

    internal static void Rates(StringBuilder page, ImmutableArray<CaseResult> results)
    {
        page.Append(
            "### By sampling rate, all tasks\n\n| rate, Hz | measure | n | coverage | median u | 95 % limits |\n|---|---|---|---|---|---|\n"
        );
        foreach (IGrouping<double, CaseResult> rate in results.GroupBy(r => r.RateHz).OrderBy(g => g.Key))
        {
            foreach (ErrorSummary s in ErrorSummary.Of(rate, Watched).Where(s => s.Count > 1))
            {
                page.Append(
                    $"| {rate.Key:0} | `{s.Name}` | {s.Count} | {Coverage(s)} | {Number(s.MedianUncertainty, s.Unit)} | {Number(s.LowerLimit, s.Unit)} to {Number(s.UpperLimit, s.Unit)} {Shown(s.Unit)} |\n"
                );
            }
        }

        page.Append('\n');
    }

    private static void Clean(StringBuilder page, string title, ImmutableArray<CaseResult> results, string how)
    {
        page.Append($"## {title}\n\n{results.Length} recordings. {how}\n\n");
        page.Append("| | recordings | refused | values doubtful | silent failures |\n|---|---|---|---|---|\n");
        Counts(page, "clean", results);
        page.Append('\n');
        Errors(page, ErrorSummary.Of(results, Order));
    }

    internal static void Counts(StringBuilder page, string name, ImmutableArray<CaseResult> results)
    {
        int values = results.Sum(r => r.Values.Length);
        int doubtful = results.Sum(r => r.Values.Count(v => v.Doubtful));
        int refused = results.Count(r => r.Refusal is not null);
        page.Append(
            $"| {name} | {results.Length} | {refused} ({Percent(refused, results.Length)}) | {doubtful} ({Percent(doubtful, values)}) | {results.Count(r => r.SilentFailures().Any())} |\n"
        );
    }

    /// <summary>The watched measures of each group, a line each.</summary>
    internal static void Groups(StringBuilder page, string what, IEnumerable<IGrouping<string, CaseResult>> groups)
    {
        page.Append(
            $"| {what} | recordings | refused | silent | measure | n | doubtful | bias | 95 % limits | coverage of ±2u | median u | unit |\n|---|---|---|---|---|---|---|---|---|---|---|---|\n"
        );
        foreach (IGrouping<string, CaseResult> group in groups)
        {
            string head =
                $"| {group.Key} | {group.Count()} | {group.Count(r => r.Refusal is not null)} | {group.Count(r => r.SilentFailures().Any())} |";
            foreach (ErrorSummary s in ErrorSummary.Of(group, Watched).Where(s => s.Count > 1))
            {
                page.Append(
                    $"{head} `{s.Name}` | {s.Count} | {s.Doubtful} | {Number(s.Bias, s.Unit)} | {Number(s.LowerLimit, s.Unit)} to {Number(s.UpperLimit, s.Unit)} | {Coverage(s)} | {Number(s.MedianUncertainty, s.Unit)} | {Shown(s.Unit)} |\n"
                );
                head = "| | | | |";
            }
        }

        page.Append('\n');
    }

    internal static void Errors(StringBuilder page, IEnumerable<ErrorSummary> summaries)
    {
        page.Append(
            "| measure | n | doubtful | bias | 95 % limits | worst | coverage of ±2u | median u | unit |\n|---|---|---|---|---|---|---|---|---|\n"
        );
        foreach (ErrorSummary s in summaries)
        {
            if (s.Count < 2)
            {
                page.Append($"| `{s.Name}` | {s.Count} | {s.Doubtful} | – | – | – | – | – | {Shown(s.Unit)} |\n");
                continue;
            }

            page.Append(
                $"| `{s.Name}` | {s.Count} | {s.Doubtful} | {Number(s.Bias, s.Unit)} | {Number(s.LowerLimit, s.Unit)} to {Number(s.UpperLimit, s.Unit)} | {Number(s.Worst, s.Unit)} | {Coverage(s)} | {Number(s.MedianUncertainty, s.Unit)} | {Shown(s.Unit)} |\n"
            );
        }

        page.Append('\n');
    }

    internal static void Failures(StringBuilder page, IEnumerable<CaseResult> results)
    {
        ImmutableArray<(CaseResult Case, ComparedValue Value)> all =
        [
            .. results.SelectMany(r => r.SilentFailures().Select(v => (r, v))),
        ];
        page.Append($"## Silent failures\n\n{all.Length} values.");
        if (all.IsEmpty)
        {
            page.Append(" None was found by this run, which does not prove that there is none.\n\n");
            return;
        }

        page.Append(
            " The worst twenty:\n\n| case | measure | true | measured | u | conditions |\n|---|---|---|---|---|---|\n"
        );
        foreach ((CaseResult r, ComparedValue v) in all.OrderByDescending(f => Math.Abs(f.Value.Error)).Take(20))
        {
            page.Append(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {r.Name} | `{v.Name}` | {v.Truth:0.0000} | {v.Value:0.0000} | {v.StandardUncertainty:0.0000} | {r.Difficulties} |\n"
                )
            );
        }

        page.Append('\n');
    }

    internal static string Coverage(ErrorSummary s)
    {
        (double low, double high) = s.CoverageInterval();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{100 * s.Coverage:0.0} % ({100 * low:0.0}–{100 * high:0.0})"
        );
    }

    private static string Percent(int part, int whole) =>
        whole == 0 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / whole:0.0} %");

    internal static string Shown(string unit) =>
        unit switch
        {
            "m" => "mm",
            "s" => "ms",
            _ => unit,
        };

    internal static string Number(double value, string unit)
    {
        double shown = unit is "m" or "s" ? value * 1000 : value;
        string format = Math.Abs(shown) switch
        {
            >= 100 => "0",
            >= 1 => "0.0",
            _ => "0.000",
        };
        if (unit is "m" or "s")
        {
            format = "0.00";
        }

        return shown.ToString(format, CultureInfo.InvariantCulture);
    }
}
