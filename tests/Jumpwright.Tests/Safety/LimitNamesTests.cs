using Jumpwright.Plans;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Safety;

/// <summary>Limits are called by people's words: an id is for files.</summary>
public class LimitNamesTests
{
    private static readonly string[] All =
    [
        .. LimitBook
            .Standard.All.Select(l => l.Id)
            .Concat(Limits.All.Select(l => l.Id))
            .Concat(LimitNames.OfRulings)
            .Distinct(StringComparer.Ordinal),
    ];

    [Fact]
    public void EveryLimit_HasANameOfItsOwn()
    {
        Assert.Empty(All.Except(LimitNames.Named, StringComparer.Ordinal));
        Assert.Equal(All.Length, All.Select(id => LimitNames.Of(id).ToString()).Distinct().Count());
    }

    [Fact]
    public void NoName_IsOfALimitThatIsNot() => Assert.Empty(LimitNames.Named.Except(All, StringComparer.Ordinal));

    [Theory]
    [InlineData("weekly-growth-achilles", "increase from week to week, Achilles tendon")]
    [InlineData("fresh-kit-minutes-drop-box", "kit time for fresh work, drop box")]
    [InlineData("own-within", "days for those clean sessions")]
    public void AName_IsNoRowOfTheIdsWords(string id, string name) => Assert.Equal(name, LimitNames.Of(id));
}
