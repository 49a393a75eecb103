using Jumpwright.Exercises;
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

    /// <summary>Inside the low work too: what needs nothing before it comes before what does.</summary>
    [Theory]
    [InlineData("snap-down", "pogo-hop", 0)]
    [InlineData("pogo-hop", "snap-down", 1)]
    public void OrderInSession_LowWork_BeginsWithWhatNeedsNothingBeforeIt(string first, string then, int breaches)
    {
        (Plan plan, PlanRequest request) = LimitCases.Planned(
            null,
            new(LimitCases.First, first, 2, 6),
            new(LimitCases.First, then, 2, 12)
        );
        EntryCriterion owned = Catalogue.Standard.Find("pogo-hop")!.Entry[0];
        Catalogue catalogue = new(
            [.. request.Catalogue.Exercises.Select(e => e.Id == "pogo-hop" ? e with { Entry = [owned] } : e)],
            System.Collections.Immutable.ImmutableDictionary<string, Jumpwright.Quantities.Source>.Empty
        );
        Assert.Equal(
            breaches,
            new Jumpwright.Plans.Rules.OrderInSession().Check(plan, request with { Catalogue = catalogue }).Count()
        );
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
