using System.Text.RegularExpressions;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

public class BibliographyTests
{
    [Fact]
    public void Standard_AsShipped_ResolvesWhatTheTradeLeansOn()
    {
        Assert.Contains("Owen", Bibliography.Get("owen-2014").Text, StringComparison.Ordinal);
        Assert.Equal("10.1519/JSC.0000000000000311", Bibliography.Get("owen-2014").Doi);
        Assert.Equal(SourceKind.Consensus, Bibliography.Get("handbook-potach-chu").Kind);
        Assert.True(Bibliography.Get("handbook-potach-chu").FromMemory);
        Assert.Equal(SourceKind.CommonPractice, Bibliography.Get("common-practice").Kind);
        Assert.Equal(SourceKind.House, Bibliography.Get("house-rule").Kind);
    }

    [Fact]
    public void Standard_PublishedSources_NameAYearOrAnIdentifier()
    {
        string[] undated =
        [
            .. Bibliography
                .Standard.Sources.Values.Where(s =>
                    s.Kind == SourceKind.Published
                    && s.Doi is null
                    && !Regex.IsMatch(
                        s.Text,
                        @"(19|20)\d\d|PMC\d",
                        RegexOptions.ExplicitCapture,
                        TimeSpan.FromSeconds(1)
                    )
                )
                .Select(s => s.Id),
        ];

        // The reference we work from gives no year for these; each needs one before it may carry a limit.
        string[] known =
        [
            "addie-drop-heights",
            "dapena-high-jump",
            "duarte-watanabe-bmc",
            "ebben-isbs-eight",
            "everard-less",
            "prieske-youth-handball",
            "scissor-kick-2022",
            "stratford-2021",
            "winter-segments",
        ];
        Assert.Equal(known, undated);
    }

    [Fact]
    public void Get_UnknownId_SaysWhereToAddIt()
    {
        var e = Assert.Throws<KeyNotFoundException>(() => Bibliography.Get("nobody-1900"));
        Assert.Contains("sources.json", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        """[{"id":"a-1","kind":"published","text":"A."},{"id":"a-1","kind":"published","text":"B."}]""",
        "twice"
    )]
    [InlineData("""[{"id":"a-1","kind":"published","text":"  "}]""", "no text")]
    [InlineData("""[{"id":"a-1","kind":"published"}]""", "no text")]
    [InlineData("""[{"id":"A 1","kind":"published","text":"A."}]""", "kebab-case")]
    [InlineData("""[{"id":"a-1","kind":"hearsay","text":"A."}]""", "hearsay")]
    [InlineData("""[{"id":"a-1","kind":"published","text":"A.","mood":"fine"}]""", "mood")]
    [InlineData("""[{"id":"a-1","kind":"published","text":"A."}""", "line 1")]
    public void Read_ABrokenBibliography_RefusesWithWhatIsWrong(string json, string expected)
    {
        Assert.False(Bibliography.Read(json).TryGet(out _, out Refusal? refusal));
        Assert.Contains(expected, refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AGoodLine_KeepsItsMarks()
    {
        Source source = Bibliography
            .Read("""[{"id":"a-1","kind":"house","from_memory":true,"doi":"10.1/x","text":"A."}]""")
            .Require()["a-1"];
        Assert.Equal(new Source("a-1", "A.", SourceKind.House, FromMemory: true, "10.1/x"), source);
    }
}
