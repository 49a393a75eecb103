using System.Net;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Plans;
using Microsoft.AspNetCore.Builder;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The demo squad's pages from a folder of their own, for tests that change it; asked without a browser.</summary>
internal sealed class SquadSite : IAsyncDisposable
{
    private readonly HttpClient _client = new(new HttpClientHandler { AllowAutoRedirect = true });
    private readonly WebApplication _site;

    private SquadSite(string folder, FrontDesk desk, WebApplication site)
    {
        Folder = folder;
        Desk = desk;
        _site = site;
        _client.BaseAddress = new Uri(site.Urls.First());
        _client.DefaultRequestHeaders.Add("Accept", "text/html");
    }

    public string Folder { get; }

    public FrontDesk Desk { get; }

    public static async Task<SquadSite> Open(IClock? clock = null)
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-site-").FullName;
        DemoCommand.WriteSquad(folder);
        var desk = new FrontDesk(
            OpenedSquad.Kept(folder, null, null, CancellationToken.None).Require(),
            DemoCommand.Day,
            1,
            new SolveBudget { DeterministicTime = 0.3 }
        );
        WebApplication site = Site.Build(desk, 0, null, clock);
        await site.StartAsync();
        return new SquadSite(folder, desk, site);
    }

    /// <summary>Plans and waits for it.</summary>
    public void Plan() => Desk.Plan(null, CancellationToken.None);

    public async Task<(HttpStatusCode Status, string Text)> Get(string path, string? language = null)
    {
        using var asked = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        if (language is not null)
        {
            asked.Headers.Add("Accept-Language", language);
        }

        using HttpResponseMessage answer = await _client.SendAsync(asked, TestContext.Current.CancellationToken);
        return (answer.StatusCode, await Text(answer));
    }

    public async Task<(HttpStatusCode Status, string Text)> Post(
        string path,
        params (string Name, string Value)[] fields
    )
    {
        using var form = new FormUrlEncodedContent(fields.ToDictionary(f => f.Name, f => f.Value));
        using HttpResponseMessage answer = await _client.PostAsync(
            new Uri(path, UriKind.Relative),
            form,
            TestContext.Current.CancellationToken
        );
        return (answer.StatusCode, await Text(answer));
    }

    public async Task<HttpStatusCode> PostJson(string path, string json)
    {
        using var body = new StringContent(json, System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await _client.PostAsync(
            new Uri(path, UriKind.Relative),
            body,
            TestContext.Current.CancellationToken
        );
        return answer.StatusCode;
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _site.DisposeAsync();
        Desk.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static async Task<string> Text(HttpResponseMessage answer) =>
        PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
}
