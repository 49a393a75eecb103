using Jumpwright.Statistics;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Statistics;

/// <summary>The rows of the reference table that concern reliability, change and symmetry; each names its source.</summary>
public class StatisticsCheckValueTests
{
    [Theory]
    [InlineData("T35a")]
    public void TypicalError_EightAthletesTwoTrials(string id) =>
        CheckValueTable.Assert(id, r => Reliability.TypicalError(r.Numbers("trial_1"), r.Numbers("trial_2")));

    [Fact]
    public void CoefficientOfVariation_EightAthletesTwoTrials() =>
        CheckValueTable.Assert(
            "T35b",
            r => Reliability.CoefficientOfVariationPct(r.Numbers("trial_1"), r.Numbers("trial_2"))
        );

    [Fact]
    public void LimitsOfAgreement_EightAthletesTwoTrials()
    {
        CheckValueTable.Assert(
            "T35c",
            r => Reliability.LimitsOfAgreement(r.Numbers("trial_1"), r.Numbers("trial_2")).Lower
        );
        CheckValueTable.Assert(
            "T35d",
            r => Reliability.LimitsOfAgreement(r.Numbers("trial_1"), r.Numbers("trial_2")).Upper
        );
    }

    [Fact]
    public void StandardErrorAndDetectableChange_FromAnIntraclassCorrelation()
    {
        CheckValueTable.Assert("T36a", r => Reliability.StandardErrorOfMeasurement(r.Number("SD"), r.Number("ICC")));
        CheckValueTable.Assert(
            "T36b",
            r =>
                Reliability.MinimalDetectableChange(
                    Reliability.StandardErrorOfMeasurement(r.Number("SD"), r.Number("ICC")),
                    1.96
                )
        );
    }

    [Theory]
    [InlineData("T34")]
    [InlineData("N11")]
    public void DetectableChange_OfALimbSymmetryIndex(string id) =>
        CheckValueTable.Assert(id, r => Reliability.MinimalDetectableChange(r.Number("SEM_points"), r.Number("z")));

    [Theory]
    [InlineData("N14a1", 0.50, false)]
    [InlineData("N14a2", 0.50, true)]
    [InlineData("N14b1", 0.90, false)]
    [InlineData("N14b2", 0.90, true)]
    public void Change_Interval(string id, double confidence, bool upper) =>
        CheckValueTable.Assert(
            id,
            r =>
                IndividualChange.Interval(r.Number("change"), r.Number("TE"), confidence) is var (low, high) && upper
                    ? high
                    : low
        );

    [Fact]
    public void Change_ProbabilityBeyondTheSmallestWorthwhile() =>
        CheckValueTable.Assert(
            "N14c",
            r => IndividualChange.ProbabilityAbove(r.Number("change"), r.Number("TE"), r.Number("SWC"))
        );

    [Fact]
    public void LimbSymmetry_OfDistancesAndOfTimes_TurnOppositeWays()
    {
        CheckValueTable.Assert(
            "T33",
            r => Symmetry.LimbSymmetryIndexPct(r.Number("involved_cm"), r.Number("uninvolved_cm"))
        );
        CheckValueTable.Assert(
            "N13",
            r => Symmetry.LimbSymmetryIndexTimedPct(r.Number("involved_s"), r.Number("uninvolved_s"))
        );
    }

    [Fact]
    public void Asymmetry_SameTwoLegsFiveFormulas_FiveNumbers()
    {
        CheckValueTable.Assert("N12a", r => Symmetry.OverLargerPct(r.Number("left"), r.Number("right")));
        CheckValueTable.Assert("N12b", r => Symmetry.OverSmallerPct(r.Number("left"), r.Number("right")));
        CheckValueTable.Assert("N12c", r => Symmetry.OverMeanPct(r.Number("left"), r.Number("right")));
        CheckValueTable.Assert("N12d", r => Symmetry.OverSumPct(r.Number("left"), r.Number("right")));
        CheckValueTable.Assert("N12e", r => Symmetry.SymmetryAnglePct(r.Number("left"), r.Number("right")));
    }

    [Theory]
    [InlineData("N15a")]
    [InlineData("N15b")]
    [InlineData("N15c")]
    [InlineData("N15d")]
    [InlineData("N15e")]
    [InlineData("N15f")]
    public void IntraclassCorrelation_FiveAthletesThreeTrials_EachFormByItsName(string id) =>
        CheckValueTable.Assert(
            id,
            r =>
            {
                IntraclassCorrelation icc = IntraclassCorrelation.Of(
                    Table([.. r.Text("rows").Split('|').Select(Numbers)])
                );
                return r.Topic switch
                {
                    "ICC(1,1)" => icc.OneWaySingle,
                    "ICC(1,k)" => icc.OneWayMean,
                    "ICC(2,1)" => icc.RandomSingle,
                    "ICC(2,k)" => icc.RandomMean,
                    "ICC(3,1)" => icc.FixedSingle,
                    "ICC(3,k)" => icc.FixedMean,
                    _ => double.NaN,
                };
            }
        );

