using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.House;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Every page, as wide as a phone, a tablet and a desk. The pictures are kept under artifacts/screenshots.</summary>
[Collection("pages")]
public class EveryPageTests(ServedDemo demo)
{
    private static readonly Dictionary<string, string> Paths = new(StringComparer.Ordinal)
    {
        ["squad"] = "/",
        ["week"] = "/week",
        ["refused"] = "/refused",
        ["exercises"] = "/exercises",
        ["athlete-well-known"] = "/athletes/a01",
        ["athlete-operated"] = "/athletes/a10",
        ["athlete-sore"] = "/athletes/a11",
        ["athlete-unknown"] = "/athletes/a13",
        ["health"] = "/health/a10",
        ["tests"] = "/tests/a10",
        ["ladder"] = "/athletes/a10/ladder",
        ["said"] = "/athletes/a01/said",
        ["recordings"] = "/athletes/a01/recordings",
        ["stations"] = "/week/stations",
        ["left-out"] = "/week/left-out",
        ["limits"] = "/week/limits",
        ["measures"] = "/athletes/a01/measures",
        ["why"] = "/cards/{session}/a01/why",
        ["import"] = "/import",
        ["share"] = "/share",
        ["settings"] = "/settings",
        ["set-up"] = "/set-up",
        ["rules"] = "/settings/rules",
        ["kit-bands"] = "/kit?tool=bands",
        ["kit-box"] = "/kit?tool=box",
        ["kit-seat"] = "/kit?tool=seat",
        ["kit-drop"] = "/kit?tool=drop",
        ["kit-load"] = "/kit?tool=load",
        ["kit-run-up"] = "/kit?tool=run-up",
        ["session"] = "/week/sessions/{session}?called=yes&here=a01&here=a02",
        ["why-not"] = "/cards/{session}/a01/why?not=depth-jump",
        ["floor"] = "/floor/",
        ["done"] = "/done",
        ["trial"] = "/trials/{trial}",
        ["card"] = "/cards/{session}/a01",
        ["card-nothing-planned"] = "/cards/{session}/a14",
    };

    private static readonly int[] Widths = [1440, 820, 390];

    public static TheoryData<string> Pages() => [.. Paths.Keys];

    /// <summary>What each page is called here.</summary>
    internal static IEnumerable<string> Names => Paths.Keys;

    /// <summary>That page, opened and ready to be used.</summary>
    internal static async Task<IPage> Opened(ServedDemo demo, string name, int width)
    {
        IPage page = await demo.Open(width);
        await Go(page, demo, name);
        return page;
    }

    /// <summary>Where it is.</summary>
    internal static string PathOf(ServedDemo demo, string name) =>
        Paths[name]
            .Replace("{session}", demo.FirstSession, StringComparison.Ordinal)
            .Replace("{trial}", demo.SomeTrial, StringComparison.Ordinal);

