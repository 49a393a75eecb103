using System.Numerics;
using System.Runtime.InteropServices;

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
        int width = size / Vector<double>.Count;
        Span<Vector<double>> all = MemoryMarshal.Cast<double, Vector<double>>(matrix[..(size * size)]);
        Span<Vector<double>> row = stackalloc Vector<double>[width];
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
            var inverse = new Vector<double>(1 / pivot);
            for (int j = 0; j < row.Length; j++)
            {
                row[j] = all[(p * width) + j] * inverse;
            }

            // A column of vectors at a time: the row's part stays where it is fastest.
            for (int j = 0; j < row.Length; j++)
            {
                Vector<double> part = row[j];
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
        int size = from.Length;
        Span<Vector<double>> sums = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> rows = MemoryMarshal.Cast<double, Vector<double>>(matrix);
        sums.Clear();
        for (int i = 0; i < size; i++)
        {
            var by = new Vector<double>(from[i]);
            ReadOnlySpan<Vector<double>> row = rows.Slice(i * sums.Length, sums.Length);
            for (int j = 0; j < sums.Length && j < row.Length; j++)
            {
                sums[j] += row[j] * by;
            }
        }
    }

    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector<double>> va = MemoryMarshal.Cast<double, Vector<double>>(a);
        ReadOnlySpan<Vector<double>> vb = MemoryMarshal.Cast<double, Vector<double>>(b);
        Vector<double> sums = Vector<double>.Zero;
        for (int i = 0; i < va.Length && i < vb.Length; i++)
        {
            sums += va[i] * vb[i];
        }

        double sum = Vector.Sum(sums);
        for (int i = va.Length * Vector<double>.Count; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>to += by · row.</summary>
    public static void AddScaled(Span<double> to, ReadOnlySpan<double> row, double by)
    {
        Span<Vector<double>> sums = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> parts = MemoryMarshal.Cast<double, Vector<double>>(row);
        for (int i = 0; i < sums.Length && i < parts.Length; i++)
        {
            sums[i] += parts[i] * by;
        }

        for (int i = sums.Length * Vector<double>.Count; i < to.Length; i++)
        {
            to[i] += row[i] * by;
        }
    }
}
