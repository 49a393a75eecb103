using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;

namespace Jumpwright.Simulation.Validating;

/// <summary>Draws jumpers, jumps and plates. Each number of a group is drawn from its own seed.</summary>
public static class Population
{
    private static readonly double[] Rates = [200, 250, 300, 500, 600, 1000, 1200, 2000];

    /// <summary>An ordinary recording on good plates: 1000 Hz, two plates, sway of a few newtons, noise to 2 N.</summary>
    public static SimulatedCase Clean(JumpTask task, ulong seed, int number) =>
        Make(
            task,
            seed,
            number,
            "clean",
            (random, motion, _) => CleanPlates(random, motion),
            sway: random => random.Uniform(1, 4)
        );

    /// <summary>The same, but the slow force of standing is no motion: it is added to the force, and the person stands still.</summary>
    public static SimulatedCase Disturbed(JumpTask task, ulong seed, int number) =>
        Make(
            task,
            seed,
            number,
            "disturbed",
            (random, motion, _) => CleanPlates(random, motion) with { DisturbanceN = random.Uniform(1, 4) },
            sway: _ => 0
        );

    /// <summary>Anything that a hall may bring: other rates, one plate, noise, hum, drift, offset, ringing, steps, one foot first.</summary>
    public static SimulatedCase Varied(JumpTask task, ulong seed, int number) =>
        Make(
            task,
            seed,
            number,
            "varied",
            VariedPlates,
            // Half of them sway as a motion of the body; in the others the slow force is the device's.
            sway: random => random.Chance(0.5) ? random.Uniform(0.5, 6) : 0
        );

    private static SimulatedCase Make(
        JumpTask task,
        ulong seed,
        int number,
        string group,
        Func<SeededRandom, SimulatedMotion, double, PlateSettings> plates,
        Func<SeededRandom, double> sway
    ) =>
        Drawn(
            task,
            seed,
            number,
            group switch
            {
                "clean" => 0UL,
                "disturbed" => 250_000UL,
                _ => 500_000UL,
            },
            random =>
            {
                double swayN = sway(random);
                SimulatedMotion motion = Motion(task, random, swayN, group == "varied");
                PlateSettings settings = plates(random, motion, swayN);
                SimulatedRecording recording = Plates.Record(motion, settings, random);
                double? box = task == JumpTask.DropJump ? Math.Round(random.Uniform(0.2, 0.6), 2) : null;
                byte[] bytes = ForceCsv.Bytes(
                    recording,
                    new RecordingLabels(
                        Task: task,
                        ExternalLoadKg: motion.ExternalLoadKg > 0 ? motion.ExternalLoadKg : null,
                        DropHeightM: box
                    )
                );
                return new SimulatedCase(
                    $"{group} {task.Id()} {number}",
                    task,
                    settings.RateHz,
                    Words(settings),
                    bytes,
                    recording.Truth
                );
            }
        );

    /// <summary>The same effort timed by a contact mat (0) or a camera of that many frames a second.</summary>
    public static SimulatedCase Timed(JumpTask task, double framesPerSecond, ulong seed, int number) =>
        Drawn(
            task,
            seed,
            number,
            750_000UL + ((ulong)framesPerSecond * 10_000_000UL),
            random =>
            {
                SimulatedMotion motion = Motion(task, random, 1, varied: false);
                RecordingLabels labels = new(Task: task, BodyMassKg: Math.Round(motion.BodyMassKg, 1));
                bool mat = framesPerSecond == 0;
                return new SimulatedCase(
                    $"timed {task.Id()} {number}",
                    task,
                    framesPerSecond,
                    mat ? "contact mat" : FormattableString.Invariant($"{framesPerSecond:0} frames a second"),
                    mat ? IntervalCsv.Bytes(motion, labels) : FrameCsv.Bytes(motion, framesPerSecond, random, labels),
                    Truths.Of(motion, new PlateSettings { TwoPlates = false }, 0)
                );
            }
        );

    /// <summary>Some draws allow no motion (a deep dip in no time): the next draw of the same number is taken.</summary>
    private static SimulatedCase Drawn(
        JumpTask task,
        ulong seed,
        int number,
        ulong group,
        Func<SeededRandom, SimulatedCase> make
    )
    {
        for (ulong again = 0; ; again++)
        {
            try
            {
                return make(SeededRandom.For(seed + (again * 7919), ((ulong)task * 1_000_003) + (ulong)number + group));
            }
            catch (InvalidOperationException) when (again < 50) { }
        }
    }

