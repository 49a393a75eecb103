using System.Collections.Immutable;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Defects;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using NodaTime.Text;

namespace Jumpwright.Simulation.Demo;

/// <summary>Makes the demo squad's recordings from its table of what to simulate. The same table gives the same bytes.</summary>
public static class DemoRecordings
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>All recordings and their manifest.</summary>
    /// <param name="simulatedTrialsCsv">Text of simulated-trials.csv.</param>
    /// <returns>Path relative to the squad folder, with /, and the bytes.</returns>
    public static ImmutableArray<(string RelativePath, byte[] Bytes)> Write(string simulatedTrialsCsv)
    {
        DemoRow[] rows = [.. DemoRow.Read(simulatedTrialsCsv)];
        (string, byte[])[] made = new (string, byte[])[rows.Length];
        Parallel.For(0, rows.Length, i => made[i] = ("recordings/" + rows[i].File, Make(rows[i])));
        return [.. made, ("trials.csv", Encoding.UTF8.GetBytes(Manifest(rows)))];
    }

    private static byte[] Make(DemoRow row)
    {
        SeededRandom random = new(row.Seed);
        SimulatedMotion motion = Motion(row, random);
        byte[] good = row.Device switch
        {
            "mat" => IntervalCsv.Bytes(motion, row.Labels),
            "camera" => FrameCsv.Bytes(
                motion,
                row.Number("frames_per_second", 240),
                random,
                row.Labels,
                row.Defect == "playback-rate" ? 30 : null
            ),
            _ => ForceCsv.Bytes(Plates.Record(motion, PlateSettings(row, random), random), row.Labels),
        };
        return row.Defect is "" or "playback-rate" or "never-still" ? good : DefectList.Find(row.Defect).Spoil(good);
    }

    private static PlateSettings PlateSettings(DemoRow row, SeededRandom random) =>
        new()
        {
            RateHz = row.Number("rate_hz", 1000),
            TwoPlates = row.Device == "two-plates",
            NoiseN = row.Number("noise_N", 1.5),
            OffsetN = random.Uniform(-6, 6),
            RightOffsetN = random.Uniform(-6, 6),
            AsymmetryPct = (2 * row.Number("left_share_pct", 50)) - 100,
            StandingLeftShare = row.Number("left_share_pct", 50) / 100,
            LandingLeftShare = row.Number("left_share_pct", 50) / 100,
            DisturbanceN = row.Defect == "never-still" ? 60 : 0,
            ForceDecimals = 1,
        };

    private static SimulatedMotion Motion(DemoRow row, SeededRandom random)
    {
        double mass = row.Number("body_mass_kg", 70);
        double load = row.Number("external_load_kg", 0);
        double speed = Math.Sqrt(2 * G * row.Number("height_m", 0.3));
        double sway = row.Number("sway_N", 3);
        double depth = row.Number("depth_m", 0.30);
        double posture = random.Uniform(0.005, 0.03);
        return row.Task switch
        {
            JumpTask.SquatJump => SquatJumps.Make(
                new SquatJumpSettings
                {
                    BodyMassKg = mass,
                    TakeOffVelocityMS = speed,
                    DepthM = row.Number("depth_m", 0.35),
                    DipPct = row.Number("dip_pct", 0),
                    SwayN = sway,
                    LandingPostureDropM = posture,
                },
                random
            ),
            JumpTask.DropJump => DropJumps.Make(
                new DropJumpSettings
                {
                    BodyMassKg = mass,
                    BoxHeightM = row.Number("box_m", 0.3),
                    DropHeightM = row.Number("drop_m", 0.27),
                    ContactS = row.Number("contact_s", 0.22),
                    TakeOffVelocityMS = speed,
                    SwayN = sway,
                    LandingPostureDropM = posture,
                    StandAfterS = 3.5,
                },
                random
            ),
            JumpTask.RepeatedHops => HopSeries.Make(
                new HopSettings
                {
                    BodyMassKg = mass,
                    Hops = (int)row.Number("hops", 10),
                    ContactS = row.Number("contact_s", 0.19),
                    HeightM = row.Number("height_m", 0.2),
                    SwayN = sway,
                },
                random
            ),
            JumpTask.CountermovementJump or JumpTask.LoadedJump => CountermovementJumps.Make(
                new CountermovementSettings
                {
                    BodyMassKg = mass,
                    ExternalLoadKg = load,
                    TakeOffVelocityMS = speed,
                    DepthM = depth,
                    Shape = random.OneOf(PushShape.TwoPeaks, PushShape.Late, PushShape.Level),
                    SwayN = sway,
                    LandingPostureDropM = posture,
                },
                random,
                row.Task
            ),
            _ => throw new FormatException($"{row.File}: the demo does not simulate {row.Task.Id()}."),
        };
    }

    private static string Manifest(IEnumerable<DemoRow> rows)
    {
        StringBuilder text = new("file,athlete,date,task,body_mass_kg,external_load_kg,drop_height_m,limb\n");
        foreach (DemoRow row in rows)
        {
            RecordingLabels labels = row.Labels;
            text.Append(
                $"recordings/{row.File},{labels.Athlete},{LocalDatePattern.Iso.Format(labels.Date!.Value)},{row.Task.Id()},{row.Text("body_mass_kg")},{row.Text("external_load_kg")},{row.Text("box_m")},both\n"
            );
        }

        return text.ToString();
    }
}
