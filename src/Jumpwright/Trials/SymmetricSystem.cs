using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>Normal equations of a small weighted least-squares problem, solved by Cholesky's method.</summary>
internal sealed class SymmetricSystem(int size)
{
    private readonly double[] _matrix = new double[size * size];
    private readonly double[] _right = new double[size];

    public int Size => size;

    /// <summary>log of the determinant of the normal matrix, after <see cref="Solve"/>.</summary>
    public double LogDeterminant
    {
        get
        {
            double sum = 0;
            for (int j = 0; j < size; j++)
            {
                sum += Math.Log(_matrix[(j * size) + j]);
            }

            return 2 * sum;
        }
    }

    /// <summary>How much the solution explains: half its product with the right side.</summary>
    public double Explained(ReadOnlySpan<double> solution) => Dot(solution, _right) / 2;

    /// <summary>Adds one observation: row · unknowns = value, with that weight (one over variance).</summary>
    public void Add(ReadOnlySpan<double> row, double value, double weight)
    {
        for (int a = 0; a < size; a++)
        {
            double wa = weight * row[a];
            if (wa == 0)
            {
                continue;
            }

            _right[a] += wa * value;
            AddScaled(_matrix.AsSpan(a * size, a + 1), row, wa);
        }
    }

    /// <summary>Adds the prior that an unknown is zero with that weight.</summary>
    public void AddPrior(int unknown, double weight) => _matrix[(unknown * size) + unknown] += weight;

    /// <summary>A copy to which priors can be added.</summary>
    public SymmetricSystem Copy()
    {
        var copy = new SymmetricSystem(size);
        _matrix.CopyTo(copy._matrix, 0);
        _right.CopyTo(copy._right, 0);
        return copy;
    }

    /// <summary>Factors the matrix in place and gives the solution.</summary>
    public double[] Solve()
    {
        for (int j = 0; j < size; j++)
        {
            ReadOnlySpan<double> rowJ = _matrix.AsSpan(j * size, j);
            double d = _matrix[(j * size) + j] - Dot(rowJ, rowJ);
            d = Math.Sqrt(Math.Max(d, 1e-300));
            _matrix[(j * size) + j] = d;
            for (int i = j + 1; i < size; i++)
            {
                double s = _matrix[(i * size) + j] - Dot(_matrix.AsSpan(i * size, j), rowJ);
                _matrix[(i * size) + j] = s / d;
            }
        }

        var x = (double[])_right.Clone();
        Forward(x);
        Backward(x);
        return x;
    }

    /// <summary>Variance of row · unknowns, after <see cref="Solve"/>.</summary>
    public double Variance(ReadOnlySpan<double> row)
    {
        Span<double> y = stackalloc double[size];
        row.CopyTo(y);
        Forward(y);
        return Dot(y, y);
    }

    /// <summary>Covariance of every unknown with row · unknowns, after <see cref="Solve"/>.</summary>
    public double[] Covariances(ReadOnlySpan<double> row)
    {
        double[] x = row.ToArray();
        Forward(x);
        Backward(x);
        return x;
    }

    private void Backward(Span<double> x)
    {
        for (int i = size - 1; i >= 0; i--)
        {
            double s = x[i];
            for (int k = i + 1; k < size; k++)
            {
                s -= _matrix[(k * size) + i] * x[k];
            }

            x[i] = s / _matrix[(i * size) + i];
        }
    }

    private void Forward(Span<double> x)
    {
        for (int i = 0; i < size; i++)
        {
            double s = x[i] - Dot(_matrix.AsSpan(i * size, i), x[..i]);
            x[i] = s / _matrix[(i * size) + i];
        }
    }

    private static void AddScaled(Span<double> to, ReadOnlySpan<double> row, double by)
    {
        Span<Vector<double>> sums = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> parts = MemoryMarshal.Cast<double, Vector<double>>(row);
        for (int i = 0; i < sums.Length; i++)
        {
            sums[i] += parts[i] * by;
        }

        for (int i = sums.Length * Vector<double>.Count; i < to.Length; i++)
        {
            to[i] += row[i] * by;
        }
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector<double>> va = MemoryMarshal.Cast<double, Vector<double>>(a);
        ReadOnlySpan<Vector<double>> vb = MemoryMarshal.Cast<double, Vector<double>>(b);
        Vector<double> sums = Vector<double>.Zero;
        for (int i = 0; i < va.Length; i++)
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
}
