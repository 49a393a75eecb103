using System.Text.RegularExpressions;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Plans;
using Jumpwright.Storage.Folders;
using Microsoft.AspNetCore.Builder;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A demo squad that a test may change: in a folder of its own, served on a free port, gone afterwards.</summary>
internal sealed partial class OwnSquad : IAsyncDisposable
{
    /// <summary>Simulated and measured once; every squad begins as a copy of one of these.</summary>
    private static readonly Lazy<string> Whole = new(() => Measured(_ => { }));

    private static readonly Lazy<string> Few = new(() => Measured(KeepFour));

    private OwnSquad(string folder, FrontDesk desk, WebApplication site)
    {
        Folder = folder;
        Desk = desk;
        Site = site;
        Client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(Address) };
    }

    public string Folder { get; }
    public FrontDesk Desk { get; }
    public WebApplication Site { get; }

    /// <summary>Asks it; a redirect is an answer.</summary>
    public HttpClient Client { get; }

    public string Address => Site.Urls.First();

    /// <summary>Opens one.</summary>
    /// <param name="plans">Whether a week is planned, with so much of a search as a test needs.</param>
    /// <param name="few">Only four of its athletes, so that a plan takes a moment.</param>
    /// <param name="weeks">How many weeks are planned.</param>
    /// <param name="before">Changes the folder before it is opened; what changes here is measured anew.</param>
    public static async Task<OwnSquad> Open(
        bool plans = false,
        bool few = false,
        int weeks = 1,
        Action<string>? before = null
    )
    {
        string folder = NewFolder(few);
        before?.Invoke(folder);
        return await Served(folder, plans, weeks);
    }

    /// <summary>Its folder alone, measured already; whoever asks removes it.</summary>
    public static string NewFolder(bool few)
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-own-").FullName;
        Copy((few ? Few : Whole).Value, folder);
        return folder;
    }

    /// <summary>A squad with nobody in it yet.</summary>
    public static Task<OwnSquad> Begin()
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-own-").FullName;
        SquadWriter.Begin(folder, "New", "Europe/Dublin");
        return Served(folder, plans: false, weeks: 1);
    }

    private static async Task<OwnSquad> Served(string folder, bool plans, int weeks)
    {
        var desk = new FrontDesk(
            OpenedSquad.Kept(folder, null, null, CancellationToken.None).Require(),
            DemoCommand.Day,
            weeks,
            new SolveBudget { DeterministicTime = 0.3 }
        );
        if (plans)
        {
            desk.Plan(null, CancellationToken.None);
        }

        WebApplication site = App.Pages.Site.Build(desk, 0);
        await site.StartAsync();
        return new OwnSquad(folder, desk, site);
    }

    public string At(string name) => Path.Combine(Folder, name);

    public async Task<string> Get(string path)
    {
        using HttpResponseMessage answer = await Client.GetAsync(
            new Uri(path, UriKind.Relative),
            TestContext.Current.CancellationToken
        );
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Sends a form as a page does.</summary>
    public async Task<HttpResponseMessage> Post(string path, params (string Name, string Value)[] form)
    {
        using var content = new FormUrlEncodedContent(form.Select(f => KeyValuePair.Create(f.Name, f.Value)));
        return await Client.PostAsync(new Uri(path, UriKind.Relative), content, TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await Site.DisposeAsync();
        Desk.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static string Measured(Action<string> change)
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-measured-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        DemoCommand.WriteSquad(folder);
        change(folder);
        OpenedSquad.Kept(folder, null, null, CancellationToken.None).Require().Dispose();
        return folder;
    }

    private static void KeepFour(string folder)
    {
        foreach (string table in Directory.EnumerateFiles(folder, "*.csv"))
        {
            File.WriteAllLines(table, [.. File.ReadAllLines(table).Where(line => !Others().IsMatch(line))]);
        }

        foreach (string recording in Directory.EnumerateFiles(Path.Combine(folder, "recordings")))
        {
            if (Others().IsMatch(Path.GetFileName(recording)))
            {
                File.Delete(recording);
            }
        }
    }

    [GeneratedRegex(@"\ba(0[5-9]|1\d)\b")]
    private static partial Regex Others();

    private static void Copy(string from, string to)
    {
        foreach (string path in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target);
        }
    }
}
