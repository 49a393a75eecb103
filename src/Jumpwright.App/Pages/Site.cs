using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages.Routes;

namespace Jumpwright.App.Pages;

/// <summary>The pages over one desk, everything they need from this program itself; by default for this machine only.</summary>
internal static class Site
{
    /// <summary>Builds the site; the caller starts and stops it.</summary>
    /// <param name="desk">What the pages work on.</param>
    /// <param name="port">Port on 127.0.0.1; 0 takes any that is free.</param>
    public static WebApplication Build(FrontDesk desk, int port)
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
        app.Use(Guard.Check);
        TrialRoutes.Map(app, desk);
        FloorRoutes.Map(app, desk);
        WeekRoutes.Map(app, desk);
        AssetRoutes.Map(app);
        PageRoutes.Map(app, desk);
        return app;
    }
}
