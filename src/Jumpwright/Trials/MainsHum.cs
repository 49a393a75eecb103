using System.Numerics;

namespace Jumpwright.Trials;

/// <summary>
/// Mains hum that a plate adds to the force: a line at 50 or 60 Hz with its overtones, which keeps its phase through the whole
/// recording. It is fitted where the force is quiet, empty or loaded, and taken off everywhere: of white noise an edge knows how
/// unsure it makes it, of a wave that stands under all its samples it does not.
/// </summary>
internal static class MainsHum
{
    /// <summary>Whole periods of both lines, which do not see each other then, s.</summary>
    private const double BlockS = 0.1;

    /// <summary>Longer blocks than at 4000 Hz are not looked at.</summary>
    private const int LongestBlock = 400;

    /// <summary>A block is quiet within so many newtons, and so many deviations of the noise, from its least to its greatest.</summary>
    private const double QuietN = 20;

    private const double QuietNoises = 10;

    /// <summary>Fewer quiet neighbours tell no hum.</summary>
    private const int FewestPairs = 5;

    /// <summary>So many quiet blocks tell whether the others are worth asking.</summary>
    private const int FirstLook = 24;

    /// <summary>Neighbours that are alike by less show no wave that stands (0 by chance, 1 of a pure wave).</summary>
    private const double LeastAlike = 0.3;

    /// <summary>A mains frequency stays as near to its nominal, Hz; it is searched in such steps.</summary>
    private const double NearHz = 0.3;

    private static readonly double[] StepsHz = [0.02, 0.002];

    /// <summary>So much more than chance would make, as a part of the variance of its mean, or it is left in.</summary>
    private const double LeastPower = 16;

    /// <summary>Overtones that are looked for, and the part of the rate up to which a wave is no other's image.</summary>
    private const int Overtones = 3;

    private const double HighestPart = 0.45;

    private static readonly double[] NominalHz = [50, 60];

    /// <summary>Copies the force without the hum found in it.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="noiseN">Standard deviation of one sample's noise, N.</param>
    /// <param name="into">As long as the force; untouched where no hum is found.</param>
    /// <returns>Amplitude of the strongest line, N; 0 where none is found.</returns>
    public static double TakeOut(ReadOnlySpan<double> forceN, double rateHz, double noiseN, Span<double> into)
    {
        int block = (int)Math.Round(BlockS * rateHz);
        if (block is < 8 or > LongestBlock || Quiet(forceN, block, noiseN, FirstLook) is not { } some)
        {
            return 0;
        }

        double strongest = 0;
        List<int>? quiet = null;
        foreach (double nominal in NominalHz)
        {
            if (Alike(Waves(forceN, some, block, nominal / rateHz), some, block) < LeastAlike)
            {
                continue;
            }

            quiet ??= Quiet(forceN, block, noiseN, int.MaxValue);
            if (quiet is null)
            {
                return 0;
            }

            Complex[] waves = Waves(forceN, quiet, block, nominal / rateHz);
            double hz = Frequency(waves, quiet, rateHz, nominal);
            for (int tone = 1; tone <= Overtones && tone * hz < HighestPart * rateHz; tone++)
            {
                double perSample = tone * hz / rateHz;
                Complex wave = Standing(Waves(forceN, quiet, block, perSample), out double power);
                if (power < LeastPower)
                {
                    if (tone == 1)
                    {
                        break;
                    }

                    continue;
                }

                if (strongest == 0)
                {
                    forceN.CopyTo(into);
                }

                strongest = Math.Max(strongest, wave.Magnitude);
                Less(into[..forceN.Length], wave, perSample);
            }
        }

        return strongest;
    }

    /// <summary>First samples of the first so many quiet blocks; null where they tell nothing, or the plate cuts off what it reads empty.</summary>
    private static List<int>? Quiet(ReadOnlySpan<double> forceN, int block, double noiseN, int most)
    {
        List<int> quiet = [];
        double within = QuietN + (QuietNoises * noiseN);
        for (int from = 0; from + block <= forceN.Length && quiet.Count < most; from += block)
        {
            ReadOnlySpan<double> samples = forceN.Slice(from, block);
            double range = Samples.Greatest(samples) - Samples.Least(samples);
            if (range == 0)
            {
                return null;
            }

            if (range <= within)
            {
                quiet.Add(from);
            }
        }

        return quiet.Count > FewestPairs ? quiet : null;
    }

