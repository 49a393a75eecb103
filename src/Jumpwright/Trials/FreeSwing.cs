using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// A swing left to itself, eight side by side: its two phases at any time after its beginning, and from one sample to the next. Sines come one by one from the
/// system's own, for those of a whole vector differ in the last digit between the compiler's first and its final code, and one recording
/// must always give one number.
/// </summary>
/// <param name="Turn">Radians a sample.</param>
/// <param name="Decay">Logarithm of what is lost a sample.</param>
/// <param name="StepCos">What a sample does to a phase that stands at its greatest.</param>
/// <param name="StepSin">And to one that stands at nothing.</param>
internal readonly record struct FreeSwing(
    Vector512<double> Turn,
    Vector512<double> Decay,
    Vector512<double> StepCos,
    Vector512<double> StepSin
)
{
    /// <summary>The same swing eight times.</summary>
    public static FreeSwing Of(double hz, double damping, double rateHz) =>
        Of(Vector512.Create(hz), Vector512.Create(damping), rateHz);

    /// <summary>Eight swings.</summary>
    /// <param name="hz">Undamped frequency, Hz.</param>
    /// <param name="damping">Part of critical damping.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    public static FreeSwing Of(Vector512<double> hz, Vector512<double> damping, double rateHz)
    {
        Vector512<double> radians = 2 * Math.PI / rateHz * hz;
        Vector512<double> turn = radians * Vector512.Sqrt(Vector512<double>.One - (damping * damping));
        Vector512<double> decay = radians * damping;
        (Vector512<double> cos, Vector512<double> sin) = Phases(turn, -decay);
        return new(turn, decay, cos, sin);
    }

    /// <summary>Both phases so many samples after the beginning.</summary>
    public (Vector512<double> Cos, Vector512<double> Sin) After(Vector512<double> samples) =>
        Phases(Turn * samples, -(Decay * samples));

    /// <summary>One sample on.</summary>
    public void On(ref Vector512<double> cos, ref Vector512<double> sin) =>
        (cos, sin) = ((cos * StepCos) - (sin * StepSin), (cos * StepSin) + (sin * StepCos));

    /// <summary>One sample back.</summary>
    public void Back(ref Vector512<double> cos, ref Vector512<double> sin)
    {
        Vector512<double> square = (StepCos * StepCos) + (StepSin * StepSin);
        (cos, sin) = (((cos * StepCos) + (sin * StepSin)) / square, ((sin * StepCos) - (cos * StepSin)) / square);
    }

    /// <summary>
    /// What two phases of any size explain of some numbers, a sum of squares: from the sums of the phases' products with each other and
    /// with the numbers, a ridge on both squares let in.
    /// </summary>
    public static Vector512<double> Explained(
        Vector512<double> cc,
        Vector512<double> cs,
        Vector512<double> ss,
        Vector512<double> cy,
        Vector512<double> sy,
        out Vector512<double> determinant
    )
    {
        determinant = (cc * ss) - (cs * cs);
        return ((ss * cy * cy) - (2 * cs * cy * sy) + (cc * sy * sy)) / determinant;
    }

    private static (Vector512<double> Cos, Vector512<double> Sin) Phases(
        Vector512<double> angle,
        Vector512<double> logSize
    )
    {
        Span<double> cos = stackalloc double[Vector512<double>.Count];
        Span<double> sin = stackalloc double[Vector512<double>.Count];
        for (int k = 0; k < cos.Length; k++)
        {
            (sin[k], cos[k]) = Math.SinCos(angle[k]);
        }

        Vector512<double> size = Vector512.Exp(logSize);
        return (size * Vector512.Create<double>(cos), size * Vector512.Create<double>(sin));
    }
}
