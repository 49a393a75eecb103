namespace Jumpwright.Trials;

/// <summary>
/// The end of a landing within the still stretch after it: the centre of mass still creeps up to its standing height, ever slower,
/// and for as long the force falls a little short of the weight. How much is one unknown more of the stretch, in newtons at its beginning.
/// </summary>
/// <param name="Window">The still stretch.</param>
/// <param name="Shape">What a tail of one newton gives to the equations of that stretch.</param>
/// <param name="Squares">Sum of the squares of its block means.</param>
/// <param name="WithForce">Sum of its block means times those of the force less a weight, N.</param>
internal sealed record LandingTail(int Window, StillEquations Shape, double Squares, double WithForce)
{
    /// <summary>
    /// It fades by 1/e in so long, s (house estimate). Of the two-footed drop landings of Adams 2020
    /// (doi:10.6084/m9.figshare.12231089), eight that stood on quietly still rose at 3 to 18 mm/s, 1.4 to 2.4 s after they landed, by
    /// their force against that of their later standing.
    /// </summary>
    public const double FadesS = 0.7;

    /// <summary>How fast the centre of mass usually still rises where a still stretch begins, and the spread of it, m/s (house estimate from the same).</summary>
    private const double UsualMS = 0.003;

    private const double SpreadMS = 0.004;

    /// <summary>Force of a usual tail at its beginning, N.</summary>
    public static double UsualN(double massKg) => -massKg * UsualMS / FadesS;

    /// <summary>Spread of that, N.</summary>
    public static double SpreadN(double massKg) => massKg * SpreadMS / FadesS;

    /// <summary>The tail of a still stretch.</summary>
    /// <param name="window">Which stretch.</param>
    /// <param name="blocks">Its force.</param>
    /// <param name="firstSample">Where it begins, sample.</param>
    /// <param name="dt">Seconds a sample.</param>
    /// <param name="weightN">The weight that its equations count from, N.</param>
    /// <param name="scratch">Room.</param>
    public static LandingTail Of(
        int window,
        StillBlocks blocks,
        int firstSample,
        double dt,
        double weightN,
        Scratch scratch
    )
    {
        double[] force = blocks.MeanN;
        var shape = new double[force.Length];
        double first = blocks.MiddleSample - ((force.Length - 1) * blocks.BlockSamples / 2.0) - firstSample;
        double squares = 0;
        double with = 0;
        for (int k = 0; k < shape.Length; k++)
        {
            shape[k] = Math.Exp(-(first + (k * blocks.BlockSamples)) * dt / FadesS);
            squares += shape[k] * shape[k];
            with += shape[k] * (force[k] - weightN);
        }

        return new LandingTail(window, StillEquations.Of(blocks with { MeanN = shape }, dt, 0, scratch), squares, with);
    }
}
