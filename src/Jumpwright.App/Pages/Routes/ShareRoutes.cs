using System.Collections.Immutable;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Sharing;
using Jumpwright.Plans;
using Jumpwright.Sessions;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Pages.Routes;

/// <summary>Letting devices in, shutting them out, links to cards.</summary>
internal static class ShareRoutes
{
    public static void Map(WebApplication app, FrontDesk desk, Sharing.Sharing? sharing)
    {
        Doorkeeper? door = sharing?.Door;
        app.MapGet("/share", () => Page(app, desk, sharing));
        if (sharing is null || door is null)
        {
            return;
        }

        app.MapPost("/share/code", () => Page(app, desk, sharing, code: door.NewCode()));
        app.MapPost(
            "/share/unpair",
            async (HttpRequest request) =>
            {
                door.Unpair((await request.ReadFormAsync())["hash"].ToString());
                return new SeeOther("/share");
            }
        );
        app.MapPost(
            "/share/revoke",
            async (HttpRequest request) =>
            {
                door.Revoke((await request.ReadFormAsync())["hash"].ToString());
                return new SeeOther("/share");
            }
        );
        app.MapPost(
            "/share/links",
            async (HttpRequest request) =>
                Links(app, desk, sharing, (await request.ReadFormAsync())["session"].ToString())
        );
        app.MapGet("/pair", () => Answers.Page<PairPage>());
        app.MapGet("/pair/{name}", (HttpContext context, string name) => Drawn(context, name, "/pair"));
        // Two parameters, so that the answer is not thrown away as a plain request delegate's would be.
        app.MapPost("/pair", (HttpContext context, CancellationToken cancel) => Pair(context, door, cancel));
        app.MapGet(
            "/c/{token}",
            (string token) =>
                door.Follow(token) is { } link
                && desk.Book.PlanOrNull?.Cards.FirstOrDefault(c =>
                    c.SessionId == link.SessionId && c.AthleteId == link.AthleteId
                )
                    is { } card
                && desk.Book.Find(card.AthleteId) is { } leaf
                && Consent.LetsALinkOut(leaf.Athlete, desk.Book, desk.Journal)
                    ? Answers.Page<SharedCardPage>(
                        new
                        {
                            Card = card,
                            Catalogue = desk.Book.Catalogue,
                            Base = "/c/" + token,
                        }
                    )
                    : Results.NotFound()
        );
        app.MapGet(
            "/c/{token}/{name}",
            (HttpContext context, string token, string name) =>
                door.Follow(token) is null ? Results.NotFound() : Drawn(context, name, "/c/" + token)
        );
    }

    private static IResult Page(
        WebApplication app,
        FrontDesk desk,
        Sharing.Sharing? sharing,
        string? code = null,
        string? refused = null,
        ImmutableArray<(string, string)> made = default,
        ImmutableArray<string> keptIn = default
    ) =>
        Answers.Page<SharePage>(
            new
            {
                desk.Book,
                sharing?.Door,
                Code = code,
                Refused = refused,
                Fingerprint = sharing is null
                    ? ""
                    : Convert.ToHexString(sharing.Certificate.GetCertHash(HashAlgorithmName.SHA256)),
                Addresses = sharing is null ? [] : Addresses(app),
                Made = made.IsDefault ? [] : made,
                KeptIn = keptIn.IsDefault ? [] : keptIn,
            }
        );

    /// <summary>Where other devices find this one.</summary>
    public static ImmutableArray<string> Addresses(WebApplication app)
    {
        string? shared = app
            .Services.GetRequiredService<IServer>()
            .Features.Get<IServerAddressesFeature>()
            ?.Addresses.FirstOrDefault(a => a.StartsWith("https:", StringComparison.Ordinal));
        if (shared is null)
        {
            return [];
        }

        int port = new Uri(shared.Replace("[::]", "localhost").Replace("0.0.0.0", "localhost")).Port;
        return
        [
            .. ShareCertificate
                .Addresses()
                .Where(a => !IPAddress.IsLoopback(a))
                .Select(a => $"https://{a}:{port}")
                .DefaultIfEmpty($"https://localhost:{port}"),
        ];
    }

    private static IResult Links(WebApplication app, FrontDesk desk, Sharing.Sharing sharing, string sessionId)
    {
        Workbook book = desk.Book;
        if (
            book.PlanOrNull is not { } week
            || week.Plan.Sessions.FirstOrDefault(s => s.Slot.Id == sessionId) is not { } session
        )
        {
            return Page(app, desk, sharing, refused: T["share.no-session"]);
        }

        Instant ends = EndOf(session.Slot, book.Material.Squad.TimeZone);
        if (ends <= SystemClock.Instance.GetCurrentInstant())
        {
            return Page(app, desk, sharing, refused: T["share.over"]);
        }

        string address = Addresses(app)[0];
        return Page(
            app,
            desk,
            sharing,
            made:
            [
                .. week
                    .Cards.Where(c => c.SessionId == sessionId && IsLetOut(c))
                    .Select(c => (c.AthleteName, $"{address}/c/{sharing.Door.NewLink(sessionId, c.AthleteId, ends)}")),
            ],
            keptIn: [.. week.Cards.Where(c => c.SessionId == sessionId && !IsLetOut(c)).Select(c => c.AthleteName)]
        );

        bool IsLetOut(SessionCard card) =>
            book.Find(card.AthleteId) is { } leaf && Consent.LetsALinkOut(leaf.Athlete, book, desk.Journal);
    }

    private static Instant EndOf(SessionSlot slot, string zone)
    {
        DateTimeZone place = SquadZone.Of(zone);
        return (slot.Date + slot.Start).InZoneLeniently(place).ToInstant() + Duration.FromMinutes(slot.Minutes);
    }

    private static async Task<IResult> Pair(HttpContext context, Doorkeeper door, CancellationToken cancel)
    {
        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        string name = form["name"].ToString().Trim();
        string? token = name.Length is > 0 and <= 40 ? door.Pair(form["code"].ToString(), name) : null;
        if (token is null)
        {
            return Answers.Page<PairPage>(new { Wrong = true }, StatusCodes.Status401Unauthorized);
        }

        context.Response.Cookies.Append(
            ShareGuard.Cookie,
            token,
            new CookieOptions
            {
                HttpOnly = true,
                Secure = true,
                SameSite = SameSiteMode.Strict,
                Path = "/",
            }
        );
        return new SeeOther("/floor/");
    }

    /// <summary>Style and letters under the address of a page that stands by itself, so that nothing else need be open.</summary>
    private static IResult Drawn(HttpContext context, string name, string under) =>
        name switch
        {
            "site.css" => Results.Text(
                AssetRoutes.Text("site.css")!.Replace("/assets/", under + "/", StringComparison.Ordinal),
                "text/css; charset=utf-8",
                Encoding.UTF8
            ),
            "lato-regular.ttf" or "lato-bold.ttf" => AssetRoutes.Of(context, name),
            _ => Results.NotFound(),
        };
}