    internal static async Task Go(IPage page, ServedDemo demo, string name)
    {
        string path = PathOf(demo, name);
        IResponse? answer = await page.GotoAsync(path, new PageGotoOptions { WaitUntil = WaitUntilState.Load });
        Assert.Equal(200, answer!.Status);
        if (name == "floor")
        {
            await page.WaitForSelectorAsync("body[data-ready]");
            await page.Locator("[data-key^='open ']").First.ClickAsync();
        }

        if (name == "trial")
        {
            await page.WaitForSelectorAsync(".trace[data-from]");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Page_AtEveryWidth_NoErrors_NothingFromElsewhere_NoSidewaysScroll_NothingThatAxeFinds(string name)
    {
        IPage page = await demo.Open(Widths[0]);
        var errors = new List<string>();
        var foreign = new List<string>();
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                errors.Add(message.Text);
            }
        };
        page.PageError += (_, error) => errors.Add(error);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(demo.Address, StringComparison.Ordinal))
            {
                foreign.Add(request.Url);
            }
        };
        page.RequestFailed += (_, request) => errors.Add("failed: " + request.Url);

        await Go(page, demo, name);
        foreach (int width in Widths)
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.ScreenshotAsync(
                new PageScreenshotOptions
                {
                    FullPage = true,
                    Path = Repository.At("artifacts", "screenshots", $"{name}-{width}.png"),
                }
            );
            int overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth");
            Assert.True(overflow <= 0, $"{overflow} px wider than a window of {width}");

            // What axe finds hardly depends on the width: at one, and narrow for the pages that turn into another shape there.
            if (width == 820 || (width == 390 && name is "week" or "floor" or "trial"))
            {
                await Clean(page);
            }
        }

        Assert.Empty(errors);
        Assert.Empty(foreign);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        await page.CloseAsync();
    }

    [Fact]
    public async Task Proposal_BesideThePlan_IsAsCleanAsEveryPage()
    {
        demo.Desk.Try(
            "What if Ines Vallow misses Monday?",
            [
                new JournalEntry(
                    Guid.NewGuid().ToString(),
                    EntryKinds.TakenOut,
                    "a01",
                    demo.FirstSession,
                    NodaTime.Instant.FromUtc(2027, 1, 4, 9, 0),
                    "test",
                    """{"exercise":null,"holds":true}"""
                ),
            ],
            null,
            CancellationToken.None
        );
        IPage page = await demo.Open(820);
        await page.GotoAsync("/week");
        await page.WaitForSelectorAsync("#proposal");
        await Clean(page);
        foreach (int width in Widths)
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.ScreenshotAsync(
                new PageScreenshotOptions { Path = Repository.At("artifacts", "screenshots", $"proposal-{width}.png") }
            );
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0);
        }

        demo.Desk.DropProposal();
        await page.CloseAsync();
    }

    [Fact]
    public async Task Number_OpensWhereItComesFrom_ByKey_AndItsTraceIsALink()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/athletes/a01");
        ILocator origin = page.Locator("section:has(#measures) table .origin").First;
        await origin.Locator("summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await origin.And(page.Locator("[open]")).WaitForAsync();
        await origin.Locator("dl").WaitForAsync();
        string says = await origin.ReadAsync();
        foreach (
            string part in new[]
            {
                "Recordings",
                "Measured with",
                "Method",
                "By",
                "Jumpwright",
                "one standard uncertainty",
            }
        )
        {
            Assert.Contains(part, says);
        }

        await origin.Locator("a").First.ClickAsync();
        await page.ArriveAt("/trials/");
        await page.CloseAsync();
    }

    [Fact]
    public async Task Fold_WithoutScript_HoldsALinkToThePageWithItsContents()
    {
        IPage page = await demo.Open(820);
        IBrowserContext plain = await page.Context.Browser!.NewContextAsync(
            new BrowserNewContextOptions { JavaScriptEnabled = false, BaseURL = demo.Address }
        );
        IPage there = await plain.NewPageAsync();
        there.SetDefaultTimeout(120_000);
        await there.GotoAsync("/athletes/a10");
        await there.Locator(".ladder summary").First.ClickAsync();
        await there.Locator(".ladder details[open] a").First.ClickAsync();
        await there.ArriveAt("/athletes/a10/ladder#stage-");
        string id = new Uri(there.Url).Fragment[1..];
        Assert.Contains("not met", await there.Locator($"#{id}").ReadAsync());
        await plain.CloseAsync();
        await page.CloseAsync();
    }

    [Fact]
    public async Task Fold_OpenedWithScript_HoldsWhatThePageWithItsContentsSays()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/athletes/a10/ladder");
        string says = await page.Locator("div[id^='stage-']").Last.ReadAsync();
        await page.GotoAsync("/athletes/a10");
        await page.Locator(".ladder summary").First.ClickAsync();
        Assert.Equal(says, await page.Locator(".ladder details[open] > div").First.ReadAsync());
        await page.CloseAsync();
    }

    private static async Task Clean(IPage page)
    {
        AxeResult axe = await page.RunAxe();
        Assert.True(
            axe.Violations.Length == 0,
            string.Join(
                '\n',
                axe.Violations.Select(v =>
                    $"{v.Id}: {v.Help} ({v.Nodes.Length}, first {v.Nodes[0].Html[..Math.Min(200, v.Nodes[0].Html.Length)]})"
                )
            )
        );
    }

    [Fact]
    public async Task Keyboard_FirstStopSkipsToTheContent_AndAFoldedReasonOpensByKey()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/athletes/a01");
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("#content", await page.EvaluateAsync<string>("document.activeElement.getAttribute('href')"));
        await page.Keyboard.PressAsync("Enter");
        await page.ArriveAt("/athletes/a01#content$");

        ILocator folded = page.Locator("main details").First;
        await folded.Locator("summary").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await folded.And(page.Locator("[open]")).WaitForAsync();
        await page.CloseAsync();
    }

    [Fact]
    public async Task Week_PlannedAnewByItsButton_ShowsThePlanWhenItIsThere()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/week");
        object before = demo.Desk.Book.PlanOrNull!.Plan;
        await page.ClickAsync("text=Plan the week anew");
        await page.WaitForFunctionAsync("() => !document.querySelector('[data-planning]')");
        Assert.Null(demo.Desk.Planning);
        Assert.NotSame(before, demo.Desk.Book.PlanOrNull!.Plan);
        await page.WaitForSelectorAsync("text=Plan the week anew");
        await page.WaitForSelectorAsync("#changes");
        await page.CloseAsync();
    }

    [Fact]
    public async Task Squad_FoundByAWord_AndThoseWithSomethingToDecideFirst()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/");
        int all = await page.Locator(".roll > li").CountAsync();
        await page.FillAsync("#find", "nothing planned");
        await page.Locator("#find").PressAsync("Enter");
        await page.ArriveAt(@"/\?find=");
        int some = await page.Locator(".roll > li").CountAsync();
        Assert.InRange(some, 1, all - 1);
        await page.GotoAsync("/?first=decide");
        Assert.Equal(all, await page.Locator(".roll > li").CountAsync());
        Assert.StartsWith("Nothing planned.", await page.Locator(".roll > li summary").First.ReadAsync());
        await page.CloseAsync();
    }

    [Fact]
    public async Task Kit_FollowsWhatIsTyped_VerdictFirst()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/kit?tool=bands");
        Assert.StartsWith("Not safe as it stands", await page.Locator(".asking").ReadAsync());
        await page.SelectOptionAsync("#wear", "yes");
        await page.FillAsync("#mass", "200");
        await page.WaitForFunctionAsync(
            "() => document.querySelector('.asking').textContent.startsWith('The set-up holds')"
        );
        await page.SelectOptionAsync("#anchor", "round");
        await page.WaitForFunctionAsync("() => document.querySelector('.asking').textContent.includes('rolls')");
        await page.FillAsync("#athlete", "nonsense");
        await page.WaitForFunctionAsync("() => document.querySelector('.asking').textContent.includes('Body mass')");
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("seat", "height", "0.60", "Not met", "Met")]
    [InlineData("drop", "box", "0.20", "Below the 30 cm", "High intensity")]
    [InlineData("load", "jumps", "0:0.36", "", "")]
    public async Task KitCalculator_VerdictFollowsWhatIsTyped_AndThePictureIsToScale(
        string tool,
        string field,
        string typed,
        string then,
        string before
    )
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/kit?tool=" + tool);
        ILocator verdict = page.Locator(".asking");
        string first = await verdict.InnerTextAsync();
        Assert.StartsWith(before, PageText.Spoken(first), StringComparison.Ordinal);
        string drawn = await page.Locator("figure svg").First.InnerHTMLAsync();
        await page.FillAsync("#" + field, typed);
        await page.WaitForFunctionAsync("was => document.querySelector('.asking').textContent !== was", first);
        Assert.StartsWith(then, await verdict.ReadAsync(), StringComparison.Ordinal);
        if (tool != "load")
        {
            Assert.NotEqual(drawn, await page.Locator("figure svg").First.InnerHTMLAsync());
        }

        // The verdict stands before fields and numbers.
        Assert.True(
            await page.EvaluateAsync<bool>(
                "document.querySelector('.asking').compareDocumentPosition(document.querySelector('form[data-form]')) === Node.DOCUMENT_POSITION_FOLLOWING"
            )
        );
        await page.CloseAsync();
    }

    [Fact]
    public async Task Landmarks_HeaderNavigationMainFooter_OnceEach()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/week");
        foreach (string landmark in new[] { "body > header", "nav", "main", "body > footer" })
        {
            Assert.Equal(1, await page.Locator(landmark).CountAsync());
        }

        await page.CloseAsync();
    }

    [Fact]
    public async Task Print_LeavesTheNavigationOut()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync("/week");
        Assert.True(await page.Locator("nav ul").IsVisibleAsync());
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.False(await page.Locator("nav ul").IsVisibleAsync());
        await page.CloseAsync();
    }

    /// <summary>A4 is narrower than a tablet; folded as on a phone the week took a page an athlete.</summary>
    [Fact]
    public async Task Print_OnA4_LeavesTheWeekATable_ThatFits()
    {
        IPage page = await demo.Open(700);
        await page.GotoAsync("/week");
        Assert.Equal("block", await Shape(page));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Equal("table-cell", await Shape(page));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0);
        await page.CloseAsync();
    }

    private static Task<string> Shape(IPage page) =>
        page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.week td')).display");

    [Fact]
    public async Task Motion_ThereIsNone()
    {
        IPage page = await demo.Open(820, ReducedMotion.Reduce);
        await page.GotoAsync("/athletes/a01");
        Assert.Equal(0, await page.EvaluateAsync<int>("document.getAnimations().length"));
        await page.CloseAsync();
    }
}
