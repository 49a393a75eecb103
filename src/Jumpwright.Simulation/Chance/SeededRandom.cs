namespace Jumpwright.Simulation.Chance;

/// <summary>
/// The simulator's own generator, so that a seed means the same bytes for ever and on every machine:
/// xoshiro256** (Blackman &amp; Vigna 2021, ACM Trans Math Softw 47:36), its state filled by SplitMix64 (Steele et al. 2014).
/// Not for secrets.
/// </summary>
public sealed class SeededRandom
{
    private ulong _s0;
    private ulong _s1;
    private ulong _s2;
    private ulong _s3;
    private double _spareNormal;
    private bool _hasSpare;

    public SeededRandom(ulong seed)
    {
        ulong mix = seed;
        _s0 = SplitMix(ref mix);
        _s1 = SplitMix(ref mix);
        _s2 = SplitMix(ref mix);
        _s3 = SplitMix(ref mix);
    }

    /// <summary>A generator of its own for a named part, so that a new part does not move the draws of the others.</summary>
    public static SeededRandom For(ulong seed, ulong part)
    {
        ulong mix = seed ^ (part * 0x9E3779B97F4A7C15UL);
        return new SeededRandom(SplitMix(ref mix));
    }

    public ulong NextBits()
    {
        ulong result = ulong.RotateLeft(_s1 * 5, 7) * 9;
        ulong shifted = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= shifted;
        _s3 = ulong.RotateLeft(_s3, 45);
        return result;
    }

    /// <summary>Uniform in [0, 1).</summary>
    public double Unit() => (NextBits() >> 11) * (1.0 / 9007199254740992.0);

    /// <summary>Uniform in [from, to).</summary>
    public double Uniform(double from, double to) => from + ((to - from) * Unit());

    /// <summary>Whole number in [0, count).</summary>
    public int Below(int count) => (int)(Unit() * count);

    public bool Chance(double probability) => Unit() < probability;

    public T OneOf<T>(params ReadOnlySpan<T> choices) => choices[Below(choices.Length)];

    /// <summary>Standard normal, by Marsaglia's polar method (1964).</summary>
    public double Normal()
    {
        if (_hasSpare)
        {
            _hasSpare = false;
            return _spareNormal;
        }

        while (true)
        {
            double u = (2 * Unit()) - 1;
            double v = (2 * Unit()) - 1;
            double square = (u * u) + (v * v);
            if (square is > 0 and < 1)
            {
                double scale = Math.Sqrt(-2 * Math.Log(square) / square);
                _spareNormal = v * scale;
                _hasSpare = true;
                return u * scale;
            }
        }
    }

    /// <summary>Normal, cut off at two and a half standard deviations.</summary>
    public double NormalWithin(double mean, double sd) => mean + (sd * Math.Clamp(Normal(), -2.5, 2.5));

    private static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
