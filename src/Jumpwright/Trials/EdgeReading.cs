namespace Jumpwright.Trials;

/// <summary>Reads one edge of the force, by the fit of its power where the plate is quiet, else by its straight part.</summary>
internal static class EdgeReading
{
    /// <summary>Part of the load at which an edge is said to be reached, where noise asks for no more.</summary>
    private const double EdgePart = 0.006;

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

    /// <summary>An edge read no surer than this is looked for anew, s.</summary>
    private const double SureS = 0.0015;

    /// <summary>How far an edge goes on below what an export cut off, nobody sees: so much of what its slope says stays open (house estimate).</summary>
    private const double CutOpen = 0.6;

    /// <summary>Unrest is the greatest of some dozen samples: so many standard deviations of one.</summary>
    private const double UnrestNoises = 2.5;

    /// <summary>Ringing is no white noise: so much of it, over the steepness of an edge, moves the edge (house estimate, held by validation).</summary>
    private const double RingingMoves = 0.35;

    /// <summary>
    /// Where the force of a contact meets zero, walking from its outermost loaded sample away from it. What the empty side
    /// shows right after (a plate rings, mains hum) raises the level below which the edge is not believed; from there the
    /// edge's straight part is drawn on to zero.
    /// </summary>
    public static Instant Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double? emptyNoiseN
    )
    {
        Instant read = Read(forceN, rateHz, last, way, levels, emptyNoiseN);
        return
            levels.CutN > 0
            && EdgeSurroundings.FirstBelow(forceN, rateHz, last, way, levels, levels.ZeroN + levels.CutN) is { } first
            ? read with
            {
                UncertaintyS = PushMeasures.Quadrature(
                    read.UncertaintyS,
                    CutOpen * levels.CutN / EdgeSurroundings.Steepness(forceN, rateHz, first, way, levels)
                ),
            }
            : read;
    }

    private static Instant Read(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double? emptyNoiseN
    )
    {
        double quiet = Quiet(levels);
        double unrest = RingingGrowth * EdgeSurroundings.Unrest(forceN, rateHz, last, way, levels.ZeroN, quiet);
        double low = Math.Max(quiet, Math.Min(unrest, HighestPart * levels.LoadN));
        if (
            unrest < RingingShows * quiet
            && emptyNoiseN is { } empty
            && EdgeSurroundings.FirstBelow(forceN, rateHz, last, way, levels, levels.ZeroN + low) is { } first
            && unrest / RingingGrowth is var beyond
            && Math.Max(empty, beyond / UnrestNoises) is var noise
            && EdgeFit.Of(
                new EdgeSide(
                    first,
                    way,
                    EdgeSurroundings.LocalZero(forceN, rateHz, first, way, levels.ZeroN, noise),
                    noise,
                    levels.LoadN
                ),
                forceN,
                rateHz
            )
                is { } fitted
        )
        {
            double rings = Math.Sqrt(Math.Max((beyond * beyond) - (9 * empty * empty), 0));
            double u = PushMeasures.Quadrature(
                fitted.UncertaintyS,
                RingingMoves * rings / EdgeSurroundings.Steepness(forceN, rateHz, first, way, levels)
            );
            return fitted with { UncertaintyS = u, Unsettled = fitted.Unsettled || u > MostUnsureS };
        }

        Instant edge = StraightEdge.Above(forceN, rateHz, last, way, levels, levels.ZeroN + low, out double slope);

        // On a ringing plate the last samples may be the plate's, not the person's: what the force farther up says must agree.
        bool isQuiet = unrest < RingingShows * quiet;
        double higher = Math.Min(
            Math.Max(2 * low, isQuiet ? EdgeWindow.LeastTopPart * levels.LoadN : 0),
            HighestPart * levels.LoadN
        );
        Instant upper = StraightEdge.Above(
            forceN,
            rateHz,
            last,
            way,
            levels,
            levels.ZeroN + higher,
            out double steeper
        );
        double apart = Math.Abs(edge.Sample - upper.Sample) / rateHz;
        bool agree = apart <= RingingAgreesS + (3 * PushMeasures.Quadrature(edge.UncertaintyS, upper.UncertaintyS));
        if (isQuiet)
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

    /// <summary>
    /// The edge as samples to be held against a plate that swings: from where its force is surely above the swing; null where the
    /// recording ends before.
    /// </summary>
    public static EdgeSide? Swinging(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Instant seen,
        int last,
        int way,
        PlateLevels levels,
        double noiseN,
        double beyondN,
        double ringingN
    )
    {
        // Where the noise is as loud as the force, the quiet level lies above the highest.
        double low = levels.ZeroN + Math.Max(Math.Min(beyondN, HighestPart * levels.LoadN), Quiet(levels));
        return EdgeSurroundings.FirstBelow(forceN, rateHz, last, way, levels, low) is { } first
            ? new EdgeSide(
                first,
                way,
                EdgeSurroundings.LocalZero(forceN, rateHz, first, way, levels.ZeroN, noiseN),
                noiseN,
                levels.LoadN,
                ringingN,
                seen.Unsettled || seen.UncertaintyS > SureS ? double.NaN : way * (first - seen.Sample),
                seen.UncertaintyS * rateHz
            )
            : null;
    }

    /// <summary>The level from which an edge on a quiet plate is believed, N above zero.</summary>
    private static double Quiet(PlateLevels levels) =>
        Math.Max(Math.Max(4 * levels.NoiseN, EdgePart * levels.LoadN), 4);
}
