using System.Text;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Storage.Stores;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Recordings dropped on the page: measured or refused with a sentence, labels mended, all of it taken back out.</summary>
[Collection("pages")]
public sealed class ImportPageTests(ServedDemo demo) : IAsyncLifetime
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
    public async Task FilesChosen_AreMeasuredOrRefused_MendedByTheirLabels_AndTakenBackOut()
    {
        string table = await File.ReadAllTextAsync(At("trials.csv"), TestContext.Current.CancellationToken);
        Dictionary<string, byte[]> before = Tree();
        int recordings = _desk.Opened.Recordings.Length;
        // A jump of somebody whose labels stand in a manifest; the same jump without labels and not quite the same bytes; one that is no recording.
        string good = Directory.EnumerateFiles(At("recordings"), "*cmj*.csv").Order(StringComparer.Ordinal).First();
        string jump = await File.ReadAllTextAsync(good, TestContext.Current.CancellationToken);
        string[] rows = [.. jump.Split('\n').Where(l => !l.StartsWith('#'))];
        FilePayload[] files =
        [
            File1("<b onclick=x>nobody's & jump.csv", string.Join('\n', rows)),
            File1("broken.csv", "time_s,force_N\n0,abc\n"),
            File1("notes.txt", "hello"),
            File1("athletes.csv", "id\n"),
        ];

        IPage page = await demo.Open(820);
        await page.GotoAsync(_squad.Address + "/import");
        await page.SetInputFilesAsync("#files", files);
        await page.ClickAsync("text=See what came of them");
        await page.WaitForSelectorAsync("text=Take these back out");
        string said = await page.Locator("main").ReadAsync();
        Assert.Contains("2 recordings: 0 measured, 2 refused.", said);
        Assert.Equal(recordings + 2, _desk.Opened.Recordings.Length);

        // The label that was missing is written, and the jump is measured.
        await page.Locator("details", new PageLocatorOptions { HasTextString = "nobody" })
            .Locator("summary")
            .ClickAsync();
        ILocator form = page.Locator("details[open] form");
        await form.Locator("select[name=athlete]").SelectOptionAsync("a02");
        await form.Locator("input[name=date]").FillAsync("2027-01-03");
        await form.Locator("select[name=task]").SelectOptionAsync("countermovement-jump");
        await form.Locator("button").ClickAsync();
        await page.WaitForSelectorAsync("[role=status] strong");
        string outcome = await page.Locator("[role=status] strong").ReadAsync();
        Assert.Contains("measured, 1 trial.", outcome);
        StoredRecording mended = Assert.Single(
            _desk.Opened.Recordings,
            r => r.File.Contains("nobody", StringComparison.Ordinal)
        );
        Assert.Null(mended.Refusal);
        Assert.Contains(_desk.Book.Find("a02")!.History.Trials, t => t.File == mended.File);

        await page.Locator("text=Take these back out").First.ClickAsync();
        await page.WaitForSelectorAsync("text=taken back.");
        Assert.Equal(recordings, _desk.Opened.Recordings.Length);
        Assert.Equal(table, await File.ReadAllTextAsync(At("trials.csv"), TestContext.Current.CancellationToken));
        Assert.Equal(before, Tree());
        await page.CloseAsync();
    }

    [Fact]
    public async Task FolderDropped_WithItsTrialsTable_IsMeasuredByIt_AndTakenBackOut()
    {
        int recordings = _desk.Opened.Recordings.Length;
        byte[] table = await File.ReadAllBytesAsync(At("trials.csv"), TestContext.Current.CancellationToken);
        string good = Directory.EnumerateFiles(At("recordings"), "*cmj*.csv").Order(StringComparer.Ordinal).First();
        string rows = string.Join(
            '\n',
            (await File.ReadAllLinesAsync(good, TestContext.Current.CancellationToken)).Where(l => !l.StartsWith('#'))
        );
        string dropped = Directory.CreateTempSubdirectory("jumpwright-dropped-").FullName;
        Directory.CreateDirectory(Path.Combine(dropped, "monday"));
        await File.WriteAllTextAsync(
            Path.Combine(dropped, "monday", "one.csv"),
            rows + "\n",
            TestContext.Current.CancellationToken
        );
        await File.WriteAllTextAsync(
            Path.Combine(dropped, "trials.csv"),
            "file,athlete,date,task\nmonday/one.csv,a03,2027-01-03,countermovement-jump\n",
            TestContext.Current.CancellationToken
        );
        IPage page = await demo.Open(820);
        await page.GotoAsync(_squad.Address + "/import");
        await page.SetInputFilesAsync("#folder", dropped);
        await page.WaitForSelectorAsync("text=Take these back out", new() { Timeout = 120_000 });
        Assert.Contains("1 recording: 1 measured, 0 refused.", await page.Locator("main").ReadAsync());
        Assert.Contains(
            _desk.Book.Find("a03")!.History.Trials,
            t => t.File.EndsWith("one.csv", StringComparison.Ordinal)
        );
        await page.Locator("text=Take these back out").First.ClickAsync();
        await page.WaitForSelectorAsync("text=taken back.");
        Assert.Equal(recordings, _desk.Opened.Recordings.Length);
        Assert.Equal(table, await File.ReadAllBytesAsync(At("trials.csv"), TestContext.Current.CancellationToken));
        Directory.Delete(dropped, recursive: true);
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("..%2F..%2Fevil.csv", "evil.csv")]
    [InlineData("..%5C..%5Cevil.csv", "evil.csv")]
    [InlineData("%E2%80%AEvsc.exe.csv", "_vsc.exe.csv")]
    [InlineData("CON%3A%00x.csv", "CON__x.csv")]
    public async Task NamesThatMislead_AreKeptUnderAPlainName_InsideTheFolder(string name, string kept)
    {
        using var client = new HttpClient();
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri($"{_squad.Address}/import/{Guid.NewGuid()}/file?name={name}"),
            new ByteArrayContent("time_s,force_N\n"u8.ToArray()),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(
            $$"""{"kept":"{{kept}}"}""",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task ANameAtTheSystemsLimit_IsShortened()
    {
        using var client = new HttpClient();
        string name = new string('é', 400) + ".csv";
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri($"{_squad.Address}/import/{Guid.NewGuid()}/file?name={Uri.EscapeDataString(name)}"),
            new ByteArrayContent([]),
            TestContext.Current.CancellationToken
        );
        string told = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.StartsWith("{\"kept\":", told);
        Assert.InRange(told.Length, 20, 420);
    }

    private string At(string name) => Path.Combine(_squad.Folder, name);

    private static FilePayload File1(string name, string text) =>
        new()
        {
            Name = name,
            MimeType = "text/csv",
            Buffer = Encoding.UTF8.GetBytes(text),
        };

    private Dictionary<string, byte[]> Tree() =>
        Directory
            .EnumerateFiles(At("recordings"), "*", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetRelativePath(_squad.Folder, f), File.ReadAllBytes, StringComparer.Ordinal);
}
