using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>
/// A gap that the device or the export filled: samples on a straight line, or one value again and again, among samples that all carry
/// noise. What happened there, nobody knows.
/// </summary>
internal static class FilledGap
{
    /// <summary>So long without any bend, s and samples, and the force was not measured.</summary>
    private const double LeastS = 0.012;

    private const int LeastSamples = 6;

    /// <summary>Rounding bends a straight line by so many steps of the file at most.</summary>
    private const double Steps = 2.5;

    /// <summary>Noise of so many steps leaves no such line by chance: one in a million recordings (normal noise).</summary>
    private const double NoiseSteps = 20;

    /// <summary>A stand and an empty plate are near these parts of the load; between them something moves.</summary>
    private const double StandingPart = 0.15;

    private const double EmptyPart = 0.05;

    /// <summary>Finds the first filled gap while something moves.</summary>
    /// <param name="plate">The recording.</param>
    /// <param name="stepN">Least step of the file, N.</param>
    public static Refusal? Find(Plate plate, double stepN)
    {
        // As the device wrote it: hum that was taken off would bend the line.
        ReadOnlySpan<double> force = plate.Recording.TotalN.Span;
        if (!(plate.Levels.NoiseN > NoiseSteps * stepN))
        {
            return null;
        }

        double most = Steps * stepN;
        int least = Math.Max(LeastSamples, (int)Math.Ceiling(LeastS * plate.RateHz));
        // So long a run holds one of every so many samples.
        for (int k = least; k + 1 < force.Length; k += least)
        {
            if (Bend(force, k) > most)
            {
                continue;
            }

            int from = k;
            while (from > 1 && Bend(force, from - 1) <= most)
            {
                from--;
            }

            int to = k;
            while (to + 2 < force.Length && Bend(force, to + 1) <= most)
            {
                to++;
            }

            if (to - from + 1 >= least && Moves(plate, force, from, to))
            {
                if (!(plate.Levels.NoiseN > NoiseSteps * StepOfPlates(plate.Recording)))
                {
                    return null;
                }

                return Refusals.FilledGap(plate.TimeS(from - 1), plate.TimeS(to + 1));
            }

            k = Math.Max(k, to);
        }

        return null;
    }

    /// <summary>Least steps of the plates together, N: two that count coarsely make a sum of finer steps than either.</summary>
    private static double StepOfPlates(ForceRecording recording) =>
        recording.HasTwoPlates
            ? Samples.Roughness(recording.LeftN.Span, 1e-9).Step + Samples.Roughness(recording.RightN.Span, 1e-9).Step
            : Samples.Roughness(recording.TotalN.Span, 1e-9).Step;

    /// <summary>Whether anything but a stand or an empty plate may have been in the gap.</summary>
    private static bool Moves(Plate plate, ReadOnlySpan<double> force, int from, int to)
    {
        double before = Part(plate, force[Math.Max(from - 2, 0)]);
        double after = Part(plate, force[Math.Min(to + 2, force.Length - 1)]);
        if (Stands(before) && Stands(after))
        {
            return false;
        }

        if (!IsEmpty(Part(plate, force[from])) || !IsEmpty(Part(plate, force[to])))
        {
            return true;
        }

        // A device that writes nothing below a limit shows its least value from edge to edge; one that stalls stays anywhere.
        return !IsEmpty(after) && force[from] > Samples.Least(force);
    }

    private static double Part(Plate plate, double forceN) => (forceN - plate.Levels.ZeroN) / plate.Levels.LoadN;

    private static bool Stands(double part) => Math.Abs(part - 1) < StandingPart;

    private static bool IsEmpty(double part) => Math.Abs(part) < EmptyPart;

    private static double Bend(ReadOnlySpan<double> force, int i) =>
        Math.Abs(force[i - 1] - (2 * force[i]) + force[i + 1]);
}
