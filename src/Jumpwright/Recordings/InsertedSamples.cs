using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>
/// Samples that no device measured: an export may write each twice, or draw straight lines between them to reach a rate. They show an
/// edge where none is, and are left out: what was measured is every so many-th.
/// </summary>
internal static class InsertedSamples
{
    private const int MostEvery = 20;

    /// <summary>Places that are looked at first, and how many samples of each: in most files they show at once that nothing was inserted.</summary>
    private const int Looks = 3;

    private const int LookSamples = 128;

    /// <summary>In noise one bend in six is smaller than this part of their mean, among inserted samples at least every second.</summary>
    private const double SmallPart = 0.25;

    private const double MostSmall = 0.45;

    /// <summary>Inserted samples bend by rounding only: so much of what the measured ones do (house rule).</summary>
    private const double InsertedPart = 0.1;

    /// <summary>No bend counts more than so many times their mean: impacts are few.</summary>
    private const double Cap = 5;

    /// <summary>So many of the measured ones, and this part of them, must bend: constant values tell nothing.</summary>
    private const int FewestBent = 16;

    private const double LeastBent = 0.3;

    /// <summary>The recording without inserted samples; a refusal where what was measured is too slow.</summary>
    public static Outcome<Recording> LeftOut(Recording recording)
    {
        if (recording is not ForceRecording force)
        {
            return recording;
        }

        ReadOnlySpan<double> side = force.HasTwoPlates ? force.LeftN.Span : force.TotalN.Span;
        if ((Between(side, bends: true) ?? Between(side, bends: false)) is not var (every, first))
        {
            return recording;
        }

        double rate = force.RateHz / every;
        if (!SamplingRate.IsUsable(rate))
        {
            return Refusals.InsertedSamples(every, rate);
        }

        return force with
        {
            Warnings = force.Warnings.Add(Repairs.InsertedSamples(every, rate)),
            StartS = force.TimeS(first),
            RateHz = rate,
            TotalN = Every(force.TotalN, every, first),
            LeftN = Every(force.LeftN, every, first),
            RightN = Every(force.RightN, every, first),
        };
    }

    private static double[] Every(ReadOnlyMemory<double> samples, int every, int first)
    {
        var kept = new double[Math.Max((samples.Length - first + every - 1) / every, 0)];
        for (int i = 0; i < kept.Length; i++)
        {
            kept[i] = samples.Span[first + (i * every)];
        }

        return kept;
    }

    /// <summary>Every how many-th sample was measured, and the first of them; null where all were, or nothing tells.</summary>
    /// <param name="samples">One plate's force, N.</param>
    /// <param name="bends">True to look for straight lines between samples, false for samples that repeat the one before.</param>
    private static (int Every, int First)? Between(ReadOnlySpan<double> samples, bool bends)
    {
        if (!MayBe(samples, bends))
        {
            return null;
        }

        double mean = Mean(samples, bends);
        Span<double> sums = stackalloc double[MostEvery];
        Span<int> bent = stackalloc int[MostEvery];
        for (int every = MostEvery; every > 1; every--)
        {
            sums.Clear();
            bent.Clear();
            int phase = 1 % every;
            for (int i = 1; i + 1 < samples.Length; i++)
            {
                double bend = Bend(samples, i, bends);
                sums[phase] += Math.Min(bend, Cap * mean);
                bent[phase] += bend > InsertedPart * mean ? 1 : 0;
                phase = phase + 1 == every ? 0 : phase + 1;
            }

            int most = 0;
            double others = 0;
            for (int k = 1; k < every; k++)
            {
                if (sums[k] > sums[most])
                {
                    (most, others) = (k, Math.Max(others, sums[most]));
                }
                else
                {
                    others = Math.Max(others, sums[k]);
                }
            }

            int needed = Math.Max(FewestBent, (int)(LeastBent * samples.Length / every));
            if (others < InsertedPart * sums[most] && bent[most] >= needed)
            {
                return (every, most);
            }
        }

        return null;
    }

    /// <summary>Whether any of a few places shows many samples that hardly bend beside some that do.</summary>
    private static bool MayBe(ReadOnlySpan<double> samples, bool bends)
    {
        for (int look = 1; look <= Looks; look++)
        {
            int from = Math.Max((samples.Length * look / (Looks + 1)) - (LookSamples / 2), 0);
            ReadOnlySpan<double> some = samples[from..Math.Min(from + LookSamples, samples.Length)];
            double small = SmallPart * Mean(some, bends);
            int found = 0;
            for (int i = 1; i + 1 < some.Length; i++)
            {
                found += Bend(some, i, bends) < small ? 1 : 0;
            }

            if (found > MostSmall * some.Length)
            {
                return true;
            }
        }

        return false;
    }

    private static double Mean(ReadOnlySpan<double> samples, bool bends)
    {
        double sum = 0;
        for (int i = 1; i + 1 < samples.Length; i++)
        {
            sum += Bend(samples, i, bends);
        }

        return sum / Math.Max(samples.Length - 2, 1);
    }

    private static double Bend(ReadOnlySpan<double> samples, int i, bool bends) =>
        bends ? Math.Abs(samples[i - 1] - (2 * samples[i]) + samples[i + 1]) : Math.Abs(samples[i] - samples[i - 1]);
}
