using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The demo squad's pages on a free port, and Chromium to look at them where there is one.</summary>
public sealed class ServedDemo : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-pages-").FullName;
    private WebApplication? _site;
    private OpenedSquad? _squad;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>For example <c>http://127.0.0.1:40123</c>.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The first session of the week.</summary>
    public string FirstSession { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        DemoCommand.WriteSquad(_folder);
        _squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        Catalogue catalogue = Catalogue.Standard;
        PlannedWeek week = Bookkeeping
            .Plan(
                _squad.Material,
                catalogue,
                DemoCommand.Day,
                1,
                new SolveBudget { DeterministicTime = 1 },
                null,
                CancellationToken.None
            )
            .Require();
        FirstSession = week.Cards[0].SessionId;
        var book = new Workbook(
            _squad.Material,
            DemoCommand.Day,
            catalogue,
            Bookkeeping.Leaves(_squad.Material, catalogue, DemoCommand.Day),
            week
        );
        _site = Site.Build(book, 0);
        await _site.StartAsync();
        Address = _site.Urls.First();
    }

    /// <summary>A fresh page of that width; skips the test where there is no Chromium.</summary>
    public async Task<IPage> Open(int width, ReducedMotion motion = ReducedMotion.NoPreference)
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
            }
        );
        page.SetDefaultTimeout(60_000);
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

        _squad?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