    private static SimulatedMotion Motion(JumpTask task, SeededRandom random, double swayN, bool varied)
    {
        var jumper = new JumperSettings
        {
            BodyMassKg = random.Uniform(45, 115),
            StandBeforeS = varied ? random.Uniform(1.3, 3) : random.Uniform(2, 3.5),
            StandAfterS = varied ? random.Uniform(1.5, 3.5) : random.Uniform(3, 4),
            RiseAtTakeOffM = random.Uniform(0.07, 0.14),
            LandingPostureDropM = random.Uniform(-0.005, 0.04),
            LandingDepthM = random.Uniform(0.12, 0.32),
            SwayN = swayN,
            SwayColour = random.Uniform(0, 2),
        };
        return task switch
        {
            JumpTask.CountermovementJump or JumpTask.LoadedJump => CountermovementJumps.Make(
                new CountermovementSettings(jumper)
                {
                    ExternalLoadKg = task == JumpTask.LoadedJump ? random.OneOf<double>(10, 20, 30, 40) : 0,
                    TakeOffVelocityMS =
                        task == JumpTask.LoadedJump ? random.Uniform(1.3, 2.4) : random.Uniform(1.7, 3.3),
                    DepthM = random.Uniform(0.18, 0.45),
                    FallSpeedMS = random.Uniform(0.6, 1.6),
                    Shape = random.OneOf(PushShape.Early, PushShape.Late, PushShape.TwoPeaks, PushShape.Level),
                    BounceVelocityMS = varied && random.Chance(0.08) ? random.Uniform(0.6, 1.2) : 0,
                },
                random,
                task
            ),
            JumpTask.SquatJump => SquatJumps.Make(
                new SquatJumpSettings(jumper)
                {
                    TakeOffVelocityMS = random.Uniform(1.6, 3.0),
                    DepthM = random.Uniform(0.25, 0.45),
                    HoldS = random.Uniform(1.2, 3),
                    DipPct = random.Chance(0.3) ? random.Uniform(3, 25) : 0,
                },
                random
            ),
            JumpTask.DropJump => DropJumps.Make(
                new DropJumpSettings(jumper)
                {
                    StandBeforeS = random.Uniform(0.8, 2),
                    RiseAtTouchDownM = random.Uniform(0.04, 0.11),
                    DropHeightM = random.Uniform(0.12, 0.6),
                    ContactS = random.Uniform(0.14, 0.35),
                    TakeOffVelocityMS = random.Uniform(1.6, 3.0),
                    Bimodal = random.Chance(0.35),
                },
                random
            ),
            JumpTask.RepeatedHops => HopSeries.Make(
                new HopSettings(jumper)
                {
                    Hops = 5 + random.Below(8),
                    ContactS = random.Uniform(0.15, 0.26),
                    HeightM = random.Uniform(0.08, 0.4),
                },
                random
            ),
            JumpTask.DropLanding => DropJumps.MakeLanding(
                new DropJumpSettings(jumper)
                {
                    StandBeforeS = random.Uniform(0.8, 2),
                    StandAfterS = jumper.StandAfterS + 0.5,
                    RiseAtTouchDownM = random.Uniform(0.04, 0.11),
                    DropHeightM = random.Uniform(0.15, 0.6),
                },
                random
            ),
            JumpTask.ApproachJump => DropJumps.MakeApproach(
                new DropJumpSettings(jumper)
                {
                    StandBeforeS = random.Uniform(0.8, 2),
                    RiseAtTouchDownM = random.Uniform(-0.02, 0.06),
                    DropHeightM = random.Uniform(0.01, 0.1),
                    ContactS = random.Uniform(0.18, 0.4),
                    TakeOffVelocityMS = random.Uniform(2.0, 3.5),
                    Bimodal = random.Chance(0.5),
                },
                random,
                landsElsewhere: false
            ),
            JumpTask.BoxJump => CountermovementJumps.Make(
                new CountermovementSettings(jumper)
                {
                    TakeOffVelocityMS = random.Uniform(1.7, 3.3),
                    DepthM = random.Uniform(0.18, 0.45),
                    FallSpeedMS = random.Uniform(0.6, 1.6),
                    Shape = random.OneOf(PushShape.Early, PushShape.Late, PushShape.TwoPeaks, PushShape.Level),
                    LandsElsewhere = true,
                },
                random,
                task
            ),
            JumpTask.SnapDown => SnapDowns.Make(jumper with { LandingDepthM = random.Uniform(0.2, 0.4) }, random),
            _ => throw new NotSupportedException("Not simulated: " + task.Id()),
        };
    }

