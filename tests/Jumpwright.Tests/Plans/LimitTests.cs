using Jumpwright.Plans;

namespace Jumpwright.Tests.Plans;

public class LimitTests
{
    public static TheoryData<string> Ids => [.. Limits.All.Select(l => l.Id)];

    [Fact]
    public void Limits_All_HaveACaseThatBreaksThemAndOneThatJustKeepsThem() =>
        Assert.Equal(
            Limits.All.Select(l => l.Id).Order(StringComparer.Ordinal),
            LimitCases.All.Select(c => c.LimitId).Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Ids))]
    public void Limit_PlanThatJustKeepsIt_IsNotBreached(string id)
    {
        (Plan plan, PlanRequest request) = LimitCases.All.Single(c => c.LimitId == id).Kept;
        Assert.Empty(Limits.All.Single(l => l.Id == id).Check(plan, request));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Limit_PlanThatJustBreaksIt_IsBreachedByThatAmountAndSaysSo(string id)
    {
        LimitCases.Case its = LimitCases.All.Single(c => c.LimitId == id);
        var breaches = Limits.All.Single(l => l.Id == id).Check(its.Broken.Plan, its.Broken.Request).ToList();
        Assert.NotEmpty(breaches);
        Assert.Equal(its.Amount, breaches.Max(b => b.Amount), 9);
        Assert.All(breaches, b => Assert.Equal(id, b.LimitId));
        Assert.All(breaches, b => Assert.NotEqual("", b.Unit));
        Assert.All(breaches, b => Assert.EndsWith(".", b.Sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void Limits_Ids_AreUniqueAndTheirSourcesResolve()
    {
        Assert.Equal(Limits.All.Length, Limits.All.Select(l => l.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(
            Limits.All,
            l => Assert.True(Jumpwright.Quantities.Bibliography.Standard.Sources.ContainsKey(l.SourceId), l.SourceId)
        );
    }

    [Fact]
    public void Judge_Readings_SayHowNearThePlanCame()
    {
        (Plan plan, PlanRequest request) = LimitCases.All.Single(c => c.LimitId == "contacts-per-week").Kept;
        LimitReading week = Judge.Read(plan, request).Single(r => r.Id == "contacts-per-week" && r.AthleteId == "a01");
        Assert.Equal(40, week.Limit);
        Assert.Equal(40, week.Highest);
        Assert.Equal("at-most", week.Sense);
        Assert.Equal("contacts", week.Unit);
        Assert.Equal("2027-01-04", week.At);
    }
}
