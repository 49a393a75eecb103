using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>
/// Splits a recording into contacts and flights. The threshold adapts to the empty plate's own level and noise; a run counts
/// only if it lasts, so that noise, a ringing plate and a dropped sample make neither a flight nor a contact; instants lie
/// between samples, where the edge of the force meets the plate's zero.
/// </summary>
internal static class FlightDetection
{
    /// <summary>No contact of a person and no flight worth the name is shorter.</summary>
    private const double ShortestRunS = 0.04;

    /// <summary>Part of the load above which a plate surely carries somebody.</summary>
    private const double LoadedPart = 0.10;

    /// <summary>Part of the load at which an edge is said to be reached, where noise asks for no more.</summary>
    private const double EdgePart = 0.015;

    /// <summary>Part of the load up to which the edge is taken to be straight.</summary>
    private const double StraightPart = 0.15;

    private const double StraightS = 0.012;

    /// <summary>The contacts in order of time.</summary>
    /// <param name="forceN">Total force, zero not corrected, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="levels">Rough levels of the plate.</param>
    public static List<Contact> Contacts(ReadOnlySpan<double> forceN, double rateHz, PlateLevels levels)
    {
        double loaded = levels.ZeroN + Math.Max(Math.Max(LoadedPart * levels.LoadN, 6 * levels.NoiseN), 15);
        List<Stretch> runs = Runs(forceN, loaded, Math.Max((int)(ShortestRunS * rateHz), 4));
        var contacts = new List<Contact>(runs.Count);
        foreach (Stretch run in runs)
        {
            Instant? touchDown = run.From == 0 ? null : Edge(forceN, rateHz, run.From, -1, levels);
            Instant? takeOff = run.To == forceN.Length ? null : Edge(forceN, rateHz, run.To - 1, +1, levels);
            contacts.Add(new Contact(run, touchDown, takeOff));
        }

        return contacts;
    }

    private static List<Stretch> Runs(ReadOnlySpan<double> forceN, double loaded, int shortest)
    {
        var runs = new List<Stretch>();
        int from = -1;
        for (int i = 0; i <= forceN.Length; i++)
        {
            bool on = i < forceN.Length && forceN[i] > loaded;
            if (on && from < 0)
            {
                from = i;
            }
            else if (!on && from >= 0)
            {
                runs.Add(new Stretch(from, i));
                from = -1;
            }
        }

        // A short contact right before a long one is the first touch of a landing; any other is the plate ringing.
        for (int k = runs.Count - 1; k >= 0; k--)
        {
            if (runs[k].Length >= shortest)
            {
                continue;
            }

            int after = k + 1 < runs.Count ? runs[k + 1].From - runs[k].To : int.MaxValue;
            int before = runs[k].From - (k > 0 ? runs[k - 1].To : int.MinValue / 2);
            if (after < shortest && after < before)
            {
                runs[k + 1] = new Stretch(runs[k].From, runs[k + 1].To);
            }

            runs.RemoveAt(k);
        }

        for (int k = runs.Count - 1; k > 0; k--)
        {
            if (runs[k].From - runs[k - 1].To < shortest)
            {
                runs[k - 1] = new Stretch(runs[k - 1].From, runs[k].To);
                runs.RemoveAt(k);
            }
        }

        return runs;
    }

    /// <summary>Where the force of a contact meets zero, walking from its outermost loaded sample away from it.</summary>
    private static Instant Edge(ReadOnlySpan<double> forceN, double rateHz, int last, int way, PlateLevels levels)
    {
        double low = levels.ZeroN + Math.Max(Math.Max(4 * levels.NoiseN, EdgePart * levels.LoadN), 4);
        int i = last + way;
        while (i >= 0 && i < forceN.Length && forceN[i] >= low)
        {
            i += way;
        }

        if (i < 0 || i >= forceN.Length)
        {
            return new Instant(last, ShortestRunS);
        }

        // Straight part of the edge, from sample i − way inwards.
        double top = low + (StraightPart * levels.LoadN);
        int most = Math.Max((int)(StraightS * rateHz), 2);
        double n = 0;
        double sk = 0;
        double sf = 0;
        double skk = 0;
        double skf = 0;
        for (int k = 1; k <= most || n < 2; k++)
        {
            int j = i - (way * k);
            if (j < 0 || j >= forceN.Length || (n >= 2 && forceN[j] > top))
            {
                break;
            }

            n++;
            sk += k;
            sf += forceN[j];
            skk += (double)k * k;
            skf += k * forceN[j];
        }

        double step = 1 / rateHz;
        if (n < 2)
        {
            return new Instant(i - (0.5 * way), 0.5 * step);
        }

        double slope = ((n * skf) - (sk * sf)) / ((n * skk) - (sk * sk));
        double inner = forceN[i - way];
        double crossing = inner > forceN[i] ? Math.Clamp((low - forceN[i]) / (inner - forceN[i]), 0, 1) : 0.5;
        if (!(slope > 0))
        {
            return new Instant(i - (way * crossing), step);
        }

        // k counts inwards from sample i; the line meets zero at k0, no farther out than sample i itself allows.
        double k0 = (levels.ZeroN - ((sf - (slope * sk)) / n)) / slope;
        double outermost = -(low - levels.ZeroN) / slope;
        double k1 = Math.Clamp(k0, Math.Max(outermost, -0.004 * rateHz), crossing);
        double noise = Math.Max(levels.NoiseN, 0.5) / slope;
        double bend = 0.3 * (crossing - k1);
        double u = Math.Sqrt((noise * noise) + (bend * bend) + 0.01) * step;
        return new Instant(i - (way * k1), Math.Min(u, 0.01));
    }
}
