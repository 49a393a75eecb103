using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;

namespace Jumpwright.Bench;

/// <summary>Recordings to measure: two-plate countermovement jumps of 8 s at 1000 Hz, each another athlete and jump.</summary>
internal static class Corpus
{
    private const double Seconds = 8;

    /// <summary>That many different recordings as CSV bytes; the same count gives the same bytes.</summary>
    public static byte[][] CountermovementJumps(int count)
    {
        var files = new byte[count][];
        Parallel.For(0, count, i => files[i] = One((ulong)i));
        return files;
    }

    private static byte[] One(ulong seed)
    {
        var random = SeededRandom.For(seed, 31);
        double stand = 2;
        var settings = new CountermovementSettings
        {
            BodyMassKg = random.Uniform(50, 110),
            TakeOffVelocityMS = random.Uniform(2.0, 3.1),
            DepthM = random.Uniform(0.2, 0.4),
            SwayN = random.Uniform(1, 4),
            StandBeforeS = stand,
        };
        SimulatedMotion motion = Simulation.Tasks.CountermovementJumps.Make(settings, random);
        double missing = Seconds - motion.Motion.ToS;
        motion = Simulation.Tasks.CountermovementJumps.Make(
            settings with
            {
                StandAfterS = settings.StandAfterS + Math.Max(missing, 0),
            },
            SeededRandom.For(seed, 32)
        );
        var plates = new PlateSettings
        {
            NoiseN = random.Uniform(0.5, 2),
            OffsetN = random.Uniform(-6, 6),
            RightOffsetN = random.Uniform(-6, 6),
            AsymmetryPct = random.Uniform(-10, 10),
            CutToS = Seconds,
        };
        return ForceCsv.Bytes(
            Plates.Record(motion, plates, random),
            new RecordingLabels("a" + seed, Task: JumpTask.CountermovementJump, BodyMassKg: settings.BodyMassKg)
        );
    }
}
