using Jumpwright.App.Pages;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Rulings of one reason are told together, and no word of any is lost.</summary>
public class ToldRulingsTests
{
    private static readonly Source House = new("house-rule", "House rule", SourceKind.House);

    [Fact]
    public void RulingsOfOneReason_AreToldTogether_WithoutLosingAWord()
    {
        string[] said =
        [
            "Right Achilles pain 4 of 10: no hops. It ends with a later report of 0.",
            "Right Achilles pain 4 of 10: at most 40 contacts a session. It ends with a later report of 0.",
            "Under 16 on 4 Jan 2027: no depth jumps.",
        ];

        ToldRulings[] told = [.. ToldRulings.Of([.. said.Select(Saying)])];

        Assert.Equal(2, told.Length);
        Assert.Equal("Right Achilles pain 4 of 10:", told[0].Opening);
        Assert.Equal(["no hops.", "at most 40 contacts a session."], told[0].Each);
        Assert.Equal("It ends with a later report of 0.", told[0].Closing);
        Assert.Equal(said, told.SelectMany(t => t.Each.Select(e => $"{t.Opening} {e} {t.Closing}".Trim())));
    }

    [Fact]
    public void OneSentenceTwice_IsSaidOnce() =>
        Assert.Equal(["No drops."], ToldRulings.Of([Saying("No drops."), Saying("No drops.")]).Single().Each);

    [Fact]
    public void ASentenceWithinAnother_KeepsAWordOfItsOwn() =>
        Assert.All(
            ToldRulings.Of([Saying("a b c d e"), Saying("a b c d e e")]).Single().Each,
            each => Assert.NotEmpty(each)
        );

    private static Ruling Saying(string because) => new("some-limit", new NoJumps(), $"{because}", House);
}
