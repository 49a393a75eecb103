using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Defects;
using Jumpwright.Simulation.Demo;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Writing;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Simulation;

/// <summary>Squat jumps, drop jumps and hops keep the same laws; devices write what the contract asks for.</summary>
public class OtherTasksTests
{
    private const double G = Gravity.MetresPerSecondSquared;

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    [InlineData(14)]
    public void SquatJump_ForceExplainsTheMotion_AndTheDipIsTheOneAskedFor(double dipPct)
    {
        SimulatedMotion jump = SquatJumps.Make(new SquatJumpSettings { DipPct = dipPct }, new SeededRandom(4));
        MotionChecks.AssertWhole(jump);
        MotionChecks.AssertForceExplainsMotion(jump);
        Assert.Equal(dipPct, Truths.Of(jump, new PlateSettings(), 0).Find(MeasureNames.UnwantedDip)!.Value, 1e-6);
    }

    [Theory]
    [InlineData(0.20, 0.16)]
    [InlineData(0.45, 0.24)]
    [InlineData(0.60, 0.34)]
    public void DropJump_TruthIsTheFallAndTheContactAskedFor(double dropM, double contactS)
    {
        SimulatedMotion jump = DropJumps.Make(
            new DropJumpSettings
            {
                DropHeightM = dropM,
                BoxHeightM = dropM + 0.05,
                ContactS = contactS,
            },
            new SeededRandom(5)
        );
        MotionChecks.AssertWhole(jump);
        MotionChecks.AssertForceExplainsMotion(jump);
        Truth truth = Truths.Of(jump, new PlateSettings(), 0);
        Assert.Equal(dropM, truth.Find(MeasureNames.DropHeight)!.Value, 1e-9);
        Assert.Equal(contactS, truth.Find(MeasureNames.ContactTime)!.Value, 1e-9);
    }

    [Fact]
    public void Hops_EveryContactIsListed_AndTheBestFiveCount()
    {
        SimulatedMotion hops = HopSeries.Make(new HopSettings { Hops = 10 }, new SeededRandom(6));
        MotionChecks.AssertWhole(hops);
        MotionChecks.AssertForceExplainsMotion(hops);
        Truth truth = Truths.Of(hops, new PlateSettings(), 0);
        Assert.Equal(10, truth.Contacts.Length);
        Assert.Equal(5, truth.Find(MeasureNames.HopsCounted));
        Assert.Equal(
            truth.Contacts.Skip(1).OrderByDescending(c => c.ReactiveStrengthIndex).Take(5).Average(c => c.ContactS),
            truth.Find(MeasureNames.ContactTime)!.Value,
            1e-12
        );
    }

    [Fact]
    public void Mat_WritesContactsAndFlights_ToTheMillisecond()
    {
        SimulatedMotion hops = HopSeries.Make(new HopSettings { Hops = 6 }, new SeededRandom(7));
        var read = Assert.IsType<IntervalRecording>(Recording.From(IntervalCsv.Bytes(hops)).Require());
        Truth truth = Truths.Of(hops, new PlateSettings(), 0);
        Assert.Null(read.Intervals[0].ContactS);
        Assert.Equal(7, read.Intervals.Length);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(truth.Contacts[i].ContactS, read.Intervals[i + 1].ContactS!.Value, 0.0005001);
            Assert.Equal(truth.Contacts[i].FlightS, read.Intervals[i + 1].FlightS!.Value, 0.0005001);
        }
    }

    [Fact]
    public void Camera_OverManyPhases_SeesTheFlightWithinTheFrameAndUnbiased()
    {
        SimulatedMotion jump = CountermovementJumps.Make(new CountermovementSettings(), new SeededRandom(8));
        double truth = Truths.Of(jump, new PlateSettings(), 0).Find(MeasureNames.FlightTime)!.Value;
        double sum = 0;
        for (ulong seed = 0; seed < 400; seed++)
        {
            var film = (IntervalRecording)Recording.From(FrameCsv.Bytes(jump, 120, new SeededRandom(seed))).Require();
            double flight = film.Intervals.Single(i => i.FlightS is not null).FlightS!.Value;
            Assert.InRange(flight, truth - (1 / 120.0) - 1e-9, truth + (1 / 120.0) + 1e-9);
            sum += flight;
        }

        Assert.Equal(truth, sum / 400, 0.001);
    }

    [Fact]
    public void EveryDefectButTheRepairable_IsRefusedWithOneSentence()
    {
        SeededRandom random = new(9);
        byte[] good = ForceCsv.Bytes(
            Plates.Record(CountermovementJumps.Make(new CountermovementSettings { SwayN = 3 }, random), new(), random),
            new RecordingLabels(Task: JumpTask.CountermovementJump, BodyMassKg: 75)
        );
        foreach (Defect defect in DefectList.All)
        {
            bool measured = Recording
                .From(defect.Spoil(good))
                .Then(r => Measuring.Of(r))
                .TryGet(out _, out Refusal? refusal);
            Assert.True(measured == (defect.Id == "bom-crlf"), defect.Id + ": " + (refusal?.Sentence ?? "measured"));
            if (refusal is not null)
            {
                Assert.EndsWith(".", refusal.Sentence, StringComparison.Ordinal);
                Assert.DoesNotContain("\n", refusal.Sentence, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void DemoTable_TwiceTheSameBytes_WithAManifest()
    {
        const string table = """
            file,athlete,date,task,device,rate_hz,body_mass_kg,height_m,depth_m,drop_m,box_m,contact_s,hops,left_share_pct,external_load_kg,frames_per_second,dip_pct,noise_N,sway_N,seed,defect
            a.csv,a01,2027-01-03,countermovement-jump,two-plates,1000,70,0.35,0.3,,,,,52,,,,1.5,3,1,
            b.csv,a01,2027-01-03,drop-jump,plate,1000,70,0.30,,0.26,0.3,0.2,,,,,,1.5,3,2,
            c.csv,a01,2027-01-03,repeated-hops,mat,,70,0.22,,,,0.18,8,,,,,,,3,
            d.csv,a01,2027-01-03,countermovement-jump,camera,,70,0.32,,,,,,,,240,,,,4,
            e.csv,a01,2027-01-03,countermovement-jump,plate,1000,70,0.35,,,,,,,,,,,,5,truncated
            """;
        (string Path, byte[] Bytes)[] first = [.. DemoRecordings.Write(table)];
        (string Path, byte[] Bytes)[] again = [.. DemoRecordings.Write(table)];
        Assert.Equal(first.Select(f => f.Path), again.Select(f => f.Path));
        Assert.All(first.Zip(again), pair => Assert.Equal(pair.First.Bytes, pair.Second.Bytes));
        Assert.Contains(
            "recordings/b.csv,a01,2027-01-03,drop-jump,70,,0.3,both",
            Encoding.UTF8.GetString(first.Single(f => f.Path == "trials.csv").Bytes),
            StringComparison.Ordinal
        );
        foreach (
            (string path, byte[] bytes) in first.Where(f => f.Path.StartsWith("recordings/", StringComparison.Ordinal))
        )
        {
            bool measured = Recording.From(bytes).Then(r => Measuring.Of(r)).TryGet(out _, out Refusal? refusal);
            Assert.True(measured == !path.EndsWith("e.csv", StringComparison.Ordinal), path + ": " + refusal);
        }
    }
}
