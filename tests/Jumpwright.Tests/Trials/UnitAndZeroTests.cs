using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A height by impulse does not change when every force is in another unit, so a wrong unit shows only in the weight: against the
/// mass on the label, or as nobody's weight. And an empty plate that reads something is taken off, as long as it stays the same.
/// </summary>
public class UnitAndZeroTests
{
    private const double PoundN = 4.4482216152605;

    private static readonly PlainJump Heavy = new()
    {
        MassKg = 100,
        NoiseN = 1,
        StandAfterS = 3,
    };

    private static Outcome<ImmutableArray<Trial>> Read(
        PlainJump jump,
        string column,
        double unitN,
        Func<double, double>? added = null,
        string label = ""
    ) => Recorded(jump, column, unitN, added, label).Then(r => Measuring.Of(r));

    private static Outcome<Recording> Recorded(
        PlainJump jump,
        string column,
        double unitN,
        Func<double, double>? added = null,
        string label = ""
    )
    {
        ForceRecording force = jump.Record();
        var text = new StringBuilder($"# task: countermovement-jump\n{label}time_s,{column}\n");
        for (int i = 0; i < force.TotalN.Length; i++)
        {
            double t = i / jump.RateHz;
            double newtons = force.TotalN.Span[i] + (added?.Invoke(t) ?? 0);
            text.Append(CultureInfo.InvariantCulture, $"{t:0.0000},{newtons / unitN:0.0000}\n");
        }

        return Recording.From(Encoding.UTF8.GetBytes(text.ToString()));
    }

    [Theory]
    [InlineData("force_lbf", PoundN)]
    [InlineData("force_kgf", 9.80665)]
    public void LabelledUnits_AreTurnedIntoNewtons_AndSaid(string column, double unitN)
    {
        Recording recording = Recorded(Heavy, column, unitN).Require();
        Assert.Contains(recording.Warnings, w => w.Contains("converted to newtons", StringComparison.Ordinal));
        Trial trial = Measuring.Of(recording).Require()[0];
        Assert.Equal(Heavy.WeightN, trial.Value(MeasureNames.BodyWeight), 1.0);
        Assert.Empty(trial.Doubtful);
    }

    [Fact]
    public void PoundsCalledNewtons_OfAKnownMass_AreRefused()
    {
        Assert.False(Read(Heavy, "force_N", PoundN, label: "# body_mass_kg: 99\n").TryGet(out _, out Refusal? refusal));
        Assert.Contains("looks like pounds", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void PoundsCalledNewtons_OfUnknownMass_LeaveNoForceToDecideFrom()
    {
        Trial trial = Read(Heavy, "force_N", PoundN).Require()[0];
        Assert.Equal(Heavy.HeightM, trial.Value(MeasureNames.JumpHeight), 0.01);
        Assert.Contains(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.Contains(MeasureNames.PeakPropulsivePower, trial.Doubtful);
        Assert.DoesNotContain(MeasureNames.JumpHeight, trial.Doubtful);
    }

    [Theory]
    [InlineData(98, false)]
    [InlineData(92, false)]
    [InlineData(75, true)]
    [InlineData(130, true)]
    public void StatedMassFarFromThePlates_MakesForcesDoubtful(double statedKg, bool doubtful)
    {
        string label = string.Create(CultureInfo.InvariantCulture, $"# body_mass_kg: {statedKg}\n");
        Trial trial = Read(Heavy, "force_N", 1, label: label).Require()[0];
        Assert.Equal(doubtful, trial.Doubtful.Contains(MeasureNames.PeakForce));
        Assert.Equal(
            statedKg is not 98,
            trial.Warnings.Any(w => w.Contains($"{statedKg:0.0} kg are stated", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void EmptyPlateFarFromZero_IsTakenOffAndSaid()
    {
        Trial trial = Read(Heavy, "force_N", 1, _ => 120).Require()[0];
        Assert.Equal(Heavy.WeightN, trial.Value(MeasureNames.BodyWeight), 2.0);
        Assert.Equal(Heavy.FlightS, trial.Value(MeasureNames.FlightTime), 0.002);
        Assert.Contains(trial.Warnings, w => w.Contains("reads 120 N; that was taken off", StringComparison.Ordinal));
    }

    /// <summary>A helper's foot on the plate's edge, pressed down while the athlete flies.</summary>
    [Fact]
    public void SomebodyLeaningInFlight_LeavesNothingToDecideFrom()
    {
        double middle = (Heavy.TakeOffS + Heavy.TouchDownS) / 2;
        Trial trial = Read(Heavy, "force_N", 1, t => 60 + (25 * Math.Sin(4 * (t - middle)))).Require()[0];
        Assert.Contains(trial.Warnings, w => w.Contains("leans on it", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.Contains(MeasureNames.FlightTime, trial.Doubtful);
    }

    /// <summary>A hand on the rail before the jump, or a helper's foot on the plate after it: the two stands tell.</summary>
    [Theory]
    [InlineData(true, -60)]
    [InlineData(false, 70)]
    public void SomebodyLeaningInOneStand_LeavesNoWeightAndNoHeightByImpulse(bool before, double newtons)
    {
        double end = before ? Heavy.OnsetS - 0.3 : Heavy.TouchDownS + Heavy.LandingS;
        Trial trial = Read(
                Heavy,
                "force_N",
                1,
                t => t < end == before ? newtons * (1 + (0.05 * Math.Sin(2 * Math.PI * 0.4 * t))) : 0
            )
            .Require()[0];
        Assert.Contains(trial.Warnings, w => w.Contains("somebody leaned", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.Contains(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.DoesNotContain(MeasureNames.FlightTime, trial.Doubtful);
    }

    /// <summary>
    /// Up onto a box there is no landing on the plate: an athlete who leans on a hand while weighed is seen by nothing but the mass on
    /// the label.
    /// </summary>
    [Theory]
    [InlineData(100, false)]
    [InlineData(102, false)]
    [InlineData(103, true)]
    [InlineData(97, true)]
    public void WithoutALanding_AMassThatIsNotTheStatedOne_LeavesNoHeight(double statedKg, bool doubtful)
    {
        ForceRecording whole = Heavy.Record();
        int landed = (int)((Heavy.TouchDownS - 0.05) * Heavy.RateHz);
        Trial trial = Measuring
            .Of(
                whole with
                {
                    TotalN = whole.TotalN[..landed],
                    Labels = new RecordingLabels(Task: JumpTask.BoxJump, BodyMassKg: statedKg),
                }
            )
            .Require()[0];
        foreach (
            string name in new[]
            {
                MeasureNames.JumpHeight,
                MeasureNames.TakeOffVelocity,
                MeasureNames.PeakPropulsivePower,
                MeasureNames.MeanPropulsivePower,
            }
        )
        {
            Assert.NotNull(trial.Find(name));
            Assert.Equal(doubtful, trial.Doubtful.Contains(name));
        }
    }
}
