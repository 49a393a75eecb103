using System.Collections.Immutable;
using System.Text;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Tests.Recordings.C3d;

namespace Jumpwright.Bench.Fuzz;

/// <summary>Good small recordings of every kind that there is to read; what is done to them makes them bad.</summary>
internal static class FuzzCorpus
{
    public static readonly ImmutableArray<byte[]> Files = [.. Make()];

    private static IEnumerable<byte[]> Make()
    {
        var random = new SeededRandom(41);
        var jump = new CountermovementSettings
        {
            SwayN = 2,
            StandBeforeS = 1.2,
            StandAfterS = 1.2,
        };
        foreach (double rate in new[] { 200.0, 500 })
        {
            foreach (bool two in new[] { false, true })
            {
                yield return Csv(
                    CountermovementJumps.Make(jump, random),
                    rate,
                    two,
                    JumpTask.CountermovementJump,
                    random
                );
            }
        }

        yield return Csv(
            CountermovementJumps.Make(jump with { ExternalLoadKg = 20 }, random, JumpTask.LoadedJump),
            400,
            true,
            JumpTask.LoadedJump,
            random
        );
        yield return Csv(
            SquatJumps.Make(new SquatJumpSettings { SwayN = 2 }, random),
            250,
            true,
            JumpTask.SquatJump,
            random
        );
        yield return Csv(
            DropJumps.Make(new DropJumpSettings { SwayN = 2, StandAfterS = 1.5 }, random),
            500,
            true,
            JumpTask.DropJump,
            random
        );
        SimulatedMotion hops = HopSeries.Make(new HopSettings { SwayN = 2, Hops = 6 }, random);
        yield return Csv(hops, 250, false, JumpTask.RepeatedHops, random);
        yield return IntervalCsv.Bytes(hops, new RecordingLabels("a01", Task: JumpTask.RepeatedHops));
        yield return FrameCsv.Bytes(hops, 240, random, new RecordingLabels("a01", Task: JumpTask.RepeatedHops), null);

        SimulatedRecording plates = Plates.Record(
            CountermovementJumps.Make(jump, random),
            new PlateSettings { RateHz = 400 },
            random
        );
        foreach (bool floating in new[] { false, true })
        {
            foreach (Order order in Enum.GetValues<Order>())
            {
                yield return C3d(plates, order, floating);
            }
        }
    }

    private static byte[] Csv(SimulatedMotion motion, double rate, bool two, JumpTask task, SeededRandom random) =>
        ForceCsv.Bytes(
            Plates.Record(
                motion,
                new PlateSettings
                {
                    RateHz = rate,
                    TwoPlates = two,
                    ForceDecimals = 1,
                },
                random
            ),
            new RecordingLabels("a01", Task: task, BodyMassKg: 75)
        );

    private static byte[] C3d(SimulatedRecording plates, Order order, bool floating)
    {
        Channel still = new("Nmm", 0.1, 0, _ => 50);
        Channel left = new("N", 0.1, 0, i => -10 * plates.LeftN[i]);
        Channel right = new("N", 0.1, 0, i => -10 * plates.RightN[i]);
        return new C3dWriter
        {
            Order = order,
            Floating = floating,
            Frames = plates.Samples / 4,
            SamplesPerFrame = 4,
            Points = 1,
            Channels = [still, still, left, still, still, still, still, still, right, still, still, still],
            Plates = [new(2, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown), new(2, [7, 8, 9, 10, 11, 12], C3dWriter.ZDown)],
        }.Write();
    }

    /// <summary>A header of the corpus, for files that have lost theirs.</summary>
    public static ReadOnlySpan<byte> Header(int which) =>
        (which % 4) switch
        {
            0 => "time_s,force_N\n"u8,
            1 => "time_s,force_left_N,force_right_N\n"u8,
            2 => "contact_s,flight_s\n"u8,
            _ => Encoding.UTF8.GetBytes("frame,event\n"),
        };
}
