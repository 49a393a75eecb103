using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>A squat jump begins without a dip. A dip is reported, deep or shallow; who only sways is not said to dip.</summary>
public class SquatDipTests
{
    /// <summary>A shallow dip of somebody who sways is no onset by any threshold: what is found is the rise after it, and the dip still counts.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(9)]
    [InlineData(18)]
    public void ADip_IsFoundWithinItsDoubt_HoweverShallow(double dipPct)
    {
        for (ulong seed = 0; seed < 8; seed++)
        {
            Trial trial = Jump(dipPct, swayN: 5, seed);
            // The sway of that moment, a newton or ten, is in the force and no error.
            Assert.Equal(dipPct, trial.Value(MeasureNames.UnwantedDip), 2.0);
            Assert.Equal(
                trial.Value(MeasureNames.UnwantedDip) > 10,
                trial.Warnings.Any(w => w.StartsWith("Before pushing the force dips", StringComparison.Ordinal))
            );
        }
    }

    [Fact]
    public void WithoutADip_SwayIsNone()
    {
        for (ulong seed = 0; seed < 8; seed++)
        {
            Trial trial = Jump(0, swayN: 3, seed);
            Assert.InRange(trial.Value(MeasureNames.UnwantedDip), 0, 2);
        }
    }

    private static Trial Jump(double dipPct, double swayN, ulong seed)
    {
        var random = SeededRandom.For(20270121, seed);
        SimulatedRecording jump = Plates.Record(
            SquatJumps.Make(
                new SquatJumpSettings
                {
                    DipPct = dipPct,
                    SwayN = swayN,
                    StandBeforeS = 2,
                    HoldS = 2,
                    StandAfterS = 2,
                },
                random
            ),
            new PlateSettings { TwoPlates = false, NoiseN = 1 },
            random
        );
        return Measuring
            .Of(
                new ForceRecording(new RecordingLabels(), [], 0, 1000, jump.TotalN, default, default),
                JumpTask.SquatJump
            )
            .Require()[0];
    }
}
