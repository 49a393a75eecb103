using System.Collections.Immutable;
using CsCheck;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Calculators.Springs;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Calculators;

public class CurveTests
{
    /// <summary>The higher jump comes with the lighter load, and an end that no load reaches is paired with none.</summary>
    [Theory]
    [InlineData(0.2, 0.3, "0.3 m comes with 20 ± ", "0.2 m with 40 ± ")]
    [InlineData(0.2, 0.45, "0.45 m is more than the line gives without any load", "0.2 m with 40 ± ")]
    [InlineData(0.05, 0.3, "0.3 m comes with 20 ± ", "0.05 m would take more than 66 kg")]
    public void LoadsOfAHeight_ArePairedWithTheHeightTheyGive(double from, double to, string lighter, string heavier)
    {
        LoadedJump[] line = [new(0, 0.40), new(20, 0.30), new(40, 0.20), new(60, 0.10)];
        string said = LoadCurves.Of(new(LoadMeasure.Height, 75, [.. line], from, to)).Require().Sentence;
        Assert.StartsWith(lighter, said, StringComparison.Ordinal);
        Assert.Contains("; " + heavier, said, StringComparison.Ordinal);
    }

    private static ForceVelocityInput Samozino(CheckValue r) =>
        new(
            r.Number("body_mass_kg"),
            r.Number("push_off_m"),
            [.. r.Numbers("loads_kg").Zip(r.Numbers("heights_m"), (l, h) => new LoadedJump(l, h))]
        );

    [Theory]
    [InlineData("T28a", "force_at_zero_velocity_N_kg")]
    [InlineData("T28b", "velocity_at_zero_force_m_s")]
    [InlineData("T28c", "greatest_power_W_kg")]
    [InlineData("T28d", "slope_of_optimal_pct")]
    [InlineData("T29a", "slope_of_optimal_pct")]
    [InlineData("T29b", "slope_of_optimal_pct")]
    public void ForceVelocity_FiveLoads(string id, string value) =>
        CheckValueTable.Assert(id, r => ForceVelocityProfiles.Of(Samozino(r)).Require().Value(value).Value);

