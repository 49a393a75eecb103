using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>A plate that swings does so after a take-off: where it stays quiet after the steepest, it is not asked for a spring.</summary>
public class AftermathTests
{
    private const double RateHz = 1000;
    private const double LoadN = 700;

    [Theory]
    [InlineData(0, 1, true)]
    [InlineData(25, 1, false)]
    [InlineData(8, 1, false)]
    public void APlateIsSilent_WhereNothingSwingsAfterTheTakeOff(double swingN, double noiseN, bool silent) =>
        Assert.Equal(silent, IsSilent([(100, 30_000, swingN)], noiseN));

    [Fact]
    public void ANoisyPlate_MayHideASwing_AndIsAsked() => Assert.False(IsSilent([(100, 15_000, 0)], 8));

    [Fact]
    public void TheSteepestTakeOffSpeaksForThePlate_NotAFootDrawnOffSlowly()
    {
        // After the second a foot still brushes the plate: 12 N that fade.
        Assert.True(IsSilent([(100, 30_000, 0), (500, 9_000, 12)], 1));
        Assert.False(IsSilent([(100, 9_000, 0), (500, 30_000, 12)], 1));
    }

    [Fact]
    public void WhereNobodyTookOff_NothingIsKnown() => Assert.False(IsSilent([], 1));

    /// <summary>Contacts whose force falls straight to nothing, each followed by a swing of 150 Hz that fades.</summary>
    private static bool IsSilent((int At, double SteepnessNS, double SwingN)[] takeOffs, double noiseN)
    {
        var chance = new Random(5);
        var force = new double[1000];
        var contacts = new List<Contact>();
        foreach ((int at, double steepness, double swing) in takeOffs)
        {
            for (int i = at - 90; i < at; i++)
            {
                force[i] = Math.Min(LoadN, (at - i) / RateHz * steepness);
            }

            for (int i = at; i < at + 100; i++)
            {
                double since = (i - at) / RateHz;
                force[i] = swing * Math.Exp(-since / 0.01) * Math.Sin(2 * Math.PI * 150 * since);
            }

            contacts.Add(new Contact(new Stretch(at - 90, at), null, new Instant(at, 0.0001)));
        }

        for (int i = 0; i < force.Length; i++)
        {
            double angle = 2 * Math.PI * chance.NextDouble();
            force[i] += noiseN * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(angle);
        }

        var levels = new PlateLevels(0, LoadN, noiseN, true);
        List<Aftermath> found = Aftermath.Of(force, RateHz, noiseN, levels, contacts);
        return Aftermath.IsSilent(force, RateHz, noiseN, levels, found);
    }
}
