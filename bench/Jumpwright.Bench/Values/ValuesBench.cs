using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Foreign;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Bench.Values;

/// <summary>
/// Every value of one draw of a population beside its truth, as rows that two versions can be compared by, and what the draw says in all. The pages
/// of <c>docs/</c> come from one seed each; other seeds say whether that one was luck.
/// </summary>
internal static class ValuesBench
{
    private static readonly string[] Told =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.ContactTime,
        MeasureNames.DropHeight,
        MeasureNames.BodyWeight,
    ];

    /// <summary>Measures a draw.</summary>
    /// <param name="population"><c>house</c> or <c>foreign</c>, with <c>-clean</c> behind it for clean plates.</param>
    /// <param name="each">Recordings of each task.</param>
    /// <param name="seed">Which draw.</param>
    /// <param name="into">Where the rows go; null for nowhere.</param>
    /// <param name="only">Name of the only recording that is asked for: it goes itself into <paramref name="into"/>; null for all.</param>
    /// <param name="output">Where the summary goes.</param>
    /// <returns>False where the population is not known.</returns>
    public static bool Run(string population, int each, ulong seed, string? into, string? only, TextWriter output)
    {
        Func<JumpTask, ulong, int, SimulatedCase>? make = population switch
        {
            "house" => Population.Varied,
            "house-clean" => Population.Clean,
            "foreign" => ForeignPopulation.Varied,
            "foreign-clean" => ForeignPopulation.Clean,
            _ => null,
        };
        if (make is null)
        {
            output.WriteLine($"No population is called {population}: house, house-clean, foreign or foreign-clean.");
            return false;
        }

        ImmutableArray<JumpTask> tasks = Validation.VariedTasks;
        if (only is not null)
        {
            return Keep(
                tasks.SelectMany(task => Enumerable.Range(0, each).Select(k => make(task, seed, k))),
                only,
                into,
                output
            );
        }

        CaseResult[] results = new CaseResult[tasks.Length * each];
        Parallel.For(
            0,
            results.Length,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            i => results[i] = Validation.Examine(make(tasks[i / each], seed, i % each))
        );
        if (into is not null)
        {
            File.WriteAllLines(into, results.SelectMany(Rows));
        }

        foreach (CaseResult result in results)
        {
            foreach (ComparedValue value in result.SilentFailures())
            {
                output.WriteLine(
                    Invariant(
                        $"silent: {result.Name} ({result.Difficulties}) {value.Name} {value.Value:0.0000}, truly {value.Truth:0.0000}, u {value.StandardUncertainty:0.0000}"
                    )
                );
            }
        }

        int values = results.Sum(r => r.Values.Length);
        int doubtful = results.Sum(r => r.Values.Count(v => v.Doubtful));
        output.WriteLine(
            Invariant(
                $"{population}, seed {seed}: {results.Length} recordings, {results.Count(r => r.Refusal is not null)} refused, {results.Count(r => r.SilentFailures().Any())} silent, {100.0 * doubtful / values:0.00} % of {values} values doubtful"
            )
        );
        foreach (ErrorSummary summary in ErrorSummary.Of(results, Told))
        {
            (double low, double high) = summary.CoverageInterval();
            output.WriteLine(
                Invariant(
                    $"  {summary.Name, -28} n {summary.Count, 6}, doubtful {summary.Doubtful, 5}, ±2u held {100 * summary.Coverage:0.0} % ({100 * low:0.0} to {100 * high:0.0}), median u {summary.MedianUncertainty:0.00000}"
                )
            );
        }

        return true;
    }

    private static bool Keep(IEnumerable<SimulatedCase> cases, string only, string? into, TextWriter output)
    {
        if (cases.FirstOrDefault(found => found.Name == only) is not { } found)
        {
            output.WriteLine($"No recording of this draw is called {only}; 'values' without --only tells the names.");
            return false;
        }

        output.WriteLine($"{found.Name}: {found.Difficulties}; {found.Truth}");
        if (into is not null)
        {
            File.WriteAllBytes(into, found.Bytes);
        }

        return true;
    }

    private static IEnumerable<string> Rows(CaseResult result) =>
        result.Refusal is { } refusal
            ? [$"{result.Name}\trefused\t{refusal}"]
            : result.Values.Select(v =>
                Invariant(
                    $"{result.Name}\t{v.Name}\t{v.Value:R}\t{v.Truth:R}\t{v.StandardUncertainty:R}\t{(v.Doubtful ? "doubtful" : "said")}\t{result.RateHz}\t{result.Difficulties}"
                )
            );

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