    [Fact]
    public void ForceVelocity_ClosedFormAndSearch_AgreeAndTheEvidenceStandsBeside()
    {
        ForceVelocityProfile profile = ForceVelocityProfiles.Of(Samozino(CheckValueTable.Row("T28a"))).Require();
        Assert.Equal(profile.OptimalSlopeBySearch, profile.OptimalSlope, 5);
        Assert.Contains("Lindberg", profile.Basis.Dispute, StringComparison.Ordinal);
        Assert.Contains("Wolte", profile.Basis.Dispute, StringComparison.Ordinal);
        Assert.Contains("can't be told", string.Join(' ', profile.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void ForceVelocity_CountermovementsOrTwoLoads_AreRefused()
    {
        ForceVelocityInput input = Samozino(CheckValueTable.Row("T28a"));
        Assert.False(ForceVelocityProfiles.Of(input with { SquatJumps = false }).TryGet(out _, out _));
        Assert.False(ForceVelocityProfiles.Of(input with { Jumps = input.Jumps[..2] }).TryGet(out _, out _));
    }

    [Fact]
    public void LoadVelocity_FourLifts_MaximumWithItsError()
    {
        LoadVelocity result = LoadVelocities
            .Of(new LoadVelocityInput([new(40, 1.15), new(60, 0.92), new(80, 0.70), new(100, 0.48)]))
            .Require();
        Assert.Equal(114.17, result.Value("estimated_maximum_kg").Value, 2);
        Assert.InRange(result.Value("estimated_maximum_kg").StandardUncertainty, 2.7, 8);
        Assert.Equal(142.87, result.Value("load_at_zero_velocity_kg").Value, 2);
    }

    [Fact]
    public void LoadVelocity_VelocityRisingWithLoad_IsRefused() =>
        Assert.False(LoadVelocities.Of(new LoadVelocityInput([new(40, 0.8), new(60, 0.9)])).TryGet(out _, out _));

    private static ImmutableArray<DropJumpTrial> Jumps(
        double peak,
        double bend,
        double noise,
        int seed,
        params double[] heights
    )
    {
        var random = new Jumpwright.Simulation.Chance.SeededRandom((ulong)seed);
        return
        [
            .. heights
                .SelectMany(h => Enumerable.Repeat(h, 3))
                .Select(h => new DropJumpTrial(
                    h,
                    1.6 * Math.Exp(-bend * (h - peak) * (h - peak)) * (1 + (noise * random.Normal())),
                    0.19 + (0.05 * h) + (0.004 * random.Normal())
                )),
        ];
    }

    [Fact]
    public void DropCurve_QuietTrials_FindsTheTopAndTakesTheLowestThatIsAsGood()
    {
        DropCurve curve = DropCurves
            .Of(new DropCurveInput(Jumps(0.45, 3, 0.01, 3, 0.2, 0.3, 0.4, 0.5, 0.6), 0.60))
            .Require();
        Assert.Equal(0.45, curve.Value("best_drop_m").Value, 0.04);
        Assert.InRange(curve.ChosenM, 0.30, 0.45);
        Assert.True(curve.ChanceWithin >= 0.95);
    }

    [Fact]
    public void DropCurve_AnyTrials_NeverChoosesOrProposesAboveTheLimit() =>
        Gen.Select(
                Gen.Double[0.15, 0.8],
                Gen.Double[0.5, 5],
                Gen.Double[0.02, 0.2],
                Gen.Int[1, 10000],
                Gen.Double[0.2, 0.6]
            )
            .Sample(
                (peak, bend, noise, seed, limit) =>
                {
                    DropCurve curve = DropCurves
                        .Of(new DropCurveInput(Jumps(peak, bend, noise, seed, 0.2, 0.3, 0.4), limit))
                        .Require();
                    return curve.ChosenM <= limit + 1e-9 && (curve.NextDropM ?? 0) <= Math.Min(limit, 0.5) + 1e-9;
                },
                iter: 40
            );

    [Fact]
    public void DropCurve_ContactOverTheCeilingEverywhere_SaysSoAndProposesNoHeight()
    {
        ImmutableArray<DropJumpTrial> slow =
        [
            .. Jumps(0.4, 2, 0.05, 5, 0.2, 0.3).Select(t => t with { ContactS = t.ContactS + 0.15 }),
        ];
        DropCurve curve = DropCurves.Of(new DropCurveInput(slow, 0.6)).Require();
        Assert.Contains("over the ceiling", curve.Sentence, StringComparison.Ordinal);
        Assert.Null(curve.NextDropM);
        Assert.Equal(0.2, curve.ChosenM);
    }

    [Fact]
    public void DropCurve_TooFewTrialsOrAllAboveTheLimit_IsRefused()
    {
        Assert.False(DropCurves.Of(new DropCurveInput([new(0.3, 1.4, 0.2)], 0.6)).TryGet(out _, out _));
        Assert.False(
            DropCurves.Of(new DropCurveInput(Jumps(0.4, 2, 0.05, 5, 0.3, 0.4), 0.2)).TryGet(out _, out Refusal? refusal)
        );
        Assert.Contains("limits allow", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void LoadCurve_WishedHeights_BecomeLoadsInsideTheBound()
    {
        ImmutableArray<LoadedJump> jumps = [new(0, 0.40), new(20, 0.30), new(40, 0.21)];
        LoadCurve curve = LoadCurves.Of(new LoadCurveInput(LoadMeasure.Height, 75, jumps, 0.25, 0.32)).Require();
        Assert.InRange(curve.FromKg, 14, 19);
        Assert.InRange(curve.ToKg, 29, 34);
        Assert.False(LoadCurves.Of(new LoadCurveInput(LoadMeasure.Height, 75, jumps, 0.05, 0.10)).TryGet(out _, out _));
    }

    [Fact]
    public void LoadCurve_Power_RangeHoldsTheTop()
    {
        ImmutableArray<LoadedJump> jumps =
        [
            .. new[] { 0.0, 15, 30, 45, 60 }.SelectMany(l =>
                Enumerable.Repeat(new LoadedJump(l, 4500 * Math.Exp(-1.2 * Math.Pow((l / 75) - 0.35, 2))), 2)
            ),
        ];
        LoadCurve curve = LoadCurves.Of(new LoadCurveInput(LoadMeasure.Power, 75, jumps)).Require();
        Assert.InRange(0.35 * 75, curve.FromKg, curve.ToKg);
        Assert.True(curve.ToKg <= 66 + 1e-9);
    }

    [Fact]
    public void Curves_NeverNameVelocityBands()
    {
        string said = string.Join(' ', Jumpwright.Calculators.CalculatorList.All.Select(b => b.Formula + b.Dispute));
        Assert.DoesNotContain("strength-speed", said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("speed-strength", said, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Spring_ShortContact_HasItsThreeNamesApart()
    {
        Spring spring = SpringRates.Of(new SpringInput(70, 0.20, 0.50, 0.002, 3800, 0.17, 0.75)).Require();
        Assert.Equal(22268.9, spring.Value("vertical_stiffness_time_model_N_m").Value, 1);
        Assert.Equal(1.5328, spring.Value("reactive_strength_index").Value, 4);
        Assert.Equal(2.5, spring.Value("flight_contact_ratio").Value, 9);
        Assert.Equal(9.81 * 0.25 / 8 / 0.75, spring.Value("reactive_strength_index_modified").Value, 9);
        Assert.Equal(3800 / 0.17, spring.Value("vertical_stiffness_N_m").Value, 6);
    }

    [Fact]
    public void Spring_ContactOutsideTheBand_GivesNoModelStiffness()
    {
        Spring spring = SpringRates.Of(new SpringInput(70, 0.32, 0.50)).Require();
        Assert.False(spring.ModelHolds);
        Assert.DoesNotContain(spring.Values, v => v.Name.StartsWith("vertical_stiffness", StringComparison.Ordinal));
    }

    [Fact]
    public void RunUp_FasterIsNotAlwaysHigher_FindsTheirOwnBestSpeed()
    {
        ImmutableArray<ApproachTrial> trials =
        [
            .. new[] { 2.0, 3, 4, 5, 6 }.SelectMany(v =>
                Enumerable.Repeat(
                    new ApproachTrial(
                        TakeOffFoot.TwoFeet,
                        v,
                        0.50 * Math.Exp(-0.05 * (v - 4) * (v - 4)),
                        0.22,
                        1.1,
                        1.0
                    ),
                    3
                )
            ),
            .. new[] { 3.0, 4.5, 6 }.SelectMany(v =>
                Enumerable.Repeat(new ApproachTrial(TakeOffFoot.OneFoot, v, 0.36 + (0.01 * v)), 3)
            ),
        ];
        RunUp result = RunUpCurves.Of(new RunUpInput(trials, 0.40, 0.01)).Require();
        Assert.Equal(4, result.TwoFeet!.BestSpeedMS, 0.4);
        Assert.InRange(4.0, result.TwoFeet.GoodFromMS, result.TwoFeet.GoodToMS);
        Assert.InRange(result.ChanceOneServes!.Value, 0, 0.25);
        Assert.Equal(1.1, result.Value("two_feet_last_step_ratio").Value, 6);
        Assert.Equal(1.1, result.Value("two_feet_last_step_m").Value, 6);
        Assert.Equal(0.22, result.Value("two_feet_contact_s").Value, 6);
        Assert.Equal(result.TwoFeet.ConvertedPct, result.Value("two_feet_converted_pct").Value, 9);
        Assert.Contains(
            "contact 220 ± 1 ms, last step 110 ± 1 cm, 1.10 ± 0.01 of the step before it",
            result.Sentence,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(result.Values, v => v.Name == "one_foot_contact_s");
        Assert.True(result.TwoFeet.LeftM > 0);
    }

    /// <summary>A limit below the slowest run-up measured leaves nothing to read: what a slower one gives was never measured.</summary>
    [Theory]
    [InlineData(2.9, false)]
    [InlineData(3.0, true)]
    public void RunUp_UnderALimit_IsReadOnlyWhereItWasMeasured(double limitMS, bool known)
    {
        ApproachTrial[] trials =
        [
            new(TakeOffFoot.TwoFeet, 3, 0.40),
            new(TakeOffFoot.TwoFeet, 3.5, 0.42),
            new(TakeOffFoot.TwoFeet, 4, 0.43),
        ];
        Outcome<RunUp> result = RunUpCurves.Of(new RunUpInput([.. trials], 0.38, 0.01, limitMS));
        Assert.Equal(known, result.TryGet(out RunUp? run, out Refusal? why));
        Assert.True(
            known
                ? run!.TwoFeet!.BestSpeedMS <= limitMS + 1e-9
                : why!.Sentence.Contains("the slowest is 3", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void RunUp_TwoTrials_IsRefused() =>
        Assert.False(
            RunUpCurves
                .Of(new RunUpInput([new(TakeOffFoot.TwoFeet, 3, 0.4), new(TakeOffFoot.TwoFeet, 4, 0.4)], 0.38, 0.01))
                .TryGet(out _, out _)
        );

    [Fact]
    public void PeakedCurve_MoreTrials_LeaveLessDoubt()
    {
        CurvePoint[] few = [new(0.2, 1.3), new(0.3, 1.5), new(0.4, 1.6)];
        CurvePoint[] many = [.. few, .. few, .. few, .. few];
        Assert.True(
            PeakedCurve.Of(many, CurveNumbers.Drop).BestPlace(0.1, 0.6).Sd
                < PeakedCurve.Of(few, CurveNumbers.Drop).BestPlace(0.1, 0.6).Sd
        );
        PeakedCurve curve = PeakedCurve.Of(few, CurveNumbers.Drop);
        Assert.True(curve.DoubtAfter(0.5, 3, 0.1, 0.5) < curve.BestPlace(0.1, 0.5).Sd);
    }
}
