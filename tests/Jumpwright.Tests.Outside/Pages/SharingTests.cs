using System.Net;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.App.Sharing;
using Jumpwright.Athletes;
using Jumpwright.Sessions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What another device may see: nothing, until it is let in; then what the floor needs; a link shows one card.</summary>
[Collection("pages")]
public sealed partial class SharingTests : IAsyncLifetime
{
    /// <summary>A name that is not localhost, as a tablet would use; every request is sent to this machine all the same.</summary>
    private const string Name = "laptop.club.example";

    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-share-").FullName;
    private readonly Turned _clock = new();
    private readonly FrontDesk _desk;
    private readonly Doorkeeper _door;
    private readonly HttpClient _outside;
    private readonly CookieContainer _cookies = new();
    private System.Security.Cryptography.X509Certificates.X509Certificate2? _certificate;
    private WebApplication _site = null!;
    private string _address = "";

    public SharingTests(ServedDemo demo)
    {
        _desk = demo.Desk;
        _door = new Doorkeeper(_clock);
        _outside = new HttpClient(
            new SocketsHttpHandler
            {
                AllowAutoRedirect = false,
                CookieContainer = _cookies,
                // A device that trusts exactly this program's certificate, whatever its name.
                SslOptions =
                {
                    RemoteCertificateValidationCallback = (_, shown, _, _) =>
                        shown?.GetCertHashString() == _certificate?.GetCertHashString(),
                },
                ConnectCallback = async (context, cancel) =>
                {
                    var socket = new System.Net.Sockets.Socket(
                        System.Net.Sockets.SocketType.Stream,
                        System.Net.Sockets.ProtocolType.Tcp
                    );
                    await socket.ConnectAsync(IPAddress.Loopback, context.DnsEndPoint.Port, cancel);
                    return new System.Net.Sockets.NetworkStream(socket, ownsSocket: true);
                },
            }
        );
    }

    public async ValueTask InitializeAsync()
    {
        _certificate = ShareCertificate.In(_folder, TimeProvider.System.GetUtcNow());
        _site = Site.Build(_desk, 0, new App.Sharing.Sharing(0, _certificate, _door));
        await _site.StartAsync();
        int port = new Uri(
            _site.Urls.First(u => u.StartsWith("https:", StringComparison.Ordinal)).Replace("0.0.0.0", "x")
        ).Port;
        _address = $"https://{Name}:{port}";
    }

    public async ValueTask DisposeAsync()
    {
        _outside.Dispose();
        await _site.DisposeAsync();
        _certificate?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task EveryRoute_ByAnotherName_WithoutPairing_Answers401_ExceptWhereTheCodeIsTyped()
    {
        RouteEndpoint[] routes =
        [
            .. _site.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints).OfType<RouteEndpoint>(),
        ];
        Assert.True(routes.Length > 25, $"only {routes.Length} routes were found");
        foreach (RouteEndpoint route in routes)
        {
            string path = Parameter()
                .Replace("/" + route.RoutePattern.RawText!.TrimStart('/'), m => m.Value.Contains("int") ? "1" : "a01");
            foreach (string method in route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"])
            {
                using var asked = new HttpRequestMessage(new HttpMethod(method), _address + path);
                using HttpResponseMessage answer = await _outside.SendAsync(
                    asked,
                    TestContext.Current.CancellationToken
                );
                bool pairs = path == "/pair" || path.StartsWith("/pair/", StringComparison.Ordinal);
                Assert.True(
                    pairs || answer.StatusCode == HttpStatusCode.Unauthorized,
                    $"{method} {path} answered {answer.StatusCode}"
                );
                if (answer.StatusCode == HttpStatusCode.Unauthorized && !pairs)
                {
                    Assert.Empty(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
                }
            }
        }
    }

    [Fact]
    public async Task Pairing_ByTheCode_OpensTheFloor_NeverTheLaptopsOwnMatters_AndEndsWhenShutOut()
    {
        string code = _door.NewCode();
        using HttpResponseMessage paired = await Pair(code.ToLowerInvariant());
        Assert.Equal(HttpStatusCode.SeeOther, paired.StatusCode);
        string cookie = paired.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, await Status("/floor/"));
        Assert.Equal(HttpStatusCode.OK, await Status("/athletes/a01"));
        foreach (string own in new[] { "/share", "/import", "/settings", "/api/athletes", "/export/everything.zip" })
        {
            Assert.Equal(HttpStatusCode.Forbidden, await Status(own));
        }

        // A code is good once.
        using HttpResponseMessage again = await Pair(code);
        Assert.Equal(HttpStatusCode.Unauthorized, again.StatusCode);

        Assert.True(_door.Unpair(_door.Devices.Single().Hash));
        Assert.Equal(HttpStatusCode.Unauthorized, await Status("/floor/"));
    }

    [Fact]
    public async Task Code_AfterFiveMinutes_OrFiveWrongTries_IsVoid()
    {
        string late = _door.NewCode();
        _clock.Now += Duration.FromMinutes(5) + Duration.FromSeconds(1);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Pair(late)).StatusCode);

