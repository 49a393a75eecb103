namespace Jumpwright.Trials;

/// <summary>
/// Reads all edges of a recording together where its plate may swing. Each way in which the plate may answer (not at all, as a
/// spring and damper under the feet, or with something on top of a force read right) is held against every edge; it counts as
/// much as it explains of all of them, and what remains likely of each instant is its doubt.
/// </summary>
internal static class RingingEdges
{
    /// <summary>How long beyond an edge a plate that swings is looked at, s.</summary>
    public const double LookedAtS = 0.012;

    /// <summary>Beyond this nothing that rests on an edge may be decided from (two of them move a height by a centimetre), s.</summary>
    private const double MostUnsureS = 0.0024;

    /// <summary>
    /// No plate follows later than this: a spring of 90 Hz, damped by half of what lets it swing, lags by 2 · 0.5 / (2π · 90) = 1.8 ms.
    /// An edge that the answers move farther is one that they tell otherwise than the force alone, and nobody knows which is right, s.
    /// </summary>
    private const double MostMovedS = 0.004;

    /// <summary>So much less likely (in logarithms), an answer is dropped; no more of them are kept.</summary>
    public const double Negligible = 6;

    private const int Most = 12;

    /// <summary>Reads them anew; false where the plate is quiet.</summary>
    public static bool Read(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double noiseN,
        List<Contact> contacts
    )
    {
        if (contacts.Count == 0)
        {
            return false;
        }

        List<Aftermath> flights = Aftermath.Of(forceN, rateHz, noiseN, levels, contacts);
        if (Aftermath.IsSilent(forceN, rateHz, noiseN, levels, flights))
        {
            return false;
        }

        double unrest = Aftermath.Unrest(forceN, rateHz, Aftermath.White(noiseN), flights);
        List<(double Hz, double Damping)> swings =
            unrest < Aftermath.MostOfNoise ? [] : FreeRinging.Of(forceN, rateHz, noiseN, levels.LoadN, flights);
        double[] swing = new double[contacts.Count];
        for (int k = 0; k < swing.Length; k++)
        {
            swing[k] = Swing(forceN, rateHz, levels.ZeroN, contacts[k].TakeOff);
        }

        double usual = swing.Average();
        var edges = new List<EdgeSide>();
        var which = new List<(int Contact, bool TakeOff)>();
        for (int k = 0; k < contacts.Count; k++)
        {
            if (
                contacts[k].TouchDown is { } seenDown
                && EdgeReading.Swinging(
                    forceN,
                    rateHz,
                    seenDown,
                    contacts[k].Samples.From,
                    -1,
                    levels,
                    noiseN,
                    0,
                    usual
                )
                    is { } down
                && EdgeFit.HasSamples(down, forceN, rateHz, LookedAtS)
            )
            {
                edges.Add(down);
                which.Add((k, false));
            }

            if (
                contacts[k].TakeOff is { } seenUp
                && EdgeReading.Swinging(
                    forceN,
                    rateHz,
                    seenUp,
                    contacts[k].Samples.To - 1,
                    +1,
                    levels,
                    noiseN,
                    swing[k],
                    swing[k]
                )
                    is { } up
                && EdgeFit.HasSamples(up, forceN, rateHz, LookedAtS)
            )
            {
                edges.Add(up);
                which.Add((k, true));
            }
        }

        if (edges.Count == 0)
        {
            return false;
        }

        List<(PlateAnswer? Answer, double Log)> answers = PlateAnswers.Of(
            new AskedEdges(forceN, rateHz, edges),
            swings,
            unrest
        );
        answers.RemoveAll(a => a.Log < answers[0].Log - Negligible);
        if (answers.Count > Most)
        {
            answers.RemoveRange(Most, answers.Count - Most);
        }

        if (answers is [{ Answer: null }])
        {
            return false;
        }

        const int points = EdgeFit.Points;
        Span<double> at = stackalloc double[points * answers.Count];
        Span<double> parts = stackalloc double[points * answers.Count];
        for (int e = 0; e < edges.Count; e++)
        {
            double grid = 0;
            for (int a = 0; a < answers.Count; a++)
            {
                Span<double> there = at.Slice(a * points, points);
                Span<double> likely = parts.Slice(a * points, points);
                _ = EdgeFit.TryTell(edges[e], forceN, rateHz, answers[a].Answer, LookedAtS, there, likely, out _);
                double all = EdgeFit.LogSum(likely);
                double own = answers[a].Log - answers[0].Log;
                for (int k = 0; k < points; k++)
                {
                    likely[k] = Math.Exp(likely[k] - all + own);
                }

                grid = Math.Max(grid, there[1] - there[0]);
            }

            Instant instant = EdgePosterior.Tell(edges[e], rateHz, at, parts, grid);
            (int contact, bool takeOff) = which[e];
            Instant seen = (takeOff ? contacts[contact].TakeOff : contacts[contact].TouchDown)!.Value;
            double moved = Math.Abs(instant.Sample - seen.Sample) / rateHz;
            instant = instant with { Unsettled = instant.UncertaintyS > MostUnsureS || moved > MostMovedS };
            contacts[contact] = takeOff
                ? contacts[contact] with
                {
                    TakeOff = instant,
                }
                : contacts[contact] with
                {
                    TouchDown = instant,
                };
        }

        return true;
    }

    /// <summary>How far the plate swings after a take-off, N, once its edge is over; 0 for none.</summary>
    private static double Swing(ReadOnlySpan<double> forceN, double rateHz, double zeroN, Instant? takeOff)
    {
        if (takeOff is not { } instant)
        {
            return 0;
        }

        int from = (int)Math.Ceiling(instant.Sample + (0.001 * rateHz));
        int to = Math.Min(from + Math.Max((int)(LookedAtS * rateHz), 3), forceN.Length);
        double most = 0;
        for (int i = from; i < to; i++)
        {
            most = Math.Max(most, Math.Abs(forceN[i] - zeroN));
        }

        return most;
    }
}
