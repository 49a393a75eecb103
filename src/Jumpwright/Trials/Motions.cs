using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// Velocity and position from force, which is straight between its samples, so that each step is exact. Eight steps are taken at
/// once, their sums added up within a vector, so that only the first of every eight waits for what came before.
/// </summary>
internal static class Motions
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int Eight = 8;

    /// <summary>From the first sample, whose velocity and position are given, to the last.</summary>
    public static void Integrate(
        ReadOnlySpan<double> forceN,
        Span<double> velocityMS,
        Span<double> positionM,
        double perKg,
        double stepS
    )
    {
        int count = Count(forceN, velocityMS, positionM);
        double v = velocityMS[0];
        double x = positionM[0];
        Vector512<double> steps = Vector512.Create(1.0, 2, 3, 4, 5, 6, 7, 8) * stepS;
        int i = 1;
        for (; i + Eight <= count; i += Eight)
        {
            Vector512<double> before = Acceleration(forceN, i - 1, perKg);
            Vector512<double> after = Acceleration(forceN, i, perKg);
            Vector512<double> gained = (before + after) * (stepS / 2);
            Vector512<double> sum = UpTo(gained);
            Vector512<double> moved = (before + before + after) * (stepS * stepS / 6);
            Vector512<double> way = UpTo(((sum - gained) * stepS) + moved);
            (Vector512.Create(v) + sum).StoreUnsafe(ref MemoryMarshal.GetReference(velocityMS), (nuint)i);
            (Vector512.Create(x) + (steps * v) + way).StoreUnsafe(ref MemoryMarshal.GetReference(positionM), (nuint)i);
            x += (Eight * stepS * v) + way.GetElement(Eight - 1);
            v += sum.GetElement(Eight - 1);
        }

        for (; i < count; i++)
        {
            double before = (forceN[i - 1] * perKg) - G;
            double after = (forceN[i] * perKg) - G;
            x += (v * stepS) + (((2 * before) + after) * (stepS * stepS / 6));
            v += (before + after) * (stepS / 2);
            velocityMS[i] = v;
            positionM[i] = x;
        }
    }

    /// <summary>From the last sample, whose velocity and position are given, back to the first.</summary>
    public static void IntegrateBack(
        ReadOnlySpan<double> forceN,
        Span<double> velocityMS,
        Span<double> positionM,
        double perKg,
        double stepS
    )
    {
        int count = Count(forceN, velocityMS, positionM);
        double v = velocityMS[count - 1];
        double x = positionM[count - 1];
        Vector512<double> steps = Vector512.Create(8.0, 7, 6, 5, 4, 3, 2, 1) * stepS;
        int i = count - 1 - Eight;
        for (; i >= 0; i -= Eight)
        {
            Vector512<double> before = Acceleration(forceN, i, perKg);
            Vector512<double> after = Acceleration(forceN, i + 1, perKg);
            Vector512<double> gained = (before + after) * (stepS / 2);
            Vector512<double> sum = From(gained);
            Vector512<double> moved = (after + after + before) * (stepS * stepS / 6);
            Vector512<double> way = From(((sum - gained) * stepS) + moved);
            (Vector512.Create(v) - sum).StoreUnsafe(ref MemoryMarshal.GetReference(velocityMS), (nuint)i);
            (Vector512.Create(x) - (steps * v) + way).StoreUnsafe(ref MemoryMarshal.GetReference(positionM), (nuint)i);
            x += way.GetElement(0) - (Eight * stepS * v);
            v -= sum.GetElement(0);
        }

        for (i += Eight - 1; i >= 0; i--)
        {
            double after = (forceN[i + 1] * perKg) - G;
            double before = (forceN[i] * perKg) - G;
            x += (((2 * after) + before) * (stepS * stepS / 6)) - (v * stepS);
            v -= (after + before) * (stepS / 2);
            velocityMS[i] = v;
            positionM[i] = x;
        }
    }

    /// <summary>Adds to each value after the first so much a sample.</summary>
    public static void AddRising(Span<double> values, double aSample)
    {
        Vector512<double> ways = Vector512.Create(0.0, 1, 2, 3, 4, 5, 6, 7);
        int i = 0;
        foreach (ref Vector512<double> eight in MemoryMarshal.Cast<double, Vector512<double>>(values))
        {
            eight += ways * aSample;
            ways += Vector512.Create((double)Eight);
            i += Eight;
        }

        for (; i < values.Length; i++)
        {
            values[i] += aSample * i;
        }
    }

    /// <summary>How many samples there are; the vectors are stored unchecked, so that this must hold for all three.</summary>
    private static int Count(ReadOnlySpan<double> forceN, Span<double> velocityMS, Span<double> positionM)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(velocityMS.Length, forceN.Length, nameof(velocityMS));
        ArgumentOutOfRangeException.ThrowIfNotEqual(positionM.Length, forceN.Length, nameof(positionM));
        return forceN.Length;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Acceleration(ReadOnlySpan<double> forceN, int from, double perKg) =>
        (Vector512.LoadUnsafe(ref MemoryMarshal.GetReference(forceN), (nuint)from) * perKg) - Vector512.Create(G);

    /// <summary>Each element with all before it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> UpTo(Vector512<double> v)
    {
        // What is asked for from outside is nothing.
        v += Vector512.Shuffle(v, Vector512.Create(-1L, 0, 1, 2, 3, 4, 5, 6));
        v += Vector512.Shuffle(v, Vector512.Create(-1L, -1, 0, 1, 2, 3, 4, 5));
        return v + Vector512.Shuffle(v, Vector512.Create(-1L, -1, -1, -1, 0, 1, 2, 3));
    }

    /// <summary>Each element with all after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> From(Vector512<double> v)
    {
        v += Vector512.Shuffle(v, Vector512.Create(1L, 2, 3, 4, 5, 6, 7, -1));
        v += Vector512.Shuffle(v, Vector512.Create(2L, 3, 4, 5, 6, 7, -1, -1));
        return v + Vector512.Shuffle(v, Vector512.Create(4L, 5, 6, 7, -1, -1, -1, -1));
    }
}
