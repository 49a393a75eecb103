using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The demo squad's pages on a free port, and Chromium to look at them where there is one.</summary>
public sealed class ServedDemo : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-pages-").FullName;
    private WebApplication? _site;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>For example <c>http://127.0.0.1:40123</c>.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The first session of the week.</summary>
    public string FirstSession { get; private set; } = "";

    /// <summary>What the pages work on.</summary>
    internal FrontDesk Desk { get; private set; } = null!;

    /// <summary>Content and number of a trial on two plates, as in its address.</summary>
    public string SomeTrial =>
        Desk
            .Book.Find("a01")!
            .History.Trials.Where(t => t.Device == Device.TwoForcePlates)
            .Select(t => $"{t.Sha256}/{t.Trial.Number}")
            .First();

    public async ValueTask InitializeAsync()
    {
        DemoCommand.WriteSquad(_folder);
        OpenedSquad squad = OpenedSquad.Kept(_folder, null, null, CancellationToken.None).Require();
        Desk = new FrontDesk(squad, DemoCommand.Day, 1, new SolveBudget { DeterministicTime = 1 });
        Desk.Plan(null, CancellationToken.None);
        FirstSession = Desk.Book.PlanOrNull!.Cards[0].SessionId;
        _site = Site.Build(Desk, 0);
        _site.Use(KeepFloorOut);
        await _site.StartAsync();
        Address = _site.Urls.First();
    }

    /// <summary>
    /// Tests share the demo, so no browser writes to its log: to a tablet the program is away. A test that hands something in has a squad
    /// of its own.
    /// </summary>
    private static Task KeepFloorOut(HttpContext context, RequestDelegate next)
    {
        if (
            context.Request.Path == "/floor/log"
            && HttpMethods.IsPost(context.Request.Method)
            && context.Request.Headers.ContainsKey("Sec-Fetch-Site")
        )
        {
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            return Task.CompletedTask;
        }

        return next(context);
    }

    /// <summary>A fresh page of that width; skips the test where there is no Chromium.</summary>
    /// <param name="width">CSS pixels.</param>
    /// <param name="motion">What is preferred.</param>
    /// <param name="worker">False where requests are kept from the demo: what a page's worker sends passes every barrier, however early it takes over.</param>
    public async Task<IPage> Open(int width, ReducedMotion motion = ReducedMotion.NoPreference, bool worker = true)
    {
        if (Chromium.Find() is not { } program)
        {
            Assert.Skip("There is no Chromium on this machine, so pages were not looked at in a browser.");
            return null!;
        }

        _playwright ??= await Playwright.CreateAsync();
        _browser ??= await _playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = program,
                Args = Environment.UserName == "root" ? ["--no-sandbox"] : [],
                Timeout = 120_000,
            }
        );
        IPage page = await _browser.NewPageAsync(
            new BrowserNewPageOptions
            {
                BaseURL = Address,
                ViewportSize = new ViewportSize { Width = width, Height = 900 },
                ReducedMotion = motion,
                ServiceWorkers = worker ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
            }
        );
        page.SetDefaultTimeout(120_000);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        if (_site is not null)
        {
            await _site.DisposeAsync();
        }

        Desk?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
