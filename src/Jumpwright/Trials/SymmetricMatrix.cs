using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>Small symmetric matrices whose size is a multiple of every vector's, row by row in a span; and vectors of any length.</summary>
internal static class SymmetricMatrix
{
    /// <summary>
    /// Turns a positive matrix into its inverse, in place; gives the logarithm of its determinant. (Gauss–Jordan without
    /// pivoting, which positive matrices never need.)
    /// </summary>
    public static double Invert(Span<double> matrix, int size)
    {
        double product = 1;
        double log = 0;
        int width = size / Vector512<double>.Count;
        Span<Vector512<double>> all = MemoryMarshal.Cast<double, Vector512<double>>(matrix[..(size * size)]);
        Span<Vector512<double>> row = stackalloc Vector512<double>[width];
        Span<double> factors = stackalloc double[size];
        for (int p = 0; p < size; p++)
        {
            double pivot = Math.Max(matrix[(p * size) + p], 1e-300);
            product *= pivot;
            if (product is > 1e200 or < 1e-200)
            {
                log += Math.Log(product);
                product = 1;
            }

            for (int i = 0, of = p; i < size; i++, of += size)
            {
                factors[i] = matrix[of];
                matrix[of] = 0;
            }

            factors[p] = 0;
            matrix[(p * size) + p] = 1;
            Vector512<double> inverse = Vector512.Create(1 / pivot);
            for (int j = 0; j < row.Length; j++)
            {
                row[j] = all[(p * width) + j] * inverse;
            }

            // A column of vectors at a time: the row's part stays where it is fastest.
            for (int j = 0; j < row.Length; j++)
            {
                Vector512<double> part = row[j];
                for (int i = 0, at = j; i < factors.Length; i++, at += width)
                {
                    all[at] -= part * factors[i];
                }
            }

            row.CopyTo(all.Slice(p * width, width));
        }

        return log + Math.Log(product);
    }

    /// <summary>to = matrix · from.</summary>
    public static void Multiply(ReadOnlySpan<double> matrix, ReadOnlySpan<double> from, Span<double> to)
    {
        Span<Vector512<double>> sums = MemoryMarshal.Cast<double, Vector512<double>>(to);
        ReadOnlySpan<Vector512<double>> rows = MemoryMarshal.Cast<double, Vector512<double>>(matrix);
        // A column of vectors at a time: its sum stays where it is fastest.
        for (int j = 0; j < sums.Length; j++)
        {
            Vector512<double> sum = Vector512<double>.Zero;
            for (int i = 0, at = j; i < from.Length; i++, at += sums.Length)
            {
                sum += rows[at] * from[i];
            }

            sums[j] = sum;
        }
    }

    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector512<double>> va = MemoryMarshal.Cast<double, Vector512<double>>(a);
        ReadOnlySpan<Vector512<double>> vb = MemoryMarshal.Cast<double, Vector512<double>>(b);
        Vector512<double> sums = Vector512<double>.Zero;
        Vector512<double> others = sums;
        int k = 0;
        // Two at a time, none of which waits for the other.
        for (; k + 1 < va.Length && k + 1 < vb.Length; k += 2)
        {
            sums += va[k] * vb[k];
            others += va[k + 1] * vb[k + 1];
        }

        if (k < va.Length)
        {
            sums += va[k] * vb[k];
        }

        double sum = Vector512.Sum(sums + others);
        for (int i = va.Length * Vector512<double>.Count; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>to += by · row.</summary>
    public static void AddScaled(Span<double> to, ReadOnlySpan<double> row, double by)
    {
        Span<Vector512<double>> sums = MemoryMarshal.Cast<double, Vector512<double>>(to);
        ReadOnlySpan<Vector512<double>> parts = MemoryMarshal.Cast<double, Vector512<double>>(row);
        for (int i = 0; i < sums.Length && i < parts.Length; i++)
        {
            sums[i] += parts[i] * by;
        }

        for (int i = sums.Length * Vector512<double>.Count; i < to.Length; i++)
        {
            to[i] += row[i] * by;
        }
    }
}
