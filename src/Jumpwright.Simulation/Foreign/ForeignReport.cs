using System.Collections.Immutable;
using System.Text;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;

namespace Jumpwright.Simulation.Foreign;

/// <summary>What measuring makes of the second population. Every number in its text was measured by that run.</summary>
/// <param name="Each">Varied recordings of each task; clean ones are half as many.</param>
/// <param name="Seed">Where chance starts.</param>
/// <param name="Clean">Results of all tasks on good plates.</param>
/// <param name="Varied">Results of all tasks on whatever plates.</param>
public sealed record ForeignReport(
    int Each,
    ulong Seed,
    ImmutableArray<CaseResult> Clean,
    ImmutableArray<CaseResult> Varied
)
{
    /// <summary>Words of the conditions that the table by what was added groups by.</summary>
    private static readonly string[] Added =
    [
        "one plate",
        "wander",
        "slow force under load",
        "hum",
        "drift",
        "resonance",
        "steps of",
    ];

    /// <summary>Draws, measures and compares. The same numbers give the same report.</summary>
    /// <param name="each">Varied recordings of each task.</param>
    /// <param name="progress">Told the part done, 0 to 1, from any thread.</param>
    /// <param name="seed">Another seed draws other recordings.</param>
    /// <param name="cancel">Ends the run early with an exception.</param>
    public static ForeignReport Run(
        int each,
        IProgress<double>? progress = null,
        ulong? seed = null,
        CancellationToken cancel = default
    )
    {
        ulong from = seed ?? ValidationOptions.Default.Seed;
        int clean = (each + 1) / 2;
        int tasks = Validation.VariedTasks.Length;
        var results = new CaseResult[tasks * (clean + each)];
        int done = 0;
        Parallel.For(
            0,
            results.Length,
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            i =>
            {
                bool good = i < tasks * clean;
                int number = good ? i % clean : (i - (tasks * clean)) % each;
                JumpTask task = Validation.VariedTasks[good ? i / clean : (i - (tasks * clean)) / each];
                results[i] = Validation.Examine(
                    good ? ForeignPopulation.Clean(task, from, number) : ForeignPopulation.Varied(task, from, number)
                );
                progress?.Report((double)Interlocked.Increment(ref done) / results.Length);
            }
        );
        return new ForeignReport(each, from, [.. results.AsSpan(0, tasks * clean)], [.. results.AsSpan(tasks * clean)]);
    }

    /// <summary>The report as a page.</summary>
    /// <param name="command">The command that makes it, as a person types it.</param>
    public string Markdown(string command)
    {
        StringBuilder page = new();
        page.Append(
            $"""
            # Validation on a second population

            Made by `{command}`; don't edit it by hand. Seed {Seed}: the same version gives the same page.

            These recordings share no mechanics with [validation.md](validation.md)'s: bodies are driven forward by forces 20,000 times a second
            and end where those lead. Pushes are bells that end like the time left to the power 0.8–1.6, touch-downs are pulses or
            stiffening springs of such powers, people creep back to standing over a second or more, some with a small step, and sway as
            a shaken spring with breath and heartbeat. Plates answer as springs do (resonance), wander empty or loaded, warm up, hum with an
            overtone, and round. It is still a simulator of this house: the words and measures are as there.


            """
        );
        Part(page, "Clean recordings", "1000 Hz, two plates, sway 1–4 N, noise 0.5–2 N.", Clean);
        Part(
            page,
            "Varied recordings",
            "Rates 200–2000 Hz, one or two plates, sway 0.3–6 N, noise 0.5–8 N; and in some of them a wander to 1.2 N, a slow force under load to 2.5 N, hum to 5 N, drift to 6 N, zero off by up to ±25 N a plate, resonance at 120–400 Hz, steps of up to 2 N.",
            Varied
        );
        ValidationReport.Rates(page, Varied);
        page.Append("### By what was added, all tasks\n\n");
        ValidationReport.Groups(
            page,
            "with",
            Added
                .SelectMany(a =>
                    Varied.Where(r => r.Difficulties.Contains(a, StringComparison.Ordinal)).Select(r => (a, r))
                )
                .GroupBy(x => x.a, x => x.r)
        );
        ValidationReport.Failures(page, Clean.Concat(Varied));
        return page.ToString();
    }

    private static void Part(StringBuilder page, string title, string how, ImmutableArray<CaseResult> results)
    {
        page.Append($"## {title}\n\n{results.Length} recordings. {how}\n\n");
        page.Append("| task | recordings | refused | values doubtful | silent failures |\n|---|---|---|---|---|\n");
        foreach (IGrouping<JumpTask, CaseResult> task in results.GroupBy(r => r.Task))
        {
            ValidationReport.Counts(page, task.Key.Id(), [.. task]);
        }

        ValidationReport.Counts(page, "**all**", results);
        page.Append('\n');
        ValidationReport.Groups(page, "task", results.GroupBy(r => r.Task.Id()));
    }
}
