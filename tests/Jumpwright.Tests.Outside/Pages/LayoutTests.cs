using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What a page looks like where a hand or an eye would notice: a finger's width, a row's height, what stands first.</summary>
[Collection("pages")]
public class LayoutTests(ServedDemo demo)
{
    private const int Phone = 390;

    [Theory]
    [InlineData("squad", ".head nav a")]
    [InlineData("measures", ".results summary")]
    [InlineData("exercises", ".part > details > summary")]
    [InlineData("kit-bands", ".inline a")]
    public async Task OnAPhone_WhatIsTouched_IsAFingerHigh(string name, string touched)
    {
        IPage page = await EveryPageTests.Opened(demo, name, Phone);
        double[] heights = await page.EvaluateAsync<double[]>(
            "s => [...document.querySelectorAll(s)].map(e => e.getBoundingClientRect().height)",
            touched
        );
        Assert.NotEmpty(heights);
        Assert.All(heights, h => Assert.InRange(h, 43.5, 200));
        await page.CloseAsync();
    }

    /// <summary>A measure is a name and its number; where it comes from is folded away, and opens under both.</summary>
    [Fact]
    public async Task OnAPhone_AMeasureTakesOneRow_AndOpensInPlace()
    {
        IPage page = await EveryPageTests.Opened(demo, "measures", Phone);
        double[] rows = await page.EvaluateAsync<double[]>(
            "[...document.querySelectorAll('.results > li')].map(e => e.getBoundingClientRect().height)"
        );
        Assert.All(rows, r => Assert.InRange(r, 36, 76));
        string[] heads = [.. await page.Locator("h2").AllInnerTextsAsync()];
        Assert.Equal(heads.Distinct().Count(), heads.Length);

        ILocator first = page.Locator(".results .origin").First;
        await first.Locator("summary").ClickAsync();
        Assert.Contains("Method", await first.ReadAsync());
        LocatorBoundingBoxResult? opened = await first.BoundingBoxAsync();
        Assert.True(opened!.Width > 300, $"opened only {opened.Width} px wide");
        await page.CloseAsync();
    }

    /// <summary>What a practitioner needs first stands first: what forbids and what to do, symptoms, cards, the ladder, what limits; then the measures.</summary>
    [Fact]
    public async Task AthletesPage_BeginsWithWhatToDecide_AndEndsWithWhatWasMeasured()
    {
        IPage page = await EveryPageTests.Opened(demo, "athlete-well-known", Phone);
        string[] told = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('main section > h2')].map(h => h.id)"
        );
        string[] order =
        [
            "rulings",
            "symptoms",
            "cards",
            "restrictions",
            "next",
            "ladder",
            "findings",
            "gains",
            "jump",
            "measures",
            "work",
            "recordings",
        ];
        Assert.Equal(order.Where(told.Contains), told.Where(order.Contains));
        Assert.True(told.Intersect(order).Count() >= 10, string.Join(", ", told));
        await page.CloseAsync();
    }

    [Fact]
    public async Task NoNumber_IsTornFromItsUnit_OverALinesEnd()
    {
        IPage page = await EveryPageTests.Opened(demo, "athlete-well-known", Phone);
        // Each "37.1 ± 0.3 cm" of a running text stands on one line: its first and its last letter are level.
        string[] torn = await page.EvaluateAsync<string[]>(
            """
            () => {
              const torn = [], walk = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
              for (let node; (node = walk.nextNode());) {
                if (!node.parentElement.checkVisibility()) continue;
                for (const m of node.data.matchAll(/\d+(\.\d+)?\s±\s\d+(\.\d+)?\s(cm|ms|m\/s|%)/g)) {
                  const at = i => { const r = document.createRange(); r.setStart(node, i); r.setEnd(node, i + 1); return r.getBoundingClientRect().top; };
                  if (Math.abs(at(m.index) - at(m.index + m[0].length - 1)) > 4) torn.push(m[0]);
                }
              }
              return torn;
            }
            """
        );
        Assert.Empty(torn);
        await page.CloseAsync();
    }

    [Fact]
    public async Task Card_SaysEverythingBeforeItsPictures_WhichAreNoLargerThanTheyAreDrawnFor()
    {
        IPage page = await EveryPageTests.Opened(demo, "card", 1440);
        Assert.True(
            await page.EvaluateAsync<bool>(
                "!!(document.getElementById('landing').compareDocumentPosition(document.getElementById('pictures')) & Node.DOCUMENT_POSITION_FOLLOWING)"
            )
        );
        double[] widths = await page.EvaluateAsync<double[]>(
            "[...document.querySelectorAll('.card figure svg')].map(e => e.getBoundingClientRect().width)"
        );
        Assert.NotEmpty(widths);
        Assert.All(widths, w => Assert.InRange(w, 200, 360));
        await page.CloseAsync();
    }

    [Fact]
    public async Task Import_ShowsNoProgress_WhileNothingIsHandedIn()
    {
        IPage page = await EveryPageTests.Opened(demo, "import", 820);
        Assert.False(await page.Locator("#bar").IsVisibleAsync());
        await page.CloseAsync();
    }
}
