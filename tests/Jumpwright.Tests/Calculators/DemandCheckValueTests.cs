using Jumpwright.Calculators.Demands;
using Jumpwright.Calculators.Responses;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Calculators;

public class DemandCheckValueTests
{
    [Theory]
    [InlineData("T31a")]
    [InlineData("T31b")]
    [InlineData("T31c")]
    [InlineData("T31d")]
    [InlineData("T31e")]
    public void GroundForce_BesideTheLandingOfAVerticalJump(string id) =>
        CheckValueTable.Assert(
            id,
            row =>
                ExerciseDemands
                    .Of(new DemandInput(row.Number("peak_BW"), null, row.Number("vertical_jump_peak_BW")))
                    .Require()
                    .Value("relative_ground_force")
                    .Value
        );

    [Theory]
    [InlineData("T32a")]
    [InlineData("T32b")]
    [InlineData("T32c")]
    public void PatellarIndex_StandsInItsTier(string id) =>
        CheckValueTable.Assert(
            id,
            row => ExerciseDemands.Of(new DemandInput(null, row.Number("index"))).Require().Value("patellar_tier").Value
        );

    [Fact]
    public void PatellarTier_AtTheCuts_IsTheTierThePaperGives()
    {
        Assert.Equal(1, ExerciseDemands.TierOf(0.33));
        Assert.Equal(2, ExerciseDemands.TierOf(0.331));
        Assert.Equal(3, ExerciseDemands.TierOf(0.66));
    }

    [Fact]
    public void TwoComponents_OnDay14AndOnTheirBestDay()
    {
        CheckValueTable.Assert(
            "T38a",
            row =>
                TrainingResponses
                    .Of(
                        new ResponseInput(
                            [100],
                            (int)row.Number("day"),
                            row.Number("tau1_d"),
                            row.Number("tau2_d"),
                            row.Number("k1"),
                            row.Number("k2"),
                            row.Number("p0")
                        )
                    )
                    .Require()
                    .Value("modelled_response")
                    .Value
        );
        CheckValueTable.Assert(
            "T38b",
            row =>
                TrainingResponses
                    .Of(
                        new ResponseInput(
                            [100],
                            0,
                            row.Number("tau1_d"),
                            row.Number("tau2_d"),
                            row.Number("k1"),
                            row.Number("k2"),
                            row.Number("p0")
                        )
                    )
                    .Require()
                    .Value("peak_after_one_load_d")
                    .Value
        );
    }
}
