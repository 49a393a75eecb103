using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Makes again, for drawing, the curves that a trial's measures were taken from.</summary>
public static class Tracing
{
    private const double BeforeS = 0.6;
    private const double AfterS = 1.0;
    private const double WeighingS = 1.0;

    public const string Weighing = "weighing";
    public const string Unweighting = "unweighting";
    public const string Braking = "braking";
    public const string Propulsion = "propulsion";
    public const string Flight = "flight";
    public const string Landing = "landing";
    public const string Fall = "fall";

    /// <summary>The curves of one trial, from a little before its onset to a little after its landing settled.</summary>
    /// <param name="recording">The recording the trial was measured from.</param>
    /// <param name="trial">One of its trials.</param>
    /// <returns>The curves, or a refusal where the trial is not of this recording.</returns>
    /// <param name="beforeS">How much to show before the trial's first event, s.</param>
    /// <param name="afterS">How much to show after its last, s.</param>
    public static Outcome<MotionTrace> Of(
        ForceRecording recording,
        Trial trial,
        double beforeS = BeforeS,
        double afterS = AfterS
    )
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(trial);
        using var plate = Plate.Of(recording);
        TrialEvents e = trial.Events;
        double? firstS = e.OnsetS ?? e.FirstTouchDownS ?? e.BottomS ?? e.TakeOffS ?? e.TouchDownS;
        int at = Index(recording, firstS ?? double.NegativeInfinity);
        if (firstS is not { } begins || at < 0 || at >= plate.ForceN.Length)
        {
            return Refusals.TrialNotOfRecording();
        }

        double endsS = e.StableS ?? e.TouchDownS ?? e.TakeOffS ?? begins;
        int from = Math.Max(Index(recording, begins - beforeS), 0);
        int to = Math.Min(Index(recording, endsS + afterS) + 1, plate.ForceN.Length);
        int middle = Math.Clamp(Index(recording, e.TakeOffS ?? begins) - 1, from, to - 1);

        double[] velocity = [];
        double[] displacement = [];
        double? weight = null;
        if (StayWith(plate, middle) is var (first, last))
        {
            List<QuietStanding> still = plate.Still(first, last);
            if (still.Count > 0)
            {
                using FittedMotion motion = plate.FitMotion(first, last, still, trial.Task != JumpTask.SquatJump);
                from = Math.Max(from, motion.Samples.From);
                to = Math.Min(to, motion.Samples.To);
                velocity = motion.VelocityMS[(from - motion.Samples.From)..(to - motion.Samples.From)].ToArray();
                displacement = motion.PositionM[(from - motion.Samples.From)..(to - motion.Samples.From)].ToArray();
                weight = motion.WeightN;
            }
        }

        var times = new double[to - from];
        for (int i = 0; i < times.Length; i++)
        {
            times[i] = recording.TimeS(from + i);
        }

        bool two = recording.HasTwoPlates;
        return new MotionTrace(
            [.. times],
            [.. plate.ForceN.Slice(from, to - from)],
            two ? Zeroed(recording.LeftN.Span[from..to], plate.LeftEmpty.ZeroN) : [],
            two ? Zeroed(recording.RightN.Span[from..to], plate.RightEmpty.ZeroN) : [],
            [.. velocity],
            [.. displacement],
            weight,
            Phases(e, times)
        );
    }

    private static ImmutableArray<double> Zeroed(ReadOnlySpan<double> sideN, double zeroN)
    {
        var forceN = new double[sideN.Length];
        Samples.Less(sideN, zeroN, forceN);
        return ImmutableCollectionsMarshal.AsImmutableArray(forceN);
    }

    private static int Index(ForceRecording recording, double timeS) =>
        (int)Math.Round((timeS - recording.StartS) * recording.RateHz);

    private static (int First, int Last)? StayWith(Plate plate, int sample)
    {
        foreach ((int first, int last) in plate.Stays)
        {
            if (sample >= plate.Contacts[first].Samples.From - 20 && sample < plate.Contacts[last].Samples.To + 20)
            {
                return (first, last);
            }
        }

        return null;
    }

    private static ImmutableArray<Phase> Phases(TrialEvents e, double[] times)
    {
        double start = times[0];
        double end = times[^1];
        var phases = ImmutableArray.CreateBuilder<Phase>();
        if (e.OnsetS is { } onset)
        {
            Add(Weighing, Math.Max(start, onset - WeighingS), onset);
            Add(Unweighting, onset, e.PeakDownwardVelocityS);
        }

        Add(Fall, e.FirstTouchDownS is null ? null : start, e.FirstTouchDownS);
        Add(Braking, e.PeakDownwardVelocityS ?? e.FirstTouchDownS, e.BottomS);
        Add(Propulsion, e.BottomS, e.TakeOffS);
        Add(Flight, e.TakeOffS, e.TouchDownS);
        Add(Landing, e.TouchDownS, e.TouchDownS is null ? null : e.StableS ?? end);
        return phases.ToImmutable();

        void Add(string name, double? from, double? to)
        {
            if (from is { } a && to is { } b && b > a)
            {
                phases.Add(new Phase(name, a, b));
            }
        }
    }
}
