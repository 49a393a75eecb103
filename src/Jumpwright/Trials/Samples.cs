using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>Plain questions to many samples, many at a time.</summary>
internal static class Samples
{
    /// <summary>The least; infinite where there is none.</summary>
    public static double Least(ReadOnlySpan<double> values)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        var least = new Vector<double>(double.PositiveInfinity);
        foreach (Vector<double> v in whole)
        {
            least = Vector.MinNative(least, v);
        }

        double result = double.PositiveInfinity;
        for (int k = 0; k < Vector<double>.Count; k++)
        {
            result = Math.Min(result, least[k]);
        }

        for (int i = whole.Length * Vector<double>.Count; i < values.Length; i++)
        {
            result = Math.Min(result, values[i]);
        }

        return result;
    }

    /// <summary>The greatest; minus infinity where there is none.</summary>
    public static double Greatest(ReadOnlySpan<double> values)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        var greatest = new Vector<double>(double.NegativeInfinity);
        foreach (Vector<double> v in whole)
        {
            greatest = Vector.MaxNative(greatest, v);
        }

        double result = double.NegativeInfinity;
        for (int k = 0; k < Vector<double>.Count; k++)
        {
            result = Math.Max(result, greatest[k]);
        }

        for (int i = whole.Length * Vector<double>.Count; i < values.Length; i++)
        {
            result = Math.Max(result, values[i]);
        }

        return result;
    }

    /// <summary>The difference of two lists, first less second, and a constant less.</summary>
    public static void Less(ReadOnlySpan<double> values, double constant, Span<double> into)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        Span<Vector<double>> to = MemoryMarshal.Cast<double, Vector<double>>(into);
        var by = new Vector<double>(constant);
        for (int i = 0; i < whole.Length && i < to.Length; i++)
        {
            to[i] = whole[i] - by;
        }

        for (int i = whole.Length * Vector<double>.Count; i < values.Length; i++)
        {
            into[i] = values[i] - constant;
        }
    }

    /// <summary>First sample from an index on that is above a level (or, asked so, not above it); the end where there is none.</summary>
    public static int First(ReadOnlySpan<double> values, int from, double level, bool above)
    {
        int i = from;
        var limit = new Vector<double>(level);
        int width = Vector<double>.Count;
        while (i + width <= values.Length)
        {
            var v = new Vector<double>(values.Slice(i, width));
            bool none = above ? !Vector.GreaterThanAny(v, limit) : Vector.GreaterThanAll(v, limit);
            if (!none)
            {
                break;
            }

            i += width;
        }

        while (i < values.Length && values[i] > level != above)
        {
            i++;
        }

        return i;
    }

    /// <summary>First sample from an index on that lies off the middle of its neighbours by at least so much.</summary>
    public static int NextBent(ReadOnlySpan<double> values, int from, double least)
    {
        int width = Vector<double>.Count;
        int i = from;
        var limit = new Vector<double>(2 * least);
        while (i + width < values.Length)
        {
            var v = new Vector<double>(values[i..]);
            Vector<double> bent = new Vector<double>(values[(i - 1)..]) + new Vector<double>(values[(i + 1)..]) - v - v;
            if (Vector.GreaterThanOrEqualAny(Vector.Abs(bent), limit))
            {
                break;
            }

            i += width;
        }

        while (i + 1 < values.Length && Math.Abs(values[i] - ((values[i - 1] + values[i + 1]) / 2)) < least)
        {
            i++;
        }

        return i;
    }

    /// <summary>First sample from an index on that lies more than a step below the one before; the end where there is none.</summary>
    public static int NextFall(ReadOnlySpan<double> values, int from, double step)
    {
        int width = Vector<double>.Count;
        int i = from;
        var limit = new Vector<double>(step);
        while (i + width <= values.Length)
        {
            Vector<double> fall = new Vector<double>(values[(i - 1)..]) - new Vector<double>(values[i..]);
            if (Vector.GreaterThanAny(fall, limit))
            {
                break;
            }

            i += width;
        }

        while (i < values.Length && !(values[i - 1] - values[i] > step))
        {
            i++;
        }

        return i;
    }

    /// <summary>The least step between neighbours that is more than nothing; infinite where there is none.</summary>
    public static double LeastStep(ReadOnlySpan<double> values, double nothing)
    {
        int width = Vector<double>.Count;
        var infinite = new Vector<double>(double.PositiveInfinity);
        var none = new Vector<double>(nothing);
        Vector<double> least = infinite;
        int i = 1;
        for (; i + width <= values.Length; i += width)
        {
            Vector<double> step = Vector.Abs(new Vector<double>(values[i..]) - new Vector<double>(values[(i - 1)..]));
            least = Vector.MinNative(least, Vector.ConditionalSelect(Vector.GreaterThan(step, none), step, infinite));
        }

        double result = double.PositiveInfinity;
        for (int k = 0; k < width; k++)
        {
            result = Math.Min(result, least[k]);
        }

        for (; i < values.Length; i++)
        {
            double step = Math.Abs(values[i] - values[i - 1]);
            result = step > nothing ? Math.Min(result, step) : result;
        }

        return result;
    }

    /// <summary>The greatest rise over so many samples that begins between two indices; not below nothing.</summary>
    public static double GreatestRise(ReadOnlySpan<double> values, int from, int until, int over)
    {
        double most = 0;
        for (int i = from; i < until; i++)
        {
            double rise = values[i + over] - values[i];
            most = rise > most ? rise : most;
        }

        return most;
    }

    /// <summary>Last sample that lies farther off a value than a band; −1 where there is none.</summary>
    public static int LastOff(ReadOnlySpan<double> values, double middle, double band)
    {
        int width = Vector<double>.Count;
        int end = values.Length;
        var centre = new Vector<double>(middle);
        var limit = new Vector<double>(band);
        while (
            end >= width
            && !Vector.GreaterThanAny(Vector.Abs(new Vector<double>(values.Slice(end - width, width)) - centre), limit)
        )
        {
            end -= width;
        }

        int last = end - 1;
        while (last >= 0 && Math.Abs(values[last] - middle) <= band)
        {
            last--;
        }

        return last;
    }

    /// <summary>What stands at an index once the values are in order; they are moved about (Hoare 1961).</summary>
    public static double Nth(Span<double> values, int index)
    {
        int low = 0;
        int high = values.Length - 1;
        while (low < high)
        {
            double pivot = Middle(values[low], values[(low + high) / 2], values[high]);
            int i = low;
            int j = high;
            while (i <= j)
            {
                while (values[i] < pivot)
                {
                    i++;
                }

                while (values[j] > pivot)
                {
                    j--;
                }

                if (i <= j)
                {
                    (values[i], values[j]) = (values[j], values[i]);
                    i++;
                    j--;
                }
            }

            if (index <= j)
            {
                high = j;
            }
            else if (index >= i)
            {
                low = i;
            }
            else
            {
                break;
            }
        }

        return values[index];
    }

    private static double Middle(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
}
