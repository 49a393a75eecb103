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
    private const double EdgePart = 0.006;

    /// <summary>Part of the load up to which the edge is taken to be straight.</summary>
    private const double StraightPart = 0.15;

    private const double StraightS = 0.012;

    /// <summary>How far inside an edge its steep part is looked for, s.</summary>
    private const double InsideS = 0.03;

    /// <summary>From so many samples on, and so far above noise, an edge is drawn as a curve.</summary>
    private const int CurveSamples = 6;

    private const double CurveNoises = 15;

    /// <summary>What the unknown shape of an edge below its straight part leaves open, s.</summary>
    private const double EdgeShapeS = 0.00008;

    /// <summary>The line of an edge is not believed farther out than this, s.</summary>
    private const double FarthestS = 0.006;

    /// <summary>Where the unrest of the empty plate is looked at, from and to this long beyond an edge, s.</summary>
    private const double UnrestFromS = 0.002;

    private const double UnrestToS = 0.035;

    /// <summary>From 10 % of the load to nothing an edge takes no longer than this, s.</summary>
    private const double LongestEdgeS = 0.03;

    /// <summary>A plate rings harder at the edge than a little after it.</summary>
    private const double RingingGrowth = 1.5;

    /// <summary>So many times the quiet level, unrest is ringing.</summary>
    private const double RingingShows = 1.5;

    /// <summary>Part of the load above which no level is raised.</summary>
    private const double HighestPart = 0.35;

    /// <summary>An edge that ends so much flatter than it falls above has run into the plate's ringing.</summary>
    private const double RingingSlopePart = 0.55;

    /// <summary>Two readings of one edge on a ringing plate agree within this and their doubt, s.</summary>
    private const double RingingAgreesS = 0.0005;

    /// <summary>No edge trails off so long beyond where its steeper part points, s.</summary>
    private const double TrailsS = 0.002;

    /// <summary>Nor may it where ringing leaves the edge no surer than this, s.</summary>
    private const double MostRingingS = 0.0016;

    /// <summary>Nor where all that speaks for an edge leaves it no surer than this: two of them move a height by a centimetre, s.</summary>
    private const double MostUnsureS = 0.0024;

    /// <summary>Farther apart, nothing that rests on the edge may be decided from (25 mm/s of take-off velocity), s.</summary>
    private const double UnsettledS = 0.0025;

    /// <summary>Where the zero near an edge is read, from and to this long beyond it, s; how far off it may be, N.</summary>
    private const double LocalFromS = 0.012;

    private const double LocalToS = 0.08;
    private const double LocalMostN = 8;

    /// <summary>Unrest is the greatest of some dozen samples: so many standard deviations of one.</summary>
    private const double UnrestNoises = 2.5;

    /// <summary>Ringing is no white noise: so much of it, over the steepness of an edge, moves the edge (house estimate, held by validation).</summary>
    private const double RingingMoves = 0.35;

    private const double SteepS = 0.005;

    /// <summary>How soon after a take-off a plate swings below nothing, s; how long it may take to follow, s.</summary>
    private const double SwingS = 0.008;

    private const double LongestSwingS = 0.0015;

    /// <summary>So much of that moves an edge (house estimate, held by validation).</summary>
    private const double SwingMoves = 0.8;

    /// <summary>So far a zero wanders from its mean, N (house estimate).</summary>
    private const double LocalN = 0.7;

    /// <summary>The contacts in order of time.</summary>
    /// <param name="forceN">Total force, zero not corrected, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="levels">Rough levels of the plate.</param>
    /// <param name="emptyNoiseN">Deviation of the empty plate's samples, N; null for a first look.</param>
    public static List<Contact> Contacts(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double? emptyNoiseN = null
    )
    {
        double loaded = levels.ZeroN + Math.Max(Math.Max(LoadedPart * levels.LoadN, 6 * levels.NoiseN), 15);
        List<Stretch> runs = Runs(forceN, loaded, Math.Max((int)(ShortestRunS * rateHz), 4));
        var contacts = new List<Contact>(runs.Count);
        foreach (Stretch run in runs)
        {
            Instant? touchDown = run.From == 0 ? null : Edge(forceN, rateHz, run.From, -1, levels, emptyNoiseN);
            Instant? takeOff =
                run.To == forceN.Length ? null : Edge(forceN, rateHz, run.To - 1, +1, levels, emptyNoiseN);
            contacts.Add(new Contact(run, touchDown, takeOff));
        }

        if (emptyNoiseN is { } noise && Swing(forceN, rateHz, levels, noise, contacts) is > 0 and var swingS)
        {
            for (int k = 0; k < contacts.Count; k++)
            {
                contacts[k] = contacts[k] with
                {
                    TouchDown = Widened(contacts[k].TouchDown, swingS),
                    TakeOff = Widened(contacts[k].TakeOff, swingS),
                };
            }
        }

        return contacts;
    }

    private static Instant? Widened(Instant? instant, double swingS) =>
        instant is { } it
            ? it with
            {
                UncertaintyS = PushMeasures.Quadrature(it.UncertaintyS, SwingMoves * swingS),
            }
            : null;

    /// <summary>
    /// How long a plate takes to follow an edge, s: after a take-off it swings below nothing by the edge's steepness times that.
    /// Nobody pulls a plate up, so that every dip is the plate's own; its touch-downs are seen through the same swing.
    /// </summary>
    private static double Swing(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double noiseN,
        List<Contact> contacts
    )
    {
        double sum = 0;
        int n = 0;
        foreach (Contact contact in contacts)
        {
            if (contact.TakeOff is not { } takeOff)
            {
                continue;
            }

            int first = (int)Math.Ceiling(takeOff.Sample);
            double dip = 0;
            for (int i = first; i < Math.Min(first + Math.Max((int)(SwingS * rateHz), 2), forceN.Length); i++)
            {
                dip = Math.Max(dip, levels.ZeroN - forceN[i]);
            }

            dip = Math.Max(dip - (3 * noiseN), 0);
            sum += Math.Min(dip / Steepness(forceN, rateHz, first, 1, levels), LongestSwingS);
            n++;
        }

        return n == 0 ? 0 : sum / n;
    }

    private static List<Stretch> Runs(ReadOnlySpan<double> forceN, double loaded, int shortest)
    {
        var runs = new List<Stretch>();
        for (int i = 0; i < forceN.Length; )
        {
            int from = Samples.First(forceN, i, loaded, above: true);
            i = Samples.First(forceN, from, loaded, above: false);
            if (i > from)
            {
                runs.Add(new Stretch(from, i));
            }
        }

        // A short contact right before a long one is the first touch of a landing; any other is the plate ringing.
        for (int k = runs.Count - 1; k >= 0; k--)
        {
            // A recording may begin with the last of a contact or end with the first of a landing.
            bool cut = (runs[k].From == 0 || runs[k].To == forceN.Length) && runs[k].Length >= 3;
            if (runs[k].Length >= shortest || cut)
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
    private static Instant Edge(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double? emptyNoiseN
    )
    {
        double quiet = Math.Max(Math.Max(4 * levels.NoiseN, EdgePart * levels.LoadN), 4);
        double unrest = RingingGrowth * Unrest(forceN, rateHz, last, way, levels.ZeroN, quiet);
        double low = Math.Max(quiet, Math.Min(unrest, HighestPart * levels.LoadN));
        if (
            unrest < RingingShows * quiet
            && emptyNoiseN is { } empty
            && FirstBelow(forceN, rateHz, last, way, levels, levels.ZeroN + low) is { } first
            && unrest / RingingGrowth is var beyond
            && Math.Max(empty, beyond / UnrestNoises) is var noise
            && EdgeFit.Of(
                forceN,
                rateHz,
                first,
                way,
                LocalZero(forceN, rateHz, first, way, levels.ZeroN, noise),
                noise,
                levels.LoadN
            )
                is { } fitted
        )
        {
            double rings = Math.Sqrt(Math.Max((beyond * beyond) - (9 * empty * empty), 0));
            double u = PushMeasures.Quadrature(
                fitted.UncertaintyS,
                RingingMoves * rings / Steepness(forceN, rateHz, first, way, levels)
            );
            return fitted with { UncertaintyS = u, Unsettled = u > MostUnsureS };
        }

        Instant edge = EdgeAbove(forceN, rateHz, last, way, levels, levels.ZeroN + low, out double slope);

        // On a ringing plate the last samples may be the plate's, not the person's: what the force farther up says must agree.
        double higher = Math.Min(2 * low, HighestPart * levels.LoadN);
        Instant upper = EdgeAbove(forceN, rateHz, last, way, levels, levels.ZeroN + higher, out double steeper);
        double apart = Math.Abs(edge.Sample - upper.Sample) / rateHz;
        bool agree = apart <= RingingAgreesS + (3 * PushMeasures.Quadrature(edge.UncertaintyS, upper.UncertaintyS));
        if (unrest < RingingShows * quiet)
        {
            // A quiet plate: an edge may well flatten at its end, but not for so long.
            return apart <= TrailsS
                ? edge
                : edge with
                {
                    UncertaintyS = Math.Max(edge.UncertaintyS, apart / 2),
                    Unsettled = apart > UnsettledS,
                };
        }

        if (agree)
        {
            return edge with { Unsettled = edge.UncertaintyS > MostRingingS };
        }

        return slope > RingingSlopePart * steeper && apart <= UnsettledS
            ? edge with
            {
                UncertaintyS = Math.Max(edge.UncertaintyS, apart / 3),
                Unsettled = edge.UncertaintyS > MostRingingS,
            }
            : upper with
            {
                UncertaintyS = Math.Max(upper.UncertaintyS, apart / 3),
                Unsettled = apart > UnsettledS,
            };
    }

    /// <summary>The same with a given level below which the edge is not believed, N.</summary>
    private static Instant EdgeAbove(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double low,
        out double slope
    )
    {
        double step = 1 / rateHz;
        slope = 0;
        if (FirstBelow(forceN, rateHz, last, way, levels, low) is not { } i)
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
        double skkk = 0;
        double skkkk = 0;
        double skkf = 0;
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
            skkk += (double)k * k * k;
            skkkk += (double)k * k * k * k;
            skkf += (double)k * k * forceN[j];
        }

        double inner = forceN[Math.Clamp(i - way, 0, forceN.Length - 1)];
        double crossing = inner > forceN[i] ? Math.Clamp((low - forceN[i]) / (inner - forceN[i]), 0, 1) : 0.5;
        slope = n < 2 ? 0 : ((n * skf) - (sk * sf)) / ((n * skk) - (sk * sk));
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
        double curved = 1;
        if (n >= CurveSamples && top - low > CurveNoises * Math.Max(levels.NoiseN, 0.1))
        {
            // Many samples on a slow edge: it curves, and a straight line would miss where it ends.
            double root = Root(
                n,
                sk,
                skk,
                skkk,
                skkkk,
                sf - (n * levels.ZeroN),
                skf - (sk * levels.ZeroN),
                skkf - (skk * levels.ZeroN)
            );
            k0 = double.IsNaN(root) ? k0 : root;
            curved = 2.5;
        }

        double outermost = Math.Max(-(low - levels.ZeroN) / slope, -FarthestS * rateHz);
        double k1 = Math.Clamp(k0, Math.Min(outermost, 0), 1);
        double middle = (sk / n) - k0;
        double spread = Math.Max(skk - (sk * sk / n), 0.5);
        double noise = curved * Math.Max(levels.NoiseN, 0.3) / slope * Math.Sqrt((1 / n) + (middle * middle / spread));
        // A curved edge bends away from its straight part; between two samples a corner may hide.
        double bend = 0.04 * (1 - k1);
        double u = PushMeasures.Quadrature(
            Math.Sqrt((noise * noise) + (bend * bend) + (corner * corner)) * step,
            EdgeShapeS
        );
        return new Instant(i - (way * k1), Math.Min(u, 0.01));
    }

    /// <summary>From well inside an edge outwards to the first sample below a level; null where the recording ends before.</summary>
    private static int? FirstBelow(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double low
    )
    {
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

        return i < 0 || i >= forceN.Length ? null : i;
    }

    /// <summary>How steep an edge is at its end, N/s, over five milliseconds.</summary>
    private static double Steepness(ReadOnlySpan<double> forceN, double rateHz, int first, int way, PlateLevels levels)
    {
        int over = Math.Max((int)Math.Round(SteepS * rateHz), 1);
        double inside = forceN[Math.Clamp(first - (way * (over + 1)), 0, forceN.Length - 1)] - levels.ZeroN;
        return Math.Max(inside, 0.02 * levels.LoadN) * rateHz / (over + 1);
    }

    /// <summary>The empty plate's reading near an edge, N: it may have wandered from its mean.</summary>
    private static double LocalZero(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int first,
        int way,
        double zeroN,
        double noiseN
    )
    {
        double sum = 0;
        int n = 0;
        int far = (int)(LocalToS * rateHz);
        double most = Math.Max(5 * noiseN, LocalMostN);
        for (int k = (int)(LocalFromS * rateHz); k <= far; k++)
        {
            int i = first + (way * k);
            if (i < 0 || i >= forceN.Length || Math.Abs(forceN[i] - zeroN) > most)
            {
                break;
            }

            sum += forceN[i] - zeroN;
            n++;
        }

        double local = Math.Max(noiseN * noiseN, 0.01) * 2;
        return zeroN + (sum / (n + (local / (LocalN * LocalN))));
    }

    /// <summary>Where the least-squares parabola through the sums of an edge meets zero, going outwards; NaN where it is no edge.</summary>
    private static double Root(double n, double s1, double s2, double s3, double s4, double y0, double y1, double y2)
    {
        double d0 = (s2 * s4) - (s3 * s3);
        double d1 = (s1 * s4) - (s2 * s3);
        double d2 = (s1 * s3) - (s2 * s2);
        double det = (n * d0) - (s1 * d1) + (s2 * d2);
        double a = ((y0 * d0) - (y1 * d1) + (y2 * d2)) / det;
        double b = ((-y0 * d1) + (y1 * ((n * s4) - (s2 * s2))) - (y2 * ((n * s3) - (s1 * s2)))) / det;
        double c = ((y0 * d2) - (y1 * ((n * s3) - (s1 * s2))) + (y2 * ((n * s2) - (s1 * s1)))) / det;
        double reach = (b * b) - (4 * a * c);
        if (!(b > 0) || !double.IsFinite(c))
        {
            return double.NaN;
        }

        // Beyond its own turning point the parabola says nothing: the edge ends there at the latest.
        return reach <= 0 ? -b / (2 * c) : -2 * a / (b + Math.Sqrt(reach));
    }

    /// <summary>Greatest deviation from zero on the empty side of an edge, N, once the edge itself has ended.</summary>
    private static double Unrest(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        double zeroN,
        double low
    )
    {
        int ended = last + way;
        int most = (int)(LongestEdgeS * rateHz);
        for (int k = 1; k <= most && ended >= 0 && ended < forceN.Length && forceN[ended] - zeroN >= low; k++)
        {
            ended += way;
        }

        int near = Math.Max((int)(UnrestFromS * rateHz), 1);
        int far = (int)(UnrestToS * rateHz);
        double unrest = 0;
        for (int k = near; k <= far; k++)
        {
            int i = ended + (way * k);
            if (i < 0 || i >= forceN.Length)
            {
                break;
            }

            unrest = Math.Max(unrest, Math.Abs(forceN[i] - zeroN));
        }

        return unrest;
    }
}