    /// <summary>The wave of one frequency in each block, straight lines taken off, with the phase it has at the first sample of all.</summary>
    private static Complex[] Waves(ReadOnlySpan<double> forceN, List<int> quiet, int block, double perSample)
    {
        Span<double> cosines = stackalloc double[block];
        Span<double> sines = stackalloc double[block];
        Span<double> fromMiddle = stackalloc double[block];
        double squares = block * ((block * (double)block) - 1) / 12;
        var turn = Complex.FromPolarCoordinates(1, -2 * Math.PI * perSample);
        Complex at = Complex.One;
        Complex constant = Complex.Zero;
        Complex line = Complex.Zero;
        for (int i = 0; i < block; i++, at *= turn)
        {
            (cosines[i], sines[i], fromMiddle[i]) = (at.Real, at.Imaginary, i - ((block - 1) / 2.0));
            constant += at;
            line += fromMiddle[i] * at;
        }

        var waves = new Complex[quiet.Count];
        for (int k = 0; k < waves.Length; k++)
        {
            ReadOnlySpan<double> samples = forceN.Slice(quiet[k], block);
            double mean = ForceSums.Total(samples) / block;
            double slope = SymmetricMatrix.Dot(samples, fromMiddle) / squares;
            var wave = new Complex(SymmetricMatrix.Dot(samples, cosines), SymmetricMatrix.Dot(samples, sines));
            wave -= (mean * constant) + (slope * line);
            waves[k] = 2.0 / block * wave * Complex.FromPolarCoordinates(1, -2 * Math.PI * perSample * quiet[k]);
        }

        return waves;
    }

    /// <summary>How alike neighbours in time are, 1 where they hold the same wave.</summary>
    private static double Alike(Complex[] waves, List<int> quiet, int block)
    {
        double alike = 0;
        double all = 0;
        int pairs = 0;
        for (int k = 1; k < waves.Length; k++)
        {
            if (quiet[k] - quiet[k - 1] == block)
            {
                alike += (waves[k] * Complex.Conjugate(waves[k - 1])).Real;
                all += (Square(waves[k]) + Square(waves[k - 1])) / 2;
                pairs++;
            }
        }

        return pairs >= FewestPairs ? alike / all : 0;
    }

    /// <summary>The frequency near the nominal one at which the blocks add up most, Hz: searched coarsely, then finely.</summary>
    private static double Frequency(Complex[] waves, List<int> quiet, double rateHz, double nominalHz)
    {
        double best = 0;
        double reach = NearHz;
        foreach (double step in StepsHz)
        {
            double most = -1;
            double from = best - reach;
            for (int k = 0; k <= 2 * Math.Round(reach / step); k++)
            {
                double off = from + (k * step);
                Complex sum = Complex.Zero;
                for (int b = 0; b < waves.Length; b++)
                {
                    sum += waves[b] * Complex.FromPolarCoordinates(1, -2 * Math.PI * off * quiet[b] / rateHz);
                }

                if (Square(sum) > most)
                {
                    (most, best) = (Square(sum), off);
                }
            }

            reach = step;
        }

        return nominalHz + best;
    }

    /// <summary>The wave that all blocks share, N, and its power over the variance of its mean.</summary>
    private static Complex Standing(Complex[] waves, out double power)
    {
        Complex sum = Complex.Zero;
        foreach (Complex wave in waves)
        {
            sum += wave;
        }

        Complex mean = sum / waves.Length;
        double rest = 0;
        foreach (Complex wave in waves)
        {
            rest += Square(wave - mean);
        }

        power = Square(mean) * waves.Length / Math.Max(rest / (waves.Length - 1), 1e-12);
        return mean;
    }

    private static void Less(Span<double> forceN, Complex wave, double perSample)
    {
        var turn = Complex.FromPolarCoordinates(1, 2 * Math.PI * perSample);
        Complex at = wave;
        for (int i = 0; i < forceN.Length; i++)
        {
            forceN[i] -= at.Real;
            at *= turn;
        }
    }

    private static double Square(Complex value) => (value.Real * value.Real) + (value.Imaginary * value.Imaginary);
}
