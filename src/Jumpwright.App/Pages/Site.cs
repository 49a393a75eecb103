using System.Net;
using Jumpwright.App.Api;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages.Routes;
using Jumpwright.App.Settings;
using Jumpwright.App.Sharing;
using Jumpwright.App.Wording;
using Microsoft.AspNetCore.Connections.Features;
using NodaTime;

namespace Jumpwright.App.Pages;

/// <summary>The pages over one desk, everything they need from this program itself; by default for this machine only.</summary>
internal static class Site
{
    private const string FromOutside = "jumpwright-from-outside";

    /// <summary>What a site stands on and no squad is needed for, so that a start can make it while the squad is read.</summary>
    public static WebApplicationBuilder Prepare()
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions
            {
                ContentRootPath = AppContext.BaseDirectory,
                EnvironmentName = Environments.Production,
                ApplicationName = typeof(Site).Assembly.GetName().Name,
            }
        );
        builder.Logging.ClearProviders();
        builder.Services.AddOpenApi(ApiRoutes.Describe);
        return builder;
    }

    /// <summary>
    /// The same, with what the first page runs through run once: on a second core, while the squad is read, it costs no time.
    /// </summary>
    public static async Task<WebApplicationBuilder> PrepareForFirst()
    {
        WebApplicationBuilder builder = Prepare();
        await using ServiceProvider none = new ServiceCollection().BuildServiceProvider();
        _ = await PageWriting.Of<LockPage>(none, new { Next = "/" });
        return builder;
    }

    /// <summary>Builds the site; the caller starts and stops it.</summary>
    /// <param name="desk">What the pages work on.</param>
    /// <param name="port">Port on 127.0.0.1; 0 takes any that is free.</param>
    /// <param name="sharing">How other devices are let in; null leaves the pages to this machine alone.</param>
    /// <param name="clock">Tells for how long nobody touched a device; null takes the system's.</param>
    /// <param name="prepared">What <see cref="Prepare"/> made, for this site alone; null makes it now.</param>
    public static WebApplication Build(
        FrontDesk desk,
        int port,
        Sharing.Sharing? sharing = null,
        IClock? clock = null,
        WebApplicationBuilder? prepared = null
    )
    {
        WebApplicationBuilder builder = prepared ?? Prepare();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = IntakeRoutes.MostBytes;
            kestrel.Listen(IPAddress.Loopback, port);
            if (sharing is not null)
            {
                kestrel.Listen(
                    IPAddress.Any,
                    sharing.Port,
                    listen =>
                    {
                        listen.UseHttps(sharing.Certificate);
                        // Marks what comes by this door; nothing in a request can.
                        listen.Use(next =>
                            connection =>
                            {
                                connection.Items[FromOutside] = true;
                                return next(connection);
                            }
                        );
                    }
                );
            }
        });
        WebApplication app = builder.Build();
        ShareGuard? outside = sharing is null ? null : new ShareGuard(sharing.Door);
        app.Use(
            (context, next) =>
            {
                HouseSettings settings = desk.Settings.Now;
                string language = settings.Language ?? TextBook.Asked(context.Request.Headers.AcceptLanguage);
                Speech.Use(new Speech(language, settings.Units));
                return next(context);
            }
        );
        app.Use(
            (context, next) =>
                !IsFromOutside(context) ? Guard.Check(context, next)
                : outside is not null ? outside.Check(context, next)
                : Task.CompletedTask
        );
        var idle = new IdleLock(desk.Settings, clock ?? SystemClock.Instance);
        var locked = new LockGuard(idle);
        app.Use(
            (context, next) =>
            {
                Speech.Use(Speech.Now with { Catalogue = desk.Book.Catalogue });
                context.Response.OnCompleted(() =>
                {
                    desk.Shown();
                    return Task.CompletedTask;
                });
                return locked.Check(context, DeviceOf(context), next);
            }
        );
        app.Use(
            (context, next) =>
            {
                NotDone.Use(context, desk);
                return next(context);
            }
        );
        app.Use(Forms.Read);
        LockRoutes.Map(app, idle, DeviceOf);
        TrialRoutes.Map(app, desk);
        FloorRoutes.Map(app, desk);
        WeekRoutes.Map(app, desk);
        AmendmentRoutes.Map(app, desk);
        ShareRoutes.Map(app, desk, sharing);
        IntakeRoutes.Map(app, desk);
        ApiRoutes.Map(app, desk);
        SettingRoutes.Map(app, desk);
        SetUpRoutes.Map(app, desk);
        FeltRoutes.Map(app, desk);
        HealthRoutes.Map(app, desk);
        TestRoutes.Map(app, desk);
        RuleRoutes.Map(app, desk);
        KitRoutes.Map(app, desk);
        AssetRoutes.Map(app);
        PageRoutes.Map(app, desk);
        return app;
    }

    private static string DeviceOf(HttpContext context) => LockGuard.DeviceOf(context, IsFromOutside(context));

    private static bool IsFromOutside(HttpContext context) =>
        context.Features.Get<IConnectionItemsFeature>()?.Items.ContainsKey(FromOutside) == true;
}
