using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.App.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Who is turned away, or sent something that can't be meant, hears it in their language, whichever route answers.</summary>
public sealed partial class AnswersInGermanTests
{
    /// <summary>
    /// Every route that the program has, asked for what is not there and sent what can't be read. Those under /api speak English, as
    /// files and commands do.
    /// </summary>
    [Fact]
    public async Task EveryRoute_AskedForNothingThatIs_RefusesInGerman()
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true);
        RouteEndpoint[] routes =
        [
            .. squad
                .Site.Services.GetServices<EndpointDataSource>()
                .SelectMany(s => s.Endpoints)
                .OfType<RouteEndpoint>()
                .Where(r => !r.RoutePattern.RawText!.StartsWith("/api", StringComparison.Ordinal)),
        ];
        squad.Client.Timeout = TimeSpan.FromSeconds(60);
        var refused = new List<string>();
        var english = new List<string>();
        foreach (RouteEndpoint route in routes)
        {
            string path =
                "/"
                + Parameter()
                    .Replace(route.RoutePattern.RawText!, m => m.Value.Contains("int") ? "1" : "nobody")
                    .TrimStart('/');
            foreach (string method in route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"])
            {
                HttpContent?[] bodies = method == "POST" ? [.. Bodies()] : [null];
                foreach (HttpContent? body in bodies)
                {
                    using var asked = new HttpRequestMessage(new HttpMethod(method), new Uri(path, UriKind.Relative));
                    asked.Headers.AcceptLanguage.Add(new StringWithQualityHeaderValue("de"));
                    asked.Content = body;
                    using HttpResponseMessage answer = await squad.Client.SendAsync(
                        asked,
                        TestContext.Current.CancellationToken
                    );
                    Assert.True((int)answer.StatusCode < 500, $"{method} {path} answered {answer.StatusCode}");
                    string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
                    string what = $"{method} {path}: {(int)answer.StatusCode} {text[..Math.Min(text.Length, 120)]}";
                    if (text.StartsWith("{\"refused\":", StringComparison.Ordinal))
                    {
                        JsonElement said = JsonDocument.Parse(text).RootElement;
                        refused.Add(said.GetProperty("refused").GetString()!);
                        if (said.GetProperty("lang").GetString() != "de")
                        {
                            english.Add(what);
                        }
                    }
                    else if ((int)answer.StatusCode >= 400 && text.Length > 0 && !text.Contains("<html lang=\"de\""))
                    {
                        english.Add(what);
                    }
                }
            }
        }

        Assert.Empty(english);
        // A walk that nobody refuses anything can't fail.
        Assert.True(refused.Distinct().Count() >= 8, string.Join("\n", refused.Distinct()));
    }

    [Fact]
    public async Task FileOfAnotherKind_AndAFormThatIsTooLong_AreRefusedInGerman()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        squad.Client.DefaultRequestHeaders.AcceptLanguage.Add(new StringWithQualityHeaderValue("de"));
        using var file = new ByteArrayContent([1, 2, 3]);
        using HttpResponseMessage kind = await squad.Client.PostAsync(
            new Uri($"/import/{Guid.NewGuid()}/file?name=notes.txt", UriKind.Relative),
            file,
            TestContext.Current.CancellationToken
        );
        Assert.Contains("ist keine Aufnahme", await Said(kind));
        using HttpResponseMessage large = await squad.Post("/set-up/athlete", ("name", new string('x', 100_000)));
        Assert.Contains("als Formular", await Said(large));
    }

    /// <summary>A phone that was not paired, or whose card's link has ended, is told so; a program is told nothing but the status.</summary>
    [Theory]
    [InlineData("/", "Dieses Gerät ist nicht gekoppelt", "href=\"/pair\"")]
    [InlineData("/athletes/a01", "Dieses Gerät ist nicht gekoppelt", "href=\"/pair\"")]
    [InlineData("/c/gone", "Der Link dieser Karte", "<h1>")]
    public async Task NotPaired_APersonIsToldWhy_AProgramIsNot(string path, string says, string holds)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string folder = Directory.CreateTempSubdirectory("jumpwright-certificate-").FullName;
        using var certificate = ShareCertificate.In(folder, TimeProvider.System.GetUtcNow());
        await using WebApplication site = Site.Build(
            squad.Desk,
            0,
            new App.Sharing.Sharing(0, certificate, new Doorkeeper(NodaTime.SystemClock.Instance))
        );
        await site.StartAsync(TestContext.Current.CancellationToken);
        int port = new Uri(
            site.Urls.First(u => u.StartsWith("https:", StringComparison.Ordinal)).Replace("0.0.0.0", "x")
        ).Port;
        using var client = new HttpClient(
            new SocketsHttpHandler
            {
                // A device that trusts exactly this program's certificate.
                SslOptions =
                {
                    RemoteCertificateValidationCallback = (_, shown, _, _) =>
                        shown?.GetCertHashString() == certificate.GetCertHashString(),
                },
            }
        );
        var uri = new Uri($"https://localhost:{port}{path}");
        using var program = await client.GetAsync(uri, TestContext.Current.CancellationToken);
        Assert.Equal(401, (int)program.StatusCode);
        Assert.Empty(await program.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));

        client.DefaultRequestHeaders.Add("Accept", "text/html");
        client.DefaultRequestHeaders.AcceptLanguage.Add(new StringWithQualityHeaderValue("de"));
        using var person = await client.GetAsync(uri, TestContext.Current.CancellationToken);
        Assert.Equal(401, (int)person.StatusCode);
        string page = System.Net.WebUtility.HtmlDecode(await Said(person));
        Assert.Contains("<html lang=\"de\"", page);
        Assert.Contains(says, page);
        Assert.Contains(holds, page);
        Assert.DoesNotContain(squad.Desk.Book.Material.Squad.Name, page);
        Assert.DoesNotContain(squad.Desk.Book.Leaves[0].Athlete.Name, page);
        Directory.Delete(folder, recursive: true);
    }

    private static IEnumerable<HttpContent> Bodies()
    {
        yield return new StringContent("{}", Encoding.UTF8, "application/json");
        yield return new StringContent("[[[", Encoding.UTF8, "application/json");
        yield return new FormUrlEncodedContent([]);
    }

    private static Task<string> Said(HttpResponseMessage answer) =>
        answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    [GeneratedRegex(@"\{[^}]*\}", RegexOptions.None, 1000)]
    private static partial Regex Parameter();
}
