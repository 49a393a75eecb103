using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Motions;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Simulation;

/// <summary>The simulator's own laws: a truth is only a truth when it follows from its own force.</summary>
public class CountermovementTruthTests
{
    private const double G = Gravity.MetresPerSecondSquared;

    public static TheoryData<double, double, double, PushShape, double> Jumps =>
        new()
        {
            { 2.6, 0.30, 1.2, PushShape.TwoPeaks, 3 },
            { 1.9, 0.18, 0.8, PushShape.Early, 0 },
            { 3.2, 0.42, 1.5, PushShape.Late, 5 },
            { 2.3, 0.35, 0.7, PushShape.Level, 2 },
            { 2.8, 0.26, 1.4, PushShape.TwoPeaks, 8 },
        };

    [Theory]
    [MemberData(nameof(Jumps))]
    public void Force_IntegratedAt20kHz_GivesTheMotionsOwnVelocityAndDisplacement(
        double takeOff,
        double depth,
        double fall,
        PushShape shape,
        double swayN
    )
    {
        SimulatedMotion jump = Make(takeOff, depth, fall, shape, swayN, seed: 1);
        MotionChecks.AssertForceExplainsMotion(jump);
        Assert.Equal(takeOff, jump.Motion.At(jump.Contacts[0].ToS - 1e-12).VelocityMS, 1e-8);
        Assert.Equal(-depth, jump.Motion.Lowest(jump.OnsetS!.Value, jump.Contacts[0].ToS).Value, 1e-8);
    }

    [Fact]
    public void HundredSeeds_ForceIsNeverNegative_AndEveryJoinIsContinuous()
    {
        for (ulong seed = 0; seed < 100; seed++)
        {
            MotionChecks.AssertWhole(Make(2.5, 0.3, 1.2, PushShape.TwoPeaks, 3, seed));
        }
    }

    [Fact]
    public void Truth_DoesNotDependOnTheSamplingRate()
    {
        SimulatedMotion jump = Make(2.6, 0.3, 1.2, PushShape.TwoPeaks, 3, 5);
        Truth slow = Truths.Of(jump, new PlateSettings { RateHz = 200 }, 0);
        Truth fast = Truths.Of(jump, new PlateSettings { RateHz = 2000 }, 0);
        Assert.Equal(slow.Measures, fast.Measures);
        Assert.Equal(2.6 * 2.6 / (2 * G), slow.Find(MeasureNames.JumpHeight)!.Value, 1e-9);
    }

    [Fact]
    public void SameSeed_SameBytes_OtherSeed_OtherBytes()
    {
        Assert.Equal(Bytes(7), Bytes(7));
        Assert.NotEqual(Bytes(7), Bytes(8));
    }

    [Fact]
    public void LowerLanding_MakesFlightTimeHeightTooLarge_AsPhysicsSays()
    {
        // literature.md, check N1: v 2.80 m/s, landing 0.040 m lower: flight 0.584791 s, flight-time height 0.41935 m.
        SeededRandom random = new(3);
        CountermovementSettings settings = new() { TakeOffVelocityMS = 2.8, LandingPostureDropM = 0.04 };
        Truth truth = Truths.Of(CountermovementJumps.Make(settings, random), new PlateSettings(), 0);
        Assert.Equal(0.584791, truth.Find(MeasureNames.FlightTime)!.Value, 1e-6);
        Assert.Equal(0.41935, truth.Find(MeasureNames.JumpHeightFlightTime)!.Value, 1e-5);
        Assert.Equal(0.39959, truth.Find(MeasureNames.JumpHeight)!.Value, 1e-5);
    }

    [Fact]
    public void KnownAsymmetry_IsInTheSamplesOfBothPlates()
    {
        SeededRandom random = new(9);
        SimulatedMotion jump = CountermovementJumps.Make(new CountermovementSettings(), random);
        PlateSettings plates = new()
        {
            NoiseN = 0,
            AsymmetryPct = 12,
            RateHz = 2000,
            ForceDecimals = 4,
        };
        SimulatedRecording recording = Plates.Record(jump, plates, random);
        double left = 0;
        double right = 0;
        for (int i = 0; i < recording.Samples; i++)
        {
            double t = i / plates.RateHz;
            if (t > recording.Truth.Events.BottomS && t < recording.Truth.Events.TakeOffS)
            {
                left += recording.LeftN[i];
                right += recording.RightN[i];
            }
        }

        Assert.Equal(12, recording.Truth.Find(MeasureNames.AsymmetryPropulsiveImpulse)!.Value, 1e-6);
        Assert.Equal(12, 100 * (left - right) / (left + right), 0.01);
    }

    private static SimulatedMotion Make(
        double takeOff,
        double depth,
        double fall,
        PushShape shape,
        double swayN,
        ulong seed
    ) =>
        CountermovementJumps.Make(
            new CountermovementSettings
            {
                TakeOffVelocityMS = takeOff,
                DepthM = depth,
                FallSpeedMS = fall,
                Shape = shape,
                SwayN = swayN,
            },
            new SeededRandom(seed)
        );

    private static byte[] Bytes(ulong seed)
    {
        SeededRandom random = new(seed);
        SimulatedMotion jump = CountermovementJumps.Make(new CountermovementSettings { SwayN = 3 }, random);
        return ForceCsv.Bytes(Plates.Record(jump, new PlateSettings { NoiseN = 2 }, random));
    }
}
