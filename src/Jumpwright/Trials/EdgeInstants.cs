namespace Jumpwright.Trials;

/// <summary>Instants evenly apart: whole parts of a sample or, where samples come fast, whole samples.</summary>
/// <param name="From">First of them, samples inwards.</param>
/// <param name="PerSample">Steps to a sample.</param>
/// <param name="Stride">Steps from one instant to the next.</param>
/// <param name="Count">How many there are.</param>
internal readonly record struct EdgeInstants(double From, int PerSample, int Stride, int Count)
{
    /// <summary>Samples from one instant to the next.</summary>
    public double Step => (double)Stride / PerSample;

    /// <summary>One of them, samples inwards.</summary>
    public double At(int index) => From + ((double)(index * Stride) / PerSample);

    /// <summary>As far apart as so many steps of a wide range, as many as a range needs.</summary>
    public static EdgeInstants Over(double from, double to, double wide, int steps)
    {
        (int perSample, int stride) =
            wide <= steps ? ((int)Math.Round(steps / wide), 1) : (1, (int)Math.Round(wide / steps));
        return new(from, perSample, stride, (int)Math.Ceiling((to - from) * perSample / stride) + 1);
    }

    /// <summary>So many steps that reach from one end to the other or beyond it.</summary>
    public static EdgeInstants Reaching(double from, double to, int steps)
    {
        double range = to - from;
        return range <= steps
            ? new(from, (int)(steps / range), 1, steps + 1)
            : new(from, 1, (int)Math.Ceiling(range / steps), steps + 1);
    }
}
