using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.Paper;
using Jumpwright.Sessions;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Jumpwright.App.Pages;

/// <summary>The pages over one workbook: plain documents, loopback only, everything they need from this program itself.</summary>
internal static class Site
{
    private static readonly Dictionary<string, (string Resource, string Type)> Assets = new(StringComparer.Ordinal)
    {
        ["site.css"] = ("assets/site.css", "text/css; charset=utf-8"),
        ["icon.svg"] = ("assets/icon.svg", "image/svg+xml"),
        ["lato-regular.ttf"] = ("Jumpwright.Paper.Fonts.Lato-Regular.ttf", "font/ttf"),
        ["lato-bold.ttf"] = ("Jumpwright.Paper.Fonts.Lato-Bold.ttf", "font/ttf"),
    };

    /// <summary>Builds the site; the caller starts and stops it.</summary>
    /// <param name="book">What the pages show.</param>
    /// <param name="port">Port on 127.0.0.1; 0 takes any that is free.</param>
    public static WebApplication Build(Workbook book, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions
            {
                ContentRootPath = AppContext.BaseDirectory,
                EnvironmentName = Environments.Production,
                ApplicationName = typeof(Site).Assembly.GetName().Name,
            }
        );
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Logging.ClearProviders();
        builder.Services.AddRazorComponents();
        WebApplication app = builder.Build();
        app.Use(Guard);
        Map(app, book, new PictureBook(book.Material));
        return app;
    }

    /// <summary>
    /// Only for this machine: a page of a foreign host that points its name at 127.0.0.1 is turned away, and no page may
    /// load, frame or run anything from elsewhere, or any script at all.
    /// </summary>
    private static Task Guard(HttpContext context, RequestDelegate next)
    {
        if (context.Request.Host.Host is not ("127.0.0.1" or "localhost" or "[::1]"))
        {
            context.Response.StatusCode = StatusCodes.Status421MisdirectedRequest;
            return Task.CompletedTask;
        }

        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy =
            "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self' data:; base-uri 'none'; "
            + "form-action 'none'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        return next(context);
    }

    private static void Map(WebApplication app, Workbook book, PictureBook pictures)
    {
        app.MapGet("/", () => new RazorComponentResult<SquadPage>(new { Book = book }));
        app.MapGet("/week", () => new RazorComponentResult<WeekPage>(new { Book = book }));
        app.MapGet("/refused", () => new RazorComponentResult<RefusedPage>(new { Book = book }));
        app.MapGet("/exercises", () => new RazorComponentResult<ExercisesPage>(new { Book = book }));
        app.MapGet(
            "/athletes/{id}",
            (string id) =>
                book.Find(id) is { } leaf
                    ? new RazorComponentResult<AthletePage>(
                        new
                        {
                            Book = book,
                            Leaf = leaf,
                            Pictures = pictures.Of(id, book.Day),
                        }
                    )
                    : NotFound(book)
        );
        app.MapGet(
            "/cards/{session}/{athlete}.pdf",
            (string session, string athlete) =>
                Card(book, session, athlete) is { } card
                    ? Results.File(CardPdf.Render(card, pictures.Of(athlete, card.Date)), "application/pdf")
                    : NotFound(book)
        );
        app.MapGet(
            "/cards/{session}/{athlete}",
            (string session, string athlete) =>
                Card(book, session, athlete) is { } card
                    ? new RazorComponentResult<CardPage>(
                        new
                        {
                            Book = book,
                            Card = card,
                            Pictures = pictures.Of(athlete, card.Date),
                        }
                    )
                    : NotFound(book)
        );
        app.MapGet(
            "/sheets/{session}.pdf",
            (string session) =>
                book.PlanOrNull?.Sheets.FirstOrDefault(s => s.SessionId == session) is { } sheet
                    ? Results.File(CoachSheetPdf.Render(sheet), "application/pdf")
                    : NotFound(book)
        );
        app.MapGet("/assets/{name}", Asset);
        app.MapFallback(() => NotFound(book));
    }

    private static SessionCard? Card(Workbook book, string session, string athlete) =>
        book.PlanOrNull?.Cards.FirstOrDefault(c => c.SessionId == session && c.AthleteId == athlete);

    private static IResult NotFound(Workbook book) =>
        new RazorComponentResult<NotFoundPage>(new { Book = book }) { StatusCode = StatusCodes.Status404NotFound };

    private static IResult Asset(string name)
    {
        if (!Assets.TryGetValue(name, out (string Resource, string Type) asset))
        {
            return Results.NotFound();
        }

        Stream? stream =
            typeof(Site).Assembly.GetManifestResourceStream(asset.Resource)
            ?? typeof(CardPdf).Assembly.GetManifestResourceStream(asset.Resource);
        return stream is null ? Results.NotFound() : Results.Stream(stream, asset.Type);
    }
}