    [Fact]
    public void IntraclassCorrelation_EightAthletesTwoTrials() =>
        CheckValueTable.Assert(
            "T35e",
            r =>
                IntraclassCorrelation
                    .Of(Table([.. r.Numbers("trial_1").Zip(r.Numbers("trial_2"), (a, b) => new[] { a, b })]))
                    .FixedSingle
        );

    /// <summary>Literature 10.1: log method 1.8436 %, smallest worthwhile change of the first trial 0.8592 cm.</summary>
    [Fact]
    public void EightAthletesTwoTrials_LogarithmsAndSmallestWorthwhileChange()
    {
        CheckValue row = CheckValueTable.Row("T35a");
        Assert.Equal(
            1.8436,
            Reliability.LogCoefficientOfVariationPct(row.Numbers("trial_1"), row.Numbers("trial_2")),
            4
        );
        Assert.Equal(0.8592, Spread.SmallestWorthwhileChange(row.Numbers("trial_1")), 4);
    }

    [Fact]
    public void Spread_FiveJumps()
    {
        CheckValueTable.Assert("N18a", r => Spread.StandardDeviation(r.Numbers("values_cm")));
        CheckValueTable.Assert("N18b", r => Spread.CoefficientOfVariationPct(r.Numbers("values_cm")));
    }

    [Theory]
    [InlineData("N16a", DeviationKind.Sample)]
    [InlineData("N16c", DeviationKind.Population)]
    public void Monotony_OfAWeek_WithItsDeviationNamed(string id, DeviationKind deviation) =>
        CheckValueTable.Assert(id, r => TrainingLoad.Monotony(r.Numbers("daily_load_AU"), deviation).Require());

    [Theory]
    [InlineData("N16b", DeviationKind.Sample)]
    [InlineData("N16d", DeviationKind.Population)]
    public void Strain_OfAWeek_WithItsDeviationNamed(string id, DeviationKind deviation) =>
        CheckValueTable.Assert(id, r => TrainingLoad.Strain(r.Numbers("daily_load_AU"), deviation).Require());

    [Fact]
    public void Monotony_EqualDays_IsRefusedAndNotInfinite() =>
        Assert.False(TrainingLoad.Monotony([300, 300, 300], DeviationKind.Sample).TryGet(out _, out _));

    [Fact]
    public void SessionLoad_AndItsExponentiallyWeightedMean()
    {
        CheckValueTable.Assert("T37a", r => TrainingLoad.OfSession(r.Number("RPE"), r.Number("minutes")));
        CheckValueTable.Assert(
            "T37b",
            r => TrainingLoad.ExponentiallyWeighted(r.Numbers("daily_load_AU"), (int)r.Number("N_days"))
        );
    }

    /// <summary>Mean of k trials has 1/√k of the error, and a shift of one whole trial counts in form 2 and not in form 3.</summary>
    [Fact]
    public void IntraclassCorrelation_ShiftOfOneTrial_CountsInForm2Only()
    {
        double[][] rows =
        [
            [30, 31],
            [35, 34.5],
            [28, 29],
            [38, 37],
        ];
        IntraclassCorrelation still = IntraclassCorrelation.Of(Table(rows));
        IntraclassCorrelation shifted = IntraclassCorrelation.Of(
            Table([.. rows.Select(r => new[] { r[0], r[1] + 4 })])
        );
        Assert.Equal(still.FixedSingle, shifted.FixedSingle, 10);
        Assert.True(shifted.RandomSingle < still.RandomSingle - 0.05);
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(double.Parse)];

    private static double[,] Table(double[][] rows)
    {
        double[,] table = new double[rows.Length, rows[0].Length];
        for (int i = 0; i < rows.Length; i++)
        {
            for (int j = 0; j < rows[i].Length; j++)
            {
                table[i, j] = rows[i][j];
            }
        }

        return table;
    }

    [Fact]
    public void TrialScatter_ManyOwnTrials_OutweighThePublishedValue()
    {
        double few = TrialScatter.Pooled(2 * 0.02 * 0.02, 2, 0.01, 8);
        double many = TrialScatter.Pooled(200 * 0.02 * 0.02, 200, 0.01, 8);
        Assert.InRange(few, 0.010, 0.014);
        Assert.InRange(many, 0.0195, 0.02);
    }
}
