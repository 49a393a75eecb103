using Jumpwright.Athletes.Growth;
using Jumpwright.Tests.CheckValues;

namespace Jumpwright.Tests.Athletes.Growth;

/// <summary>Mirwald et al. 2002 and Moore et al. 2015, rows T39, N17 and N20 of the reference table.</summary>
public class MaturityOffsetTests
{
    [Theory]
    [InlineData("T39a")]
    [InlineData("T39b")]
    public void Boys_ByMirwald(string id) => CheckValueTable.Assert(id, Boy);

    [Theory]
    [InlineData("N17a")]
    [InlineData("N17b")]
    public void Girls_ByMirwald(string id) => CheckValueTable.Assert(id, Girl);

    [Fact]
    public void ByMoore()
    {
        CheckValueTable.Assert(
            "N20a",
            r => MaturityOffset.MooreBoysSittingY(r.Number("age_y"), r.Number("sitting_height_cm"))
        );
        CheckValueTable.Assert(
            "N20b",
            r => MaturityOffset.MooreBoysStatureY(r.Number("age_y"), r.Number("stature_cm"))
        );
        CheckValueTable.Assert("N20c", r => MaturityOffset.MooreGirlsY(r.Number("age_y"), r.Number("stature_cm")));
    }

    /// <summary>Literature 14: without the factor 100 the first boy reads −1.260 and the first girl −1.675 years.</summary>
    [Fact]
    public void LostFactor100_MovesTheResult_ByMoreThanItsOwnError()
    {
        CheckValue boy = CheckValueTable.Row("T39a");
        CheckValue girl = CheckValueTable.Row("N17a");
        double boyLost = Boy(boy) - (0.99 * 0.02292 * 100 * boy.Number("body_mass_kg") / boy.Number("stature_cm"));
        double girlLost = Girl(girl) - (0.99 * 0.07693 * 100 * girl.Number("body_mass_kg") / girl.Number("stature_cm"));
        Assert.Equal(-1.260, boyLost, 3);
        Assert.Equal(-1.675, girlLost, 3);
        Assert.True(Boy(boy) - boyLost > MaturityOffset.MirwaldBoysStandardErrorY);
        Assert.True(Girl(girl) - girlLost > MaturityOffset.MirwaldGirlsStandardErrorY);
    }

    private static double Boy(CheckValue r) =>
        MaturityOffset.MirwaldBoysY(
            r.Number("age_y"),
            r.Number("stature_cm"),
            r.Number("sitting_height_cm"),
            r.Number("body_mass_kg")
        );

    private static double Girl(CheckValue r) =>
        MaturityOffset.MirwaldGirlsY(
            r.Number("age_y"),
            r.Number("stature_cm"),
            r.Number("sitting_height_cm"),
            r.Number("body_mass_kg")
        );
}
