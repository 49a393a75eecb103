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

    /// <summary>How far inside an edge its steep part is looked for, s.</summary>
    private const double InsideS = 0.03;

    /// <summary>What the unknown shape of an edge below its straight part leaves open, s.</summary>
    private const double EdgeShapeS = 0.00008;

    /// <summary>The line of an edge is not believed farther out than this, s.</summary>
    private const double FarthestS = 0.006;

    /// <summary>Where the unrest of the empty plate is looked at, from and to this long beyond an edge, s.</summary>
    private const double UnrestFromS = 0.012;

    private const double UnrestToS = 0.04;

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

    /// <summary>
    /// Where the force of a contact meets zero, walking from its outermost loaded sample away from it. What the empty side
    /// shows right after (a plate rings, mains hum) raises the level below which the edge is not believed; from there the
    /// edge's straight part is drawn on to zero.
    /// </summary>
    private static Instant Edge(ReadOnlySpan<double> forceN, double rateHz, int last, int way, PlateLevels levels)
    {
        double step = 1 / rateHz;
        double unrest = Unrest(forceN, rateHz, last, way, levels.ZeroN);
        double low = Math.Max(Math.Max(4 * levels.NoiseN, EdgePart * levels.LoadN), 4);
        low = levels.ZeroN + Math.Max(low, Math.Min(1.25 * unrest, 0.35 * levels.LoadN));

        // From well inside outwards to the first sample below.
        int inside = last;
        int most = Math.Max((int)(InsideS * rateHz), 3);
        double well = levels.ZeroN + (0.5 * levels.LoadN);
        for (int k = 0; k < most && inside - way >= 0 && inside - way < forceN.Length && forceN[inside] < well; k++)
        {
            inside -= way;
        }

        int i = inside;
        while (i >= 0 && i < forceN.Length && forceN[i] >= low)
        {
            i += way;
        }

        if (i < 0 || i >= forceN.Length)
        {
            return new Instant(last, ShortestRunS);
        }

        // Straight part of the edge: samples i − way, i − 2 way, … up to the top level.
        double top = low + (StraightPart * levels.LoadN);
        int longest = Math.Max((int)(StraightS * rateHz), 2);
        double n = 0;
        double sk = 0;
        double sf = 0;
        double skk = 0;
        double skf = 0;
        for (int k = 1; k <= longest; k++)
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

        double inner = forceN[Math.Clamp(i - way, 0, forceN.Length - 1)];
        double crossing = inner > forceN[i] ? Math.Clamp((low - forceN[i]) / (inner - forceN[i]), 0, 1) : 0.5;
        double slope = n < 2 ? 0 : ((n * skf) - (sk * sf)) / ((n * skk) - (sk * sk));
        if (!(slope > 0))
        {
            return new Instant(i - (way * crossing), step);
        }

        double corner = 0.05;
        int second = i - (2 * way);
        int third = i - (3 * way);
        if (n <= 2 && forceN[second] > top && third >= 0 && third < forceN.Length)
        {
            // Too coarse for a straight part: let the slope go on changing as it does between the nearest samples.
            double before = forceN[third] - forceN[second];
            double change = Math.Clamp((slope - before) / slope, -0.5, 1);
            double inmost = inner - (slope * (1 + (0.5 * change)));
            slope *= 1 + (0.5 * change);
            n = 2;
            sk = 1;
            sf = inner + inmost;
            skk = 1;
            corner = 0.08;
        }

        // k counts inwards from sample i; the line meets zero at k0, not far beyond what sample i itself allows.
        double k0 = (levels.ZeroN - ((sf - (slope * sk)) / n)) / slope;
        double outermost = Math.Max(-(low - levels.ZeroN) / slope, -FarthestS * rateHz);
        double k1 = Math.Clamp(k0, Math.Min(outermost, 0), 1);
        double middle = (sk / n) - k0;
        double spread = Math.Max(skk - (sk * sk / n), 0.5);
        double noise = Math.Max(levels.NoiseN, 0.3) / slope * Math.Sqrt((1 / n) + (middle * middle / spread));
        // A curved edge bends away from its straight part; between two samples a corner may hide.
        double bend = 0.04 * (1 - k1);
        double u = PushMeasures.Quadrature(
            Math.Sqrt((noise * noise) + (bend * bend) + (corner * corner)) * step,
            EdgeShapeS
        );
        return new Instant(i - (way * k1), Math.Min(u, 0.01));
    }

    /// <summary>Greatest deviation from zero on the empty side of an edge, N, beyond its first milliseconds.</summary>
    private static double Unrest(ReadOnlySpan<double> forceN, double rateHz, int last, int way, double zeroN)
    {
        int near = Math.Max((int)(UnrestFromS * rateHz), 2);
        int far = (int)(UnrestToS * rateHz);
        double most = 0;
        for (int k = near; k <= far; k++)
        {
            int i = last + (way * k);
            if (i < 0 || i >= forceN.Length)
            {
                break;
            }

            most = Math.Max(most, Math.Abs(forceN[i] - zeroN));
        }

        return most;
    }
}
