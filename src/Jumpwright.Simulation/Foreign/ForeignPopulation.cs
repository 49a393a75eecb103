using System.Globalization;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Validating;
using Jumpwright.Simulation.Writing;

namespace Jumpwright.Simulation.Foreign;

/// <summary>
/// A second population that shares no mechanics with the first (<see cref="Population"/>): bodies driven forward by forces, which
/// creep back to standing, on plates that wander. An engine that suits one simulator only fails here.
/// </summary>
public static class ForeignPopulation
{
    /// <summary>An ordinary recording on good plates.</summary>
    public static SimulatedCase Clean(JumpTask task, ulong seed, int number) => Make(task, seed, number, varied: false);

    /// <summary>Anything that a hall may bring.</summary>
    public static SimulatedCase Varied(JumpTask task, ulong seed, int number) => Make(task, seed, number, varied: true);

    private static SimulatedCase Make(JumpTask task, ulong seed, int number, bool varied)
    {
        for (ulong again = 0; ; again++)
        {
            SeededRandom random = SeededRandom.For(
                seed + 17 + (again * 104_729),
                ((ulong)task * 2_000_003) + (ulong)number + (varied ? 1_000_000UL : 0)
            );
            try
            {
                FineMotion motion = new ForeignJumper(
                    task,
                    random,
                    varied ? random.Uniform(0.3, 6) : random.Uniform(1, 4),
                    varied
                ).Make();
                ForeignPlates plates = varied ? ForeignPlates.Varied(random, task) : ForeignPlates.Clean(random, task);
                (double[] first, double[] second) = plates.Record(motion, random, out _);
                return new SimulatedCase(
                    $"foreign {(varied ? "varied" : "clean")} {task.Id()} {number}",
                    task,
                    plates.RateHz,
                    Words(plates),
                    Bytes(motion, plates.RateHz, first, second),
                    ForeignTruths.Of(motion, plates)
                );
            }
            catch (InvalidOperationException) when (again < 200) { }
        }
    }

    private static byte[] Bytes(FineMotion motion, double rateHz, double[] first, double[] second)
    {
        bool two = second.Length > 0;
        ByteLines lines = new((first.Length * (two ? 30 : 20)) + 512);
        Metadata.Write(
            lines,
            new RecordingLabels(Task: motion.Task, ExternalLoadKg: motion.LoadKg > 0 ? motion.LoadKg : null)
        );
        lines.Text(two ? "time_s,force_left_N,force_right_N\n" : "time_s,force_N\n");
        for (int i = 0; i < first.Length; i++)
        {
            lines.Number(i / rateHz, 6);
            lines.Byte((byte)',');
            lines.Number(first[i], 2);
            if (two)
            {
                lines.Byte((byte)',');
                lines.Number(second[i], 2);
            }

            lines.Byte((byte)'\n');
        }

        return lines.ToArray();
    }

    private static string Words(ForeignPlates p)
    {
        List<string> words = [string.Create(CultureInfo.InvariantCulture, $"{p.RateHz:0} Hz, noise {p.NoiseN:0.0} N")];
        void If(bool it, FormattableString word)
        {
            if (it)
            {
                words.Add(FormattableString.Invariant(word));
            }
        }

        If(!p.TwoPlates, $"one plate");
        If(p.WanderN > 0, $"wander {p.WanderN:0.0} N at {p.WanderHz:0.00} Hz");
        If(p.UnderLoadN > 0, $"slow force under load {p.UnderLoadN:0.0} N");
        If(p.HumN > 0, $"hum {p.HumN:0.0} N");
        If(p.DriftN != 0, $"drift {p.DriftN:0.0} N");
        If(p.ResonanceHz > 0, $"resonance {p.ResonanceHz:0} Hz damped {p.Damping:0.00}");
        If(p.QuantumN > 0.02, $"steps of {p.QuantumN:0.0} N");
        return string.Join(", ", words);
    }
}
