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

    [Fact]
    public void TrialScatter_ManyOwnTrials_OutweighThePublishedValue()
    {
        double few = TrialScatter.Pooled(2 * 0.02 * 0.02, 2, 0.01, 8);
        double many = TrialScatter.Pooled(200 * 0.02 * 0.02, 200, 0.01, 8);
        Assert.InRange(few, 0.010, 0.014);
        Assert.InRange(many, 0.0195, 0.02);
    }
}
