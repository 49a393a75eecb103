using System.Text.RegularExpressions;
using Jumpwright.App.Kit;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// Where German was chosen the kit desk, the exercises and the cards hold nothing that says it is English, but for what is a source of
/// literature, which is in the language it was published in.
/// </summary>
[Collection("pages")]
public partial class SpeaksGermanTests(ServedDemo demo)
{
    private static readonly HttpClient Client = new();

    public static TheoryData<string> Tools => [.. KitDesk.Tools.Select(t => t.Id)];

    [Theory]
    [MemberData(nameof(Tools))]
    public async Task TheKitDesk(string tool)
    {
        string page = await Get($"/kit?tool={tool}");
        Assert.Empty(English(page));
        // Numbers were worked out, so that their sentences stood there to be looked at.
        Assert.Contains("id=\"numbers\"", page);
    }

    [Theory]
    [InlineData("/kit?tool=bands&rest=9", "erwartet wird zwischen")]
    [InlineData(
        "/kit?tool=bands&anchor=round",
        "Der Anker links ist rund und rollt|der Anker links ist rund und rollt"
    )]
    [InlineData("/kit?tool=bands&readings=0.8:45", "Ablesungen der Waage")]
    [InlineData("/kit?tool=box&box=0.9", "liegt über der Obergrenze|lässt sich aus einem Sprung")]
    [InlineData("/kit?tool=drop&start=jump", "Herunterspringen gibt der Fallhöhe noch etwas dazu")]
    [InlineData("/kit?tool=bound&asked=99", "des höchsten bei diesem Athleten Gemessenen")]
    [InlineData("/kit?tool=spring&contact=0.4", "wo einem Halbsinus zu trauen ist")]
    [InlineData("/kit?tool=landing&landings=0.2:1900", "Landung")]
    [InlineData("/kit?tool=maximum&lifts=60:0.9", "Hebungen")]
    public async Task TheKitDesk_WhereItRefusesOrWarns(string path, string says)
    {
        string page = await Get(path);
        Assert.Empty(English(page));
        Assert.Matches(says, page);
    }

    [Fact]
    public async Task TheExercises()
    {
        string page = await Get("/exercises");
        Assert.Empty(English(page));
        Assert.Contains("Achillessehne geschätzt: Halbsinus-Kontakt", page);
    }

    [Fact]
    public async Task EveryCard()
    {
        foreach (var card in demo.Desk.Book.PlanOrNull!.Cards)
        {
            string page = await Get(App.Pages.Paths.Card(card.SessionId, card.AthleteId));
            Assert.Empty(English(page));
        }
    }

    [Fact]
    public async Task InEnglish_TheSameIsFoundToBeEnglish()
    {
        // The page's own language is on its root alone; what this looks for would be found.
        Assert.NotEmpty(English("<p lang=\"en\">Left in English</p>"));
        Assert.Contains("<html lang=\"en\"", await Get("/kit?tool=bands", "en"));
    }

    /// <summary>What says of itself that it is English and is no source.</summary>
    private static string[] English(string page) =>
        [.. Marked().Matches(page).Where(m => !IsOfLiterature(m.Groups["says"].Value.Trim())).Select(m => m.Value)];

    /// <summary>A source as it is cited, or ids of sources.</summary>
    private static bool IsOfLiterature(string says) =>
        Bibliography.Standard.Sources.Values.Any(s =>
            s.Kind is SourceKind.Published or SourceKind.Consensus && (s.Text == says || s.Brief == says)
        ) || says.Split(", ").All(Bibliography.Standard.Sources.ContainsKey);

    private async Task<string> Get(string path, string language = "de")
    {
        using var asked = new HttpRequestMessage(HttpMethod.Get, new Uri(new Uri(demo.Address), path));
        asked.Headers.Add("Accept-Language", language);
        using HttpResponseMessage answer = await Client.SendAsync(asked, TestContext.Current.CancellationToken);
        answer.EnsureSuccessStatusCode();
        return PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [GeneratedRegex("<(?!html)[^>]*lang=\"en\"[^>]*>(?<says>[^<]*)")]
    private static partial Regex Marked();
}
