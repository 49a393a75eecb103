using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>Integrals of a force that is straight between its samples.</summary>
internal static class ForceSums
{
    /// <summary>Sum of the samples.</summary>
    public static double Total(ReadOnlySpan<double> forceN)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(forceN);
        Vector<double> a = Vector<double>.Zero;
        Vector<double> b = Vector<double>.Zero;
        int i = 0;
        for (; i + 1 < whole.Length; i += 2)
        {
            a += whole[i];
            b += whole[i + 1];
        }

        if (i < whole.Length)
        {
            a += whole[i];
        }

        double sum = Vector.Sum(a + b);
        for (int k = whole.Length * Vector<double>.Count; k < forceN.Length; k++)
        {
            sum += forceN[k];
        }

        return sum;
    }

    /// <summary>Sum of the squared differences from a value.</summary>
    public static double Squares(ReadOnlySpan<double> forceN, double from)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(forceN);
        var middle = new Vector<double>(from);
        Vector<double> squares = Vector<double>.Zero;
        foreach (Vector<double> v in whole)
        {
            Vector<double> off = v - middle;
            squares += off * off;
        }

        double sum = Vector.Sum(squares);
        for (int k = whole.Length * Vector<double>.Count; k < forceN.Length; k++)
        {
            sum += (forceN[k] - from) * (forceN[k] - from);
        }

        return sum;
    }

    /// <summary>
    /// Impulse from one sample to another, N s, and the double integral to the same, N s²; the second sample may be the earlier.
    /// </summary>
    public static (double Impulse, double Moved) Between(ReadOnlySpan<double> forceN, int from, int to, double stepS)
    {
        if (from == to)
        {
            return (0, 0);
        }

        bool back = to < from;
        int first = Math.Min(from, to);
        int count = Math.Abs(to - from);
        ReadOnlySpan<double> inner = forceN.Slice(first + 1, count - 1);
        (double sum, double early) = Moments(inner);
        // Each inner sample moves for as long as is left from it to the end, on either way.
        double moments = back ? early + sum : (count * sum) - (early + sum);
        double moved = moments + (forceN[from] * (((count - 1) / 2.0) + (1.0 / 3))) + (forceN[to] / 6);
        double impulse = (sum + ((forceN[from] + forceN[to]) / 2)) * stepS;
        return (back ? -impulse : impulse, moved * stepS * stepS);
    }

    /// <summary>Sum of values and of values times their index.</summary>
    private static (double Sum, double ByIndex) Moments(ReadOnlySpan<double> values)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        Vector<double> sum = Vector<double>.Zero;
        Vector<double> product = Vector<double>.Zero;
        Vector<double> index = Vector.CreateSequence(0.0, 1.0);
        var step = new Vector<double>(Vector<double>.Count);
        foreach (Vector<double> v in whole)
        {
            sum += v;
            product += v * index;
            index += step;
        }

        double total = Vector.Sum(sum);
        double byIndex = Vector.Sum(product);
        for (int k = whole.Length * Vector<double>.Count; k < values.Length; k++)
        {
            total += values[k];
            byIndex += k * values[k];
        }

        return (total, byIndex);
    }
}
