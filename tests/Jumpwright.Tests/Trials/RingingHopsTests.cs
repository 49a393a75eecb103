using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>A plate that rings on after take-off hides when a foot left it: such hops are named, not passed off as sure.</summary>
public class RingingHopsTests
{
    [Fact]
    public void Hops_WhoseEdgesRing_AreNamed_AndTheMeansAreDoubtfulWhereTheyCount()
    {
        int named = 0;
        int doubtful = 0;
        for (int i = 0; i < 120; i++)
        {
            SeededRandom random = SeededRandom.For(20270104, (ulong)i);
            SimulatedMotion motion = HopSeries.Make(
                new HopSettings
                {
                    BodyMassKg = 70,
                    SwayN = 2,
                    Hops = 10,
                    ContactS = 0.2,
                    HeightM = random.Uniform(0.1, 0.3),
                },
                random
            );
            // Far worse than any plate of the populations, whose ringing is read through.
            PlateSettings settings = new()
            {
                RateHz = 200,
                TwoPlates = false,
                NoiseN = 6,
                RingingN = random.Uniform(80, 200),
                RingingHz = random.Uniform(15, 40),
                RingingDecayS = 0.03,
            };
            SimulatedRecording recording = Plates.Record(motion, settings, random);
            byte[] bytes = ForceCsv.Bytes(recording, new RecordingLabels(Task: JumpTask.RepeatedHops));
            Outcome<ImmutableArray<Trial>> outcome = Recording
                .From(bytes)
                .Then(read => Measuring.Of(read, JumpTask.RepeatedHops));
            if (!outcome.TryGet(out ImmutableArray<Trial> trials, out _))
            {
                continue;
            }

            Trial trial = trials[0];
            if (!trial.Warnings.Any(w => w.StartsWith("The plate rings where hops", StringComparison.Ordinal)))
            {
                Assert.DoesNotContain(Cautions.Ringing.ToString(), trial.Warnings);
                continue;
            }

            named++;
            if (trial.Warnings.Contains(Cautions.Ringing.ToString()))
            {
                doubtful++;
                Assert.Contains(MeasureNames.ContactTime, trial.Doubtful);
                Assert.Contains(MeasureNames.JumpHeightFlightTime, trial.Doubtful);
            }
        }

        Assert.True(named > 0, "no hop of 120 ringing plates was named");
        Assert.True(
            doubtful < named,
            $"hops that do not count must not make the means doubtful: {doubtful} of {named}"
        );
    }
}