    private static PlateSettings CleanPlates(SeededRandom random, SimulatedMotion motion) =>
        new()
        {
            RateHz = 1000,
            TwoPlates = true,
            NoiseN = random.Uniform(0.5, 2),
            OffsetN = Offset(motion, random, 8),
            RightOffsetN = Offset(motion, random, 8),
            AsymmetryPct = random.NormalWithin(0, 5),
            StandingLeftShare = random.NormalWithin(0.5, 0.02),
            LandingLeftShare = random.NormalWithin(0.5, 0.04),
            CutFromS = random.Uniform(0, 0.2),
        };

    /// <summary>A plate that is never empty was zeroed before, and has drifted a little: nothing in the recording could tell.</summary>
    private static double Offset(SimulatedMotion motion, SeededRandom random, double most) =>
        random.Uniform(-1, 1) * (motion.Contacts.IsEmpty && motion.OnsetS is not null ? 4 : most);

    private static PlateSettings VariedPlates(SeededRandom random, SimulatedMotion motion, double swayN)
    {
        double landing = motion.LandingS ?? motion.Motion.ToS;
        return new()
        {
            RateHz = random.OneOf<double>(Rates),
            TwoPlates = random.Chance(0.6),
            NoiseN = 0.5 * Math.Pow(16, random.Unit()),
            DisturbanceN =
                swayN == 0 ? random.Uniform(0.5, 5)
                : random.Chance(0.15) ? random.Uniform(0.5, 4)
                : 0,
            HumN = random.Chance(0.3) ? random.Uniform(0.5, 5) : 0,
            HumHz = random.OneOf<double>(50, 60),
            DriftN = random.Chance(0.3) ? random.Uniform(-6, 6) : 0,
            OffsetN = Offset(motion, random, 25),
            RightOffsetN = Offset(motion, random, 25),
            RingingN = random.Chance(0.3) ? random.Uniform(5, 60) : 0,
            RingingHz = random.Uniform(25, 110),
            RingingDecayS = random.Uniform(0.015, 0.06),
            QuantumN = random.Chance(0.25) ? random.Uniform(0.25, 2) : 0,
            AsymmetryPct = random.NormalWithin(0, 9),
            StandingLeftShare = random.NormalWithin(0.5, 0.04),
            LandingLeftShare = random.NormalWithin(0.5, 0.08),
            LeadS = random.Chance(0.25) ? random.Uniform(0.005, 0.03) : 0,
            LeftLeads = random.Chance(0.5),
            StepOnS = motion.OnsetS is not null && random.Chance(0.2) ? random.Uniform(1, 2) : 0,
            CutToS = random.Chance(0.05) ? landing + random.Uniform(-0.2, 1.2) : null,
        };
    }

    private static string Words(PlateSettings s)
    {
        List<string> words = [FormattableString.Invariant($"{s.RateHz:0} Hz, noise {s.NoiseN:0.0} N")];
        void If(bool it, string word)
        {
            if (it)
            {
                words.Add(word);
            }
        }

        If(!s.TwoPlates, "one plate");
        If(s.DisturbanceN > 0, FormattableString.Invariant($"slow disturbance {s.DisturbanceN:0.0} N"));
        If(s.HumN > 0, FormattableString.Invariant($"hum {s.HumN:0.0} N at {s.HumHz:0} Hz"));
        If(s.DriftN != 0, FormattableString.Invariant($"drift {s.DriftN:0.0} N"));
        If(s.RingingN > 0, FormattableString.Invariant($"ringing {s.RingingN:0} N at {s.RingingHz:0} Hz"));
        If(s.QuantumN > 0, FormattableString.Invariant($"steps of {s.QuantumN:0.0} N"));
        If(s.LeadS > 0, FormattableString.Invariant($"one foot {s.LeadS * 1000:0} ms first"));
        If(s.StepOnS > 0, "steps on");
        If(s.CutToS is not null, "ends early");
        return string.Join(", ", words);
    }
}
