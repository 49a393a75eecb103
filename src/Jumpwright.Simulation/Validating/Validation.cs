using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Defects;
using Jumpwright.Simulation.Devices;
using Jumpwright.Trials;

namespace Jumpwright.Simulation.Validating;

/// <summary>Puts simulated recordings through the same doors as real ones and compares what comes out with the truth.</summary>
public static class Validation
{
    /// <summary>The tasks that are drawn with varied plates.</summary>
    public static ImmutableArray<JumpTask> VariedTasks { get; } =
    [
        JumpTask.CountermovementJump,
        JumpTask.SquatJump,
        JumpTask.LoadedJump,
        JumpTask.DropJump,
        JumpTask.RepeatedHops,
        JumpTask.DropLanding,
        JumpTask.SnapDown,
        JumpTask.ApproachJump,
        JumpTask.BoxJump,
    ];

    /// <summary>Devices that only time: a contact mat (0) and cameras, frames a second.</summary>
    public static ImmutableArray<double> Timers { get; } = [0, 30, 60, 120, 240];

    private static readonly JumpTask[] Timed = [JumpTask.CountermovementJump, JumpTask.DropJump, JumpTask.RepeatedHops];

    private static readonly JumpTask[] OtherTasks =
    [
        .. VariedTasks.Where(t => t is not (JumpTask.CountermovementJump or JumpTask.DropJump)),
    ];

    /// <summary>Runs the whole validation. The same options give the same report.</summary>
    /// <param name="options">Null takes the defaults.</param>
    /// <param name="progress">Told the part done, 0 to 1, from any thread.</param>
    /// <param name="cancel">Ends the run early with an exception.</param>
    public static ValidationReport Run(
        ValidationOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    )
    {
        options ??= ValidationOptions.Default;
        ulong seed = options.Seed;
        List<Func<CaseResult>> work = [];
        void Add(int count, Func<int, SimulatedCase> make) =>
            work.AddRange(Enumerable.Range(0, count).Select(i => (Func<CaseResult>)(() => Examine(make(i)))));
        Add(options.CleanCountermovementJumps, i => Population.Clean(JumpTask.CountermovementJump, seed, i));
        Add(options.CleanDropJumps, i => Population.Clean(JumpTask.DropJump, seed, i));
        foreach (JumpTask task in OtherTasks)
        {
            Add(options.CleanOfOtherTasks, i => Population.Clean(task, seed, i));
        }

        Add(options.Disturbed, i => Population.Disturbed(JumpTask.CountermovementJump, seed, i));
        Add(options.Disturbed, i => Population.Disturbed(JumpTask.DropJump, seed, i));
        foreach (double timer in Timers)
        {
            foreach (JumpTask task in Timed)
            {
                Add(options.TimedOfEach, i => Population.Timed(task, timer, seed, i));
            }
        }

        foreach (JumpTask task in VariedTasks)
        {
            Add(options.VariedOfEachTask, i => Population.Varied(task, seed, i));
        }

        foreach (Defect defect in DefectList.All)
        {
            Add(options.SpoiledOfEachDefect, i => Spoiled(defect, seed, i));
        }

        CaseResult[] results = new CaseResult[work.Count];
        int done = 0;
        Parallel.For(
            0,
            work.Count,
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            i =>
            {
                results[i] = work[i]();
                progress?.Report((double)Interlocked.Increment(ref done) / work.Count);
            }
        );

        int at = 0;
        ImmutableArray<CaseResult> Take(int count)
        {
            at += count;
            return [.. results.AsSpan(at - count, count)];
        }

        ImmutableArray<CaseResult> jumps = Take(options.CleanCountermovementJumps);
        ImmutableArray<CaseResult> drops = Take(options.CleanDropJumps);
        ImmutableArray<CaseResult> others = Take(options.CleanOfOtherTasks * OtherTasks.Length);
        ImmutableArray<CaseResult> disturbed = Take(options.Disturbed * 2);
        ImmutableArray<CaseResult> timed = Take(options.TimedOfEach * Timed.Length * Timers.Length);
        ImmutableArray<CaseResult> varied = Take(options.VariedOfEachTask * VariedTasks.Length);
        ImmutableArray<SpoiledResult> spoiled =
        [
            .. DefectList.All.Select(defect => Summary(defect, Take(options.SpoiledOfEachDefect))),
        ];
        return new ValidationReport(options, jumps, drops, others, disturbed, timed, varied, spoiled);
    }

    /// <summary>Reads, measures and compares one case, as a file that a person brings.</summary>
    public static CaseResult Examine(SimulatedCase @case)
    {
        Outcome<ImmutableArray<Trial>> outcome = Recording
            .From(@case.Bytes)
            .Then(recording => Measuring.Of(recording, @case.Task));
        if (!outcome.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal))
        {
            return new(@case.Name, @case.Task, @case.RateHz, @case.Difficulties, refusal.Sentence, 0, []);
        }

        Trial trial = trials[0];
        ImmutableArray<ComparedValue> values =
        [
            .. trial
                .Measures.Select(m => (Measure: m, True: @case.Truth.Of(m)))
                .Where(m => m.True is not null)
                .Select(m => new ComparedValue(
                    m.Measure.Name,
                    m.Measure.Unit.ToString(),
                    m.Measure.Value,
                    m.True!.Value,
                    m.Measure.StandardUncertainty,
                    trial.Doubtful.Contains(m.Measure.Name, StringComparer.Ordinal)
                )),
        ];
        return new(@case.Name, @case.Task, @case.RateHz, @case.Difficulties, null, trials.Length, values);
    }

    private static SimulatedCase Spoiled(Defect defect, ulong seed, int number)
    {
        SimulatedCase good = Population.Clean(
            number % 2 == 0 ? JumpTask.CountermovementJump : JumpTask.DropJump,
            seed + 1,
            number
        );
        return good with { Name = defect.Id + " " + good.Name, Bytes = defect.Spoil(good.Bytes) };
    }

    private static SpoiledResult Summary(Defect defect, ImmutableArray<CaseResult> results) =>
        new(
            defect.Id,
            defect.What,
            results.Length,
            results.Count(r => r.Refusal is not null),
            results.Count(r => r.SilentFailures().Any()),
            results.FirstOrDefault(r => r.Refusal is not null)?.Refusal
        );
}
