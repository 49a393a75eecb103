using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Velocity and position from force, which is straight between its samples, so that each step is exact.</summary>
internal static class Motions
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>From the first sample, whose velocity and position are given, to the last.</summary>
    public static void Integrate(
        ReadOnlySpan<double> forceN,
        Span<double> velocityMS,
        Span<double> positionM,
        double perKg,
        double stepS
    )
    {
        double v = velocityMS[0];
        double x = positionM[0];
        double now = (forceN[0] * perKg) - G;
        double half = stepS / 2;
        double sixth = stepS * stepS / 6;
        int i = 1;
        // Two samples at a time: each waits for the one two before it only.
        for (; i + 1 < forceN.Length && i + 1 < velocityMS.Length && i + 1 < positionM.Length; i += 2)
        {
            double middle = (forceN[i] * perKg) - G;
            double next = (forceN[i + 1] * perKg) - G;
            double gained = (now + middle) * half;
            double moved = ((2 * now) + middle) * sixth;
            double both = gained + ((middle + next) * half);
            double movedOn = moved + (gained * stepS) + (((2 * middle) + next) * sixth);
            velocityMS[i] = v + gained;
            positionM[i] = x + (v * stepS) + moved;
            x += (2 * v * stepS) + movedOn;
            v += both;
            velocityMS[i + 1] = v;
            positionM[i + 1] = x;
            now = next;
        }

        if (i < forceN.Length)
        {
            double next = (forceN[i] * perKg) - G;
            positionM[i] = x + (v * stepS) + (((2 * now) + next) * sixth);
            velocityMS[i] = v + ((now + next) * half);
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
        double v = velocityMS[^1];
        double x = positionM[^1];
        double now = (forceN[^1] * perKg) - G;
        for (int i = forceN.Length - 2; i >= 0; i--)
        {
            double before = (forceN[i] * perKg) - G;
            x += (((2 * now) + before) * (stepS * stepS / 6)) - (v * stepS);
            v -= (now + before) * (stepS / 2);
            velocityMS[i] = v;
            positionM[i] = x;
            now = before;
        }
    }
}
