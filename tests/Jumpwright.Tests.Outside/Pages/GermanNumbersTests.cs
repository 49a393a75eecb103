using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.App.Kit;
using Jumpwright.App.Pages;
using Jumpwright.Quantities;
using Jumpwright.Tests.Outside.Wording;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// In German no number that people read has a decimal point, on any page, in any picture. What is typed into a list of pairs keeps its
/// points (there a comma parts pairs), and what is marked as English is as it was written.
/// </summary>
[Collection("pages")]
public partial class GermanNumbersTests(ServedDemo demo)
{
    private static readonly HttpClient Client = new();

    public static TheoryData<string> Pages => [.. EveryPageTests.Names.Where(n => n != "floor")];

    public static TheoryData<string> Tools => [.. KitDesk.Tools.Select(t => t.Id)];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task NoDecimalPoint_OnAPage(string name) =>
        Assert.Empty(Points(await Get(EveryPageTests.PathOf(demo, name))));

    [Theory]
    [MemberData(nameof(Tools))]
    public async Task NoDecimalPoint_AtTheKitDesk(string tool) => Assert.Empty(Points(await Get($"/kit?tool={tool}")));

    [Fact]
    public async Task NoDecimalPoint_OfAnybody_NorOnTheirCards()
    {
        List<string> left = [];
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            string athlete = Paths.Athlete(leaf.Athlete.Id);
            foreach (string path in new[] { athlete, $"{athlete}/said", $"{athlete}/ladder", $"{athlete}/measures" })
            {
                left.AddRange(Points(await Get(path)).Select(p => $"{path}: {p}"));
            }
        }

        foreach (var card in demo.Desk.Book.PlanOrNull!.Cards)
        {
            string path = Paths.Card(card.SessionId, card.AthleteId);
            left.AddRange(Points(await Get(path)).Select(p => $"{path}: {p}"));
        }

        Assert.Empty(left);
    }

    /// <summary>What a script writes: the floor with a session opened, and the trace.</summary>
    [Theory]
    [InlineData("floor")]
    [InlineData("trial")]
    public async Task NoDecimalPoint_WhereAScriptWrites(string name)
    {
        IPage page = await demo.Open(820);
        await page.SetExtraHTTPHeadersAsync(new Dictionary<string, string> { ["Accept-Language"] = "de" });
        await EveryPageTests.Go(page, demo, name);
        Assert.Equal("de", await page.EvaluateAsync<string>("document.documentElement.lang"));
        Assert.Empty(Points(await page.Locator("body").InnerTextAsync()));
        await page.CloseAsync();
    }

    [Fact]
    public async Task InEnglish_TheSameIsFound() =>
        Assert.NotEmpty(Points(await Get(EveryPageTests.PathOf(demo, "athlete-well-known"), "en")));

    /// <summary>Every exercise, condition and sentence of the core that has German words has no point in a number of its own.</summary>
    [Fact]
    public void NoDecimalPoint_InWhatIsWrittenInGerman() =>
        Assert.DoesNotContain(GermanText.All, words => Point().IsMatch(Hole().Replace(words, "")));

    private static string[] Points(string page)
    {
        string read = Unread().Replace(page, " ");
        read = Tag().Replace(read, " ").Replace($"Jumpwright {ProductVersion.Current}", "", StringComparison.Ordinal);
        return [.. Point().Matches(read).Select(m => m.Value)];
    }

    private async Task<string> Get(string path, string language = "de")
    {
        using var asked = new HttpRequestMessage(HttpMethod.Get, new Uri(new Uri(demo.Address), path));
        asked.Headers.Add("Accept-Language", language);
        using HttpResponseMessage answer = await Client.SendAsync(asked, TestContext.Current.CancellationToken);
        answer.EnsureSuccessStatusCode();
        return PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    /// <summary>What nobody reads as a German number: scripts, styles, fields, and what says that it is English.</summary>
    [GeneratedRegex(
        "<(?<part>script|style|head|textarea)\\b.*?</\\k<part>>|<(?!html)[a-z0-9]+[^>]* lang=\"en\"[^>]*>[^<]*<",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Unread();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    /// <summary>A point between two figures that is none of a date (04.01.) nor of a longer number with points (a version, an address).</summary>
    [GeneratedRegex(@"[^<>\n]{0,30}(?<![\d.])\d+\.\d+(?![\d.]).{0,12}")]
    private static partial Regex Point();

    [GeneratedRegex(@"\{\d+(?::[^}]*)?\}")]
    private static partial Regex Hole();
}