        string guessed = _door.NewCode();
        for (int i = 0; i < Doorkeeper.MostTries; i++)
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await Pair("AAAAAAAA")).StatusCode);
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await Pair(guessed)).StatusCode);
        Assert.Empty(_door.Devices);
    }

    [Fact]
    public async Task Link_ShowsOneCard_WithAFirstNameAndNothingOfHealth_UntilItsSessionEndsOrItIsTakenBack()
    {
        string[] health =
        [
            "operation",
            "operated",
            "surgery",
            "symptom",
            "restriction",
            "clinician",
            "physio",
            "swelling",
            "after an",
        ];
        foreach (SessionCard card in _desk.Book.PlanOrNull!.Cards)
        {
            string token = _door.NewLink(card.SessionId, card.AthleteId, _clock.Now + Duration.FromHours(1));
            Assert.True(token.Length >= 22, "128 bits fill 22 letters of base 64");
            if (_desk.Book.Find(card.AthleteId)!.Athlete.AgeOn(_desk.Book.Day) < 18)
            {
                // A minor for whom no consent is recorded.
                Assert.Equal(HttpStatusCode.NotFound, await Status($"/c/{token}"));
                continue;
            }

            string page = await Text($"/c/{token}");
            Athlete athlete = _desk.Book.Find(card.AthleteId)!.Athlete;
            string[] names = athlete.Name.Split(' ');
            Assert.Contains($"<h1>{WebUtility.HtmlEncode(names[0])}</h1>", page);
            Assert.All(names.Skip(1), n => Assert.DoesNotContain(WebUtility.HtmlEncode(n), page));
            Assert.DoesNotContain(card.AthleteId, page.Replace(token, "", StringComparison.Ordinal));
            string main = PageText
                .Of(page)
                .Replace(card.StopAtOnce, "", StringComparison.Ordinal)
                .Replace(card.Caution, "", StringComparison.Ordinal);
            Assert.All(health, word => Assert.DoesNotContain(word, main, StringComparison.OrdinalIgnoreCase));
            foreach (SymptomReport report in _desk.Book.Find(card.AthleteId)!.History.Symptoms)
            {
                Assert.DoesNotContain(report.Note ?? "\0", main, StringComparison.OrdinalIgnoreCase);
            }

            if (
                card.NothingPlanned?.ToString() is { } why
                && !why.StartsWith("Nothing is planned for you", StringComparison.Ordinal)
            )
            {
                Assert.DoesNotContain(why[..20], main, StringComparison.Ordinal);
            }
        }

        SessionCard first = _desk.Book.PlanOrNull!.Cards[0];
        string ends = _door.NewLink(first.SessionId, first.AthleteId, _clock.Now + Duration.FromMinutes(45));
        Assert.Equal(HttpStatusCode.OK, await Status($"/c/{ends}/site.css"));
        Assert.Equal(HttpStatusCode.Unauthorized, await Status($"/cards/{first.SessionId}/{first.AthleteId}"));
        _clock.Now += Duration.FromMinutes(46);
        Assert.Equal(HttpStatusCode.Unauthorized, await Status($"/c/{ends}"));

        string back = _door.NewLink(first.SessionId, first.AthleteId, _clock.Now + Duration.FromHours(1));
        Assert.Equal(HttpStatusCode.OK, await Status($"/c/{back}"));
        Assert.True(_door.Revoke(_door.Links.Single(l => l.Hash == Secrets.Hash(back)).Hash));
        Assert.Equal(HttpStatusCode.Unauthorized, await Status($"/c/{back}"));
    }

    [Fact]
    public async Task ByDefault_NothingListensBeyondThisMachine()
    {
        await using WebApplication alone = Site.Build(_desk, 0);
        await alone.StartAsync(TestContext.Current.CancellationToken);
        Assert.All(alone.Urls, u => Assert.StartsWith("http://127.0.0.1:", u));
    }

    [Fact]
    public void Certificate_IsKeptForItsOwnerAlone_AndMadeOnce()
    {
        string secret = Path.Combine(_folder, "jumpwright-share.pfx");
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(secret));
        }

        byte[] before = File.ReadAllBytes(secret);
        using var again = ShareCertificate.In(_folder, TimeProvider.System.GetUtcNow());
        Assert.Equal(before, File.ReadAllBytes(secret));
        using var renewed = ShareCertificate.In(_folder, TimeProvider.System.GetUtcNow().AddDays(370));
        Assert.NotEqual(again.Thumbprint, renewed.Thumbprint);
    }

    private Task<HttpResponseMessage> Pair(string code) =>
        _outside.PostAsync(
            new Uri(_address + "/pair"),
            new FormUrlEncodedContent(new Dictionary<string, string> { ["code"] = code, ["name"] = "Tablet" }),
            TestContext.Current.CancellationToken
        );

    private async Task<HttpStatusCode> Status(string path)
    {
        using HttpResponseMessage answer = await _outside.GetAsync(
            new Uri(_address + path),
            TestContext.Current.CancellationToken
        );
        return answer.StatusCode;
    }

    private Task<string> Text(string path) =>
        _outside.GetStringAsync(new Uri(_address + path), TestContext.Current.CancellationToken);

    [GeneratedRegex(@"\{[^}]*\}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Parameter();

    private sealed class Turned : IClock
    {
        public Instant Now { get; set; } = Instant.FromUtc(2027, 1, 4, 15, 0);

        public Instant GetCurrentInstant() => Now;
    }
}
