using System.Net;
using Jumpwright.App.Settings;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>After some minutes without a touch the pages show nothing until the word is typed.</summary>
public class IdleLockTests
{
    private const string Entry = """
        {"entries":[{"id":"11111111-1111-4111-8111-111111111111","kind":"here","athlete":"a01","session":"2027-01-04-pm",
        "made_at":"2027-01-04T09:00:00Z","who":"tablet","data":{"here":true}}]}
        """;

    [Fact]
    public async Task WithoutAWord_NothingEverLocks()
    {
        var clock = new Standing();
        await using SquadSite site = await SquadSite.Open(clock);
        clock.Now += Duration.FromDays(2);
        Assert.Equal(HttpStatusCode.OK, (await site.Get("/")).Status);
    }

    [Fact]
    public async Task Untouched_LocksPagesAndApi_KeepsTheFloorsFiles_AndOpensByTheWord()
    {
        var clock = new Standing();
        await using SquadSite site = await SquadSite.Open(clock);
        string name = site.Desk.Book.Find("a01")!.Athlete.Name;
        await Set(site, here: true);
        clock.Now += Duration.FromMinutes(9);
        Assert.Contains(name, (await site.Get("/")).Text);
        clock.Now += Duration.FromMinutes(9);
        // What a page asks for by itself is no touch.
        await site.Get("/week/state");
        clock.Now += Duration.FromMinutes(1);

        foreach (
            string path in new[]
            {
                "/",
                "/week",
                "/athletes/a01",
                "/settings",
                "/export/everything.zip",
                "/api/athletes",
                "/floor/sessions",
            }
        )
        {
            (HttpStatusCode status, string text) = await site.Get(path);
            Assert.Equal(HttpStatusCode.Locked, status);
            Assert.DoesNotContain(name, text);
        }

        Assert.Equal(HttpStatusCode.Locked, await site.PostJson("/floor/log", Entry));
        Assert.Empty(site.Desk.Journal);
        Assert.Equal(HttpStatusCode.OK, (await site.Get("/floor/")).Status);
        Assert.Equal(HttpStatusCode.OK, (await site.Get("/floor/floor.js")).Status);

        (HttpStatusCode wrong, _) = await site.Post("/lock/open", ("word", "4712"), ("next", "/"));
        Assert.Equal(HttpStatusCode.Locked, wrong);
        Assert.Contains(name, (await site.Post("/lock/open", ("word", "4711"), ("next", "/"))).Text);

        // What the tablet kept is taken now, and nothing twice.
        Assert.Equal(HttpStatusCode.OK, await site.PostJson("/floor/log", Entry));
        Assert.Equal(HttpStatusCode.OK, await site.PostJson("/floor/log", Entry));
        Assert.Single(site.Desk.Journal);
    }

    [Fact]
    public async Task ThisMachine_StaysOpen_WhereOnlyOthersLock()
    {
        var clock = new Standing();
        await using SquadSite site = await SquadSite.Open(clock);
        await Set(site, here: false);
        clock.Now += Duration.FromDays(1);
        Assert.Equal(HttpStatusCode.OK, (await site.Get("/")).Status);
        var idle = new IdleLock(site.Desk.Settings, clock);
        Assert.False(idle.IsLocked("a tablet"));
        clock.Now += Duration.FromMinutes(10);
        Assert.True(idle.IsLocked("a tablet"));
        Assert.False(idle.IsLocked(IdleLock.ThisMachine));
    }

    [Fact]
    public async Task WrongWords_HaveToWait_AndTheRightOneToo()
    {
        var clock = new Standing();
        await using SquadSite site = await SquadSite.Open(clock);
        await Set(site, here: true);
        var idle = new IdleLock(site.Desk.Settings, clock);
        for (int i = 0; i < 5; i++)
        {
            Assert.Equal("That is not the word.", idle.Open("tablet", "0000"));
        }

        Assert.StartsWith("Too many wrong tries", idle.Open("tablet", "4711"));
        clock.Now += Duration.FromMinutes(1);
        Assert.Null(idle.Open("tablet", "4711"));
        Assert.False(idle.IsLocked("tablet"));
    }

    [Fact]
    public async Task TheWord_IsNotKept_NotBackedUp_AndNeededToChangeIt()
    {
        await using SquadSite site = await SquadSite.Open();
        await Set(site, here: true);
        string kept = await File.ReadAllTextAsync(
            Path.Combine(site.Folder, SettingsFile.Name),
            TestContext.Current.CancellationToken
        );
        Assert.DoesNotContain("4711", kept);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite,
                File.GetUnixFileMode(Path.Combine(site.Folder, SettingsFile.Name))
            );
        }

        using var zip = new MemoryStream();
        App.Desk.Archive.Write(site.Folder, site.Desk.Opened.Store, zip);
        using var archive = new System.IO.Compression.ZipArchive(zip);
        Assert.Null(archive.GetEntry(SettingsFile.Name));

        await site.Post("/settings/lock", ("old", "0000"), ("do", "off"));
        Assert.NotNull(site.Desk.Settings.Now.Lock);
        await site.Post("/settings/lock", ("old", "4711"), ("do", "off"));
        Assert.Null(site.Desk.Settings.Now.Lock);
    }

    [Theory]
    [InlineData("//elsewhere.example")]
    [InlineData("https://elsewhere.example")]
    [InlineData("/\\elsewhere.example")]
    public async Task Opening_LeadsToNoOtherHost(string next)
    {
        await using SquadSite site = await SquadSite.Open();
        await Set(site, here: true);
        await site.Post("/lock/now");
        Assert.Equal(HttpStatusCode.Locked, (await site.Get("/")).Status);
        (HttpStatusCode status, string text) = await site.Post("/lock/open", ("word", "4711"), ("next", next));
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains(site.Desk.Book.Material.Squad.Name, text);
    }

    private static async Task Set(SquadSite site, bool here)
    {
        (_, string said) = await site.Post(
            "/settings/lock",
            ("new", "4711"),
            ("again", "4711"),
            ("minutes", "10"),
            ("here", here ? "yes" : ""),
            ("do", "set")
        );
        Assert.Contains("The lock is set.", said);
    }

    private sealed class Standing : IClock
    {
        public Instant Now { get; set; } = Instant.FromUtc(2027, 1, 4, 9, 0);

        public Instant GetCurrentInstant() => Now;
    }
}
