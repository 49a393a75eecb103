namespace Jumpwright.Trials;

/// <summary>Samples from one index up to, not including, another.</summary>
internal readonly record struct Stretch(int From, int To)
{
    public int Length => To - From;

    public double Middle => (From + To - 1) / 2.0;

    public bool Contains(double sample) => sample >= From && sample < To;
}
