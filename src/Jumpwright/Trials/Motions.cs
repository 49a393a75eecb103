using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// Velocity and position from force, which is straight between its samples, so that each step is exact. Four steps are taken at
/// once, their sums added up within a vector, so that only the first of every four waits for what came before.
/// </summary>
internal static class Motions
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int Four = 4;

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
        Vector256<double> steps = Vector256.Create(1.0, 2, 3, 4) * stepS;
        int i = 1;
        for (; i + Four <= count; i += Four)
        {
            Vector256<double> before = Acceleration(forceN, i - 1, perKg);
            Vector256<double> after = Acceleration(forceN, i, perKg);
            Vector256<double> gained = (before + after) * (stepS / 2);
            Vector256<double> sum = UpTo(gained);
            Vector256<double> moved = (before + before + after) * (stepS * stepS / 6);
            Vector256<double> way = UpTo(((sum - gained) * stepS) + moved);
            (Vector256.Create(v) + sum).StoreUnsafe(ref MemoryMarshal.GetReference(velocityMS), (nuint)i);
            (Vector256.Create(x) + (steps * v) + way).StoreUnsafe(ref MemoryMarshal.GetReference(positionM), (nuint)i);
            x += (Four * stepS * v) + way.GetElement(Four - 1);
            v += sum.GetElement(Four - 1);
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
        Vector256<double> steps = Vector256.Create(4.0, 3, 2, 1) * stepS;
        int i = count - 1 - Four;
        for (; i >= 0; i -= Four)
        {
            Vector256<double> before = Acceleration(forceN, i, perKg);
            Vector256<double> after = Acceleration(forceN, i + 1, perKg);
            Vector256<double> gained = (before + after) * (stepS / 2);
            Vector256<double> sum = From(gained);
            Vector256<double> moved = (after + after + before) * (stepS * stepS / 6);
            Vector256<double> way = From(((sum - gained) * stepS) + moved);
            (Vector256.Create(v) - sum).StoreUnsafe(ref MemoryMarshal.GetReference(velocityMS), (nuint)i);
            (Vector256.Create(x) - (steps * v) + way).StoreUnsafe(ref MemoryMarshal.GetReference(positionM), (nuint)i);
            x += way.GetElement(0) - (Four * stepS * v);
            v -= sum.GetElement(0);
        }

        for (i += Four - 1; i >= 0; i--)
        {
            double after = (forceN[i + 1] * perKg) - G;
            double before = (forceN[i] * perKg) - G;
            x += (((2 * after) + before) * (stepS * stepS / 6)) - (v * stepS);
            v -= (after + before) * (stepS / 2);
            velocityMS[i] = v;
            positionM[i] = x;
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
    private static Vector256<double> Acceleration(ReadOnlySpan<double> forceN, int from, double perKg) =>
        (Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(forceN), (nuint)from) * perKg) - Vector256.Create(G);

    /// <summary>Each element with all before it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> UpTo(Vector256<double> v)
    {
        // What is asked for from outside is nothing.
        v += Vector256.Shuffle(v, Vector256.Create(-1L, 0, 1, 2));
        return v + Vector256.Shuffle(v, Vector256.Create(-1L, -1, 0, 1));
    }

    /// <summary>Each element with all after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> From(Vector256<double> v)
    {
        v += Vector256.Shuffle(v, Vector256.Create(1L, 2, 3, -1));
        return v + Vector256.Shuffle(v, Vector256.Create(2L, 3, -1, -1));
    }
}
