using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>
/// How a spring and damper of unit frequency passes on a force that begins (touch-down) or ends (take-off) at its edge and is time from
/// there to a power. Time is in radians of the swing, so that one table serves all frequencies; tables are made when first asked for.
/// </summary>
internal static class SpringAnswer
{
    /// <summary>Powers of time in a row: those of an edge and those one higher, which share columns.</summary>
    public const int Columns = 16;

    /// <summary>Rows a radian.</summary>
    public const int Rows = 8;

    /// <summary>Radians that a table reaches inwards of an edge and beyond it.</summary>
    private const int Inside = 120;

    private const int Beyond = 120;

    /// <summary>Steps of the reckoning between rows.</summary>
    private const int Between = 4;

    /// <summary>So long before its innermost row a take-off's force is taken to have begun, radians.</summary>
    private const int RunUp = 30;

    /// <summary>Row of a take-off's table that stands for the edge itself; a touch-down's begins with it, for nothing is before.</summary>
    public const int EdgeRow = Beyond * Rows;

    public const int LastRow = EdgeRow + (Inside * Rows);

    private const double LeastDamping = 0.025;
    private const double DampingRatio = 1.2;

    /// <summary>How many dampings there are.</summary>
    public const int Dampings = 15;

    private static readonly double[]?[] TakeOffs = new double[]?[Dampings];
    private static readonly double[]?[] TouchDowns = new double[]?[Dampings];

    public static double Damping(int index) => LeastDamping * Math.Pow(DampingRatio, index);

    public static int Nearest(double damping) =>
        Math.Clamp((int)Math.Round(Math.Log(damping / LeastDamping) / Math.Log(DampingRatio)), 0, Dampings - 1);

    /// <summary>Rows from the outermost inwards, for +1 a take-off or −1 a touch-down.</summary>
    public static ReadOnlySpan<double> Table(int damping, int way)
    {
        ref double[]? table = ref (way > 0 ? TakeOffs : TouchDowns)[damping];
        double[] known = Volatile.Read(ref table) ?? Made(Damping(damping), way);
        Volatile.Write(ref table, known);
        return known;
    }

    private static double[] Made(double damping, int way)
    {
        double[] table = new double[(((Beyond + Inside) * Rows) + 2) * Columns];
        int width = Columns / Vector<double>.Count;
        const int perRadian = Rows * Between;
        double k = 2.0 * perRadian;
        double a0 = (k * k) + (2 * damping * k) + 1;
        double a1 = (2 - (2 * k * k)) / a0;
        double a2 = ((k * k) - (2 * damping * k) + 1) / a0;
        double gain = 1 / a0;
        Span<double> state = stackalloc double[5 * Columns];
        state.Clear();
        Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(state);
        Span<Vector<double>> rows = MemoryMarshal.Cast<double, Vector<double>>(table.AsSpan());
        // Time runs outwards at a take-off, inwards at a touch-down; steps are counted inwards from the edge.
        int first = way > 0 ? (Inside + RunUp) * perRadian : 0;
        int end = way > 0 ? -EdgeRow * Between : ((Inside * Rows) + 1) * Between;
        if (way > 0)
        {
            // The force has long been smooth: the answer lags behind it by 2ζ radians.
            for (int back = 0; back < 2; back++)
            {
                double t = (double)(first + 1 + back) / perRadian;
                EdgePowers.Of(t, state.Slice(back * Columns, Columns));
                EdgePowers.Of(t + (2 * damping), state.Slice((2 + back) * Columns, Columns));
            }
        }

        for (int step = first; step != end - way; step -= way)
        {
            EdgePowers.Of((double)step / perRadian, state.Slice(4 * Columns, Columns));
            (int row, int between) = Math.DivRem(step, Between);
            for (int v = 0; v < width; v++)
            {
                Vector<double> x = s[(4 * width) + v];
                Vector<double> x1 = s[v];
                Vector<double> x2 = s[width + v];
                Vector<double> y1 = s[(2 * width) + v];
                Vector<double> y2 = s[(3 * width) + v];
                Vector<double> y = ((x + x1 + x1 + x2) * gain) - (y1 * a1) - (y2 * a2);
                (s[v], s[width + v], s[(2 * width) + v], s[(3 * width) + v]) = (x, x1, y, y1);
                if (between == 0 && row <= (Inside * Rows) + 1)
                {
                    rows[((EdgeRow + row) * width) + v] = y;
                }
            }
        }

        return table;
    }
}
