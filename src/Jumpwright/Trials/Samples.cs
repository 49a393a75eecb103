using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>Plain questions to many samples, many at a time.</summary>
internal static class Samples
{
    /// <summary>The least; infinite where there is none.</summary>
    public static double Least(ReadOnlySpan<double> values) => Outermost<Lesser>(values);

    /// <summary>The greatest; minus infinity where there is none.</summary>
    public static double Greatest(ReadOnlySpan<double> values) => Outermost<Greater>(values);

    private static double Outermost<TOne>(ReadOnlySpan<double> values)
        where TOne : struct, IOneOfTwo
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        var first = new Vector<double>(TOne.None);
        Vector<double> second = first;
        Vector<double> third = first;
        Vector<double> fourth = first;
        int at = 0;
        // Four at a time, none of which waits for another.
        for (; at + 3 < whole.Length; at += 4)
        {
            first = TOne.Of(first, whole[at]);
            second = TOne.Of(second, whole[at + 1]);
            third = TOne.Of(third, whole[at + 2]);
            fourth = TOne.Of(fourth, whole[at + 3]);
        }

        first = TOne.Of(TOne.Of(first, second), TOne.Of(third, fourth));
        for (; at < whole.Length; at++)
        {
            first = TOne.Of(first, whole[at]);
        }

        double result = TOne.None;
        for (int k = 0; k < Vector<double>.Count; k++)
        {
            result = TOne.Of(result, first[k]);
        }

        for (int i = whole.Length * Vector<double>.Count; i < values.Length; i++)
        {
            result = TOne.Of(result, values[i]);
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

    /// <summary>
    /// How rough samples are, in one look: twice the farthest that one lies off the middle of its neighbours, the steepest fall
    /// from one to the next, and the least step between neighbours that is more than nothing (infinite where there is none).
    /// </summary>
    public static (double Bent, double Fall, double Step) Roughness(ReadOnlySpan<double> values, double nothing)
    {
        int width = Vector<double>.Count;
        var infinite = new Vector<double>(double.PositiveInfinity);
        var none = new Vector<double>(nothing);
        Vector<double> bent = Vector<double>.Zero;
        Vector<double> fall = -infinite;
        Vector<double> least = infinite;
        int i = 1;
        for (; i + width < values.Length; i += width)
        {
            var v = new Vector<double>(values[i..]);
            var before = new Vector<double>(values[(i - 1)..]);
            bent = Vector.MaxNative(bent, Vector.Abs(before + new Vector<double>(values[(i + 1)..]) - v - v));
            fall = Vector.MaxNative(fall, before - v);
            Vector<double> step = Vector.Abs(before - v);
            least = Vector.MinNative(least, Vector.ConditionalSelect(Vector.GreaterThan(step, none), step, infinite));
        }

        (double mostBent, double mostFall, double leastStep) = (0, double.NegativeInfinity, double.PositiveInfinity);
        for (int k = 0; k < width; k++)
        {
            mostBent = Math.Max(mostBent, bent[k]);
            mostFall = Math.Max(mostFall, fall[k]);
            leastStep = Math.Min(leastStep, least[k]);
        }

        for (; i < values.Length; i++)
        {
            double down = values[i - 1] - values[i];
            double up = i + 1 < values.Length ? values[i + 1] - values[i] : -down;
            mostBent = Math.Max(mostBent, Math.Abs(down + up));
            mostFall = Math.Max(mostFall, down);
            leastStep = Math.Abs(down) > nothing ? Math.Min(leastStep, Math.Abs(down)) : leastStep;
        }

        return (mostBent, mostFall, leastStep);
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

    /// <summary>
    /// What stands at an index once the values are in order; they are moved about (Hoare 1961). What is less than the pivot is
    /// brought to the front by an exchange for every value, wanted or not: no branch that a processor could guess wrong.
    /// </summary>
    public static double Nth(Span<double> values, int index)
    {
        while (true)
        {
            double pivot = Middle(values[0], values[values.Length / 2], values[^1]);
            int less = Front(values, pivot, orEqual: false);
            if (index < less)
            {
                values = values[..less];
                continue;
            }

            values = values[less..];
            index -= less;
            if (less > 0)
            {
                continue;
            }

            // Nothing is less than the pivot: those that equal it are next in order.
            int equal = Front(values, pivot, orEqual: true);
            if (index < equal || equal == 0)
            {
                // Also where a value is no number: nothing is in order then.
                return pivot;
            }

            values = values[equal..];
            index -= equal;
        }
    }

    /// <summary>Brings to the front what is less than a pivot, or not more than it; gives how many those are.</summary>
    private static int Front(Span<double> values, double pivot, bool orEqual)
    {
        int front = 0;
        // Not more than the pivot is less than the number after it.
        double limit = orEqual ? Math.BitIncrement(pivot) : pivot;
        for (int i = 0; i < values.Length; i++)
        {
            double v = values[i];
            values[i] = values[front];
            values[front] = v;
            front += v < limit ? 1 : 0;
        }

        return front;
    }

    private static double Middle(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));

    private interface IOneOfTwo
    {
        static abstract double None { get; }
        static abstract double Of(double a, double b);
        static abstract Vector<double> Of(Vector<double> a, Vector<double> b);
    }

    private readonly struct Lesser : IOneOfTwo
    {
        public static double None => double.PositiveInfinity;

        public static double Of(double a, double b) => Math.Min(a, b);

        public static Vector<double> Of(Vector<double> a, Vector<double> b) => Vector.MinNative(a, b);
    }

    private readonly struct Greater : IOneOfTwo
    {
        public static double None => double.NegativeInfinity;

        public static double Of(double a, double b) => Math.Max(a, b);

        public static Vector<double> Of(Vector<double> a, Vector<double> b) => Vector.MaxNative(a, b);
    }
}
