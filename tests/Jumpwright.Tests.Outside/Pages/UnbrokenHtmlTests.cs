using Jumpwright.App.Pages;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A document keeps everything but where its lines may end.</summary>
public class UnbrokenHtmlTests
{
    [Theory]
    [InlineData("<p>37.1 &#xB1; 0.3 cm</p>", "<p>37.1&#xA0;&#xB1;&#xA0;0.3&#xA0;cm</p>")]
    [InlineData(
        "<td data-column=\"30 cm\">a &amp; b, 5 kg</td>",
        "<td data-column=\"30 cm\">a &amp; b, 5&#xA0;kg</td>"
    )]
    // What a form sends and what is no running text stays.
    [InlineData("<option>30 cm</option><i>30 cm</i>", "<option>30 cm</option><i>30&#xA0;cm</i>")]
    [InlineData("<textarea>30 cm</textarea>", "<textarea>30 cm</textarea>")]
    [InlineData("<svg><text>30 cm</text></svg> 30 cm", "<svg><text>30 cm</text></svg> 30&#xA0;cm")]
    [InlineData("<title>4 Jan 2027</title>", "<title>4 Jan 2027</title>")]
    [InlineData("text at the end: 3 kg", "text at the end: 3&#xA0;kg")]
    public void TextIsHeld_TagsAreNot(string written, string passed)
    {
        Assert.Equal(passed, Passed(written, written.Length));
        // A renderer hands it over in pieces, wherever they end.
        Assert.Equal(passed, Passed(written, 1));
        Assert.Equal(passed, Passed(written, 3));
    }

    private static string Passed(string html, int pieces)
    {
        using var to = new StringWriter();
        using var unbroken = new UnbrokenHtml(to);
        foreach (char[] piece in html.Chunk(pieces))
        {
            unbroken.Write(piece, 0, piece.Length);
        }

        unbroken.Flush();
        return to.ToString();
    }
}
