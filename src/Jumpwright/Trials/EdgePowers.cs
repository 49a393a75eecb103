using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// The powers of time that an edge of the force may follow, each with a bend beside it that is one power higher, and what of an edge's samples
/// they explain together.
/// </summary>
internal static class EdgePowers
{
    /// <summary>Powers tried: as many as fill a vector.</summary>
    public const int Count = 8;

    /// <summary>The least power, and from one to the next.</summary>
    public const double Least = 0.6;

    public const double Step = 0.2;

    /// <summary>So many steps of powers make one: a power and the bend beside it.</summary>
    public const int StepsToOne = 5;

    /// <summary>The usual power and its spread (house estimate: straight to a little round).</summary>
    private const double Usual = 1.2;

    private const double Spread = 0.35;

    /// <summary>How far the force bends away from its power within the part looked at, part of its top (house estimate).</summary>
    private const double Bend = 0.2;

    /// <summary>Logarithms farther below are lost in any sum, and a vector that holds one is reckoned number by number.</summary>
    private const double LeastLog = -700;

    private static readonly double[] AllPowers = [.. Enumerable.Range(0, Count).Select(p => Least + (p * Step))];

    private static readonly double[] PriorLogs =
    [
        .. AllPowers.Select(power => -Math.Pow((power - Usual) / Spread, 2) / 2),
    ];

    /// <summary>Every power, one beside the other.</summary>
    public static Vector512<double> All => Vector512.Create<double>(AllPowers);

    /// <summary>How usual each is (logarithms).</summary>
    public static Vector512<double> Prior => Vector512.Create<double>(PriorLogs);

    /// <summary>How usual one of them is (logarithm).</summary>
    public static double PriorOf(int power) => PriorLogs[power];

    /// <summary>A time to each power of an edge and on to those one higher; nothing before 0.</summary>
    public static void Of(double t, Span<double> into)
    {
        if (t <= 0)
        {
            into.Clear();
            return;
        }

        double log = Math.Log(t);
        double value = Math.Exp(Least * log);
        double ratio = Math.Exp(Step * log);
        for (int p = 0; p < into.Length; p++)
        {
            into[p] = value;
            value *= ratio;
        }
    }

    /// <summary>
    /// Half of what the normal equations of powers (a, d), their bends (c, e) and both (b) explain, less the logarithm of their determinant.
    /// </summary>
    public static Vector512<double> Explained(
        Vector512<double> a,
        Vector512<double> b,
        Vector512<double> c,
        Vector512<double> d,
        Vector512<double> e,
        double top
    )
    {
        double bend = 1 / (Bend * Bend * top * top);
        a += Vector512.Create(1e-4 * bend);
        c += Vector512.Create(bend);
        Vector512<double> det = (a * c) - (b * b);
        return ((((c * d * d) - (2 * b * d * e) + (a * e * e)) / det) - Vector512.Log(det)) / 2;
    }

    /// <summary>What logarithms not above 0 stand for.</summary>
    public static Vector512<double> Part(Vector512<double> logs) =>
        Vector512.Exp(Vector512.Max(logs, Vector512.Create(LeastLog)));
}
