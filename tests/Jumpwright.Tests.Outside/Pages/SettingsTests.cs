using System.IO.Compression;
using System.Net;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Everything out, an athlete out of folder and store, a parent's consent.</summary>
public sealed class SettingsTests : IAsyncLifetime
{
    private OwnSquad _squad = null!;
    private FrontDesk _desk = null!;

    public async ValueTask InitializeAsync()
    {
        _squad = await OwnSquad.Open();
        _desk = _squad.Desk;
    }

    public async ValueTask DisposeAsync() => await _squad.DisposeAsync();

    [Fact]
    public async Task Erase_OnlyWithTheIdTypedAgain_LeavesNothingOfThemInFolderStoreAndExport_AndSaysWhatItDoesNotReach()
    {
        string name = _desk.Book.Find("a02")!.Athlete.Name;
        string sha = _desk.Book.Find("a02")!.History.Trials[0].Sha256;
        int others = _desk.Opened.Recordings.Count(r => r.Labels.Athlete != "a02");
        _desk.Write(Entry("a02"), Entry("a03"));

        string refused = await Post("/settings/erase", ("athlete", "a02"), ("again", "a2"));
        Assert.Contains("Nothing was erased", refused);
        Assert.NotNull(_desk.Book.Find("a02"));

        string said = await Post("/settings/erase", ("athlete", "a02"), ("again", "a02"));
        Assert.Contains("a02 is erased", said);
        Assert.Contains("printed cards", said);
        Assert.Null(_desk.Book.Find("a02"));
        Assert.Equal("a03", Assert.Single(_desk.Journal).AthleteId);
        Assert.Equal(others, _desk.Opened.Recordings.Length);
        Assert.False(_desk.Opened.Store.RawBytes(sha).TryGet(out _, out _));
        Assert.DoesNotContain("/athletes/a02", await Get("/"));

        using var zip = new ZipArchive(new MemoryStream(await Bytes("/export/everything.zip")));
        Assert.NotNull(zip.GetEntry("athletes.csv"));
        foreach (ZipArchiveEntry entry in zip.Entries.Where(e => e.Name != OpenedSquad.StoreInFolder))
        {
            using var reader = new StreamReader(entry.Open());
            string text = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.DoesNotContain(name, text);
            Assert.DoesNotMatch(@"\ba02\b", text);
        }
    }

    [Fact]
    public async Task Consent_IsKeptWithWhoGaveIt_AndTheLastWordCounts()
    {
        await Post("/settings/consent", ("athlete", "a01"), ("by", "Parent <One>"), ("given", "yes"));
        await Post("/settings/consent", ("athlete", "a01"), ("by", "Parent <One>"), ("given", "no"));
        await Post("/settings/consent", ("athlete", "nobody"), ("by", "X"), ("given", "yes"));
        // What was taken back can't be taken back again, and a word that nobody chose is none.
        await Post("/settings/consent", ("athlete", "a01"), ("by", "Parent <One>"), ("given", "no"));
        await Post("/settings/consent", ("athlete", "a01"), ("by", "Parent <One>"));
        Assert.Equal(2, _desk.Journal.Length);
        Assert.All(_desk.Journal, e => Assert.Equal("a01", e.AthleteId));
        Assert.DoesNotContain("<One>", await Get("/settings"));
    }

    /// <summary>Nothing is to be taken back where nothing was given, and what lacking consent closes is said where the coach reads it.</summary>
    [Fact]
    public async Task Consent_OfAMinor_IsAskedForWithWhatItsLackCloses()
    {
        Athlete minor = _desk.Book.Leaves.First(l => l.Athlete.AgeOn(_desk.Book.Day) < 18).Athlete;
        string before = PageText.Of(await Get("/settings"));
        Assert.Contains("no link to their card leaves this machine", before);
        Assert.Contains($"Does not consent, for {minor.Name}", before);
        Assert.DoesNotContain($"Takes it back, for {minor.Name}", before);
        Assert.Contains("no link to the card leaves this machine", PageText.Of(await Get("/athletes/" + minor.Id)));

        await Post("/settings/consent", ("athlete", minor.Id), ("by", "Kim"), ("given", "no"));
        Assert.Contains("Kim does not consent, ", PageText.Of(await Get("/settings")));
        await Post("/settings/consent", ("athlete", minor.Id), ("by", "Kim"), ("given", "yes"));
        Assert.Contains($"Takes it back, for {minor.Name}", PageText.Of(await Get("/settings")));
        Assert.DoesNotContain(
            "no link to the card leaves this machine",
            PageText.Of(await Get("/athletes/" + minor.Id))
        );
    }

    [Fact]
    public async Task ScriptAndStyle_OfAnyPage_AreUnder300Kilobytes()
    {
        long css = (await Bytes("/assets/site.css")).Length;
        foreach (string script in new[] { "trial.js", "week.js", "import.js", "kit.js", "floor.js" })
        {
            long js = (await Bytes("/assets/" + script)).Length;
            Assert.InRange(css + js, 1000, 300_000);
        }
    }

    private static JournalEntry Entry(string athlete) =>
        new(
            Guid.NewGuid().ToString(),
            "here",
            athlete,
            "2027-01-04",
            NodaTime.Instant.FromUtc(2027, 1, 4, 9, 0),
            "tablet",
            "{\"here\":true}"
        );

    private async Task<string> Post(string path, params (string Name, string Value)[] fields)
    {
        using var client = new HttpClient();
        using var form = new FormUrlEncodedContent(fields.ToDictionary(f => f.Name, f => f.Value));
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri(_squad.Address + path),
            form,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private async Task<string> Get(string path)
    {
        using var client = new HttpClient();
        return await client.GetStringAsync(new Uri(_squad.Address + path), TestContext.Current.CancellationToken);
    }

    private async Task<byte[]> Bytes(string path)
    {
        using var client = new HttpClient();
        return await client.GetByteArrayAsync(new Uri(_squad.Address + path), TestContext.Current.CancellationToken);
    }
}
