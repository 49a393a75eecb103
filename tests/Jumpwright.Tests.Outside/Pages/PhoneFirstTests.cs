using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>On a phone an athlete's page shows what is decided and keeps the rest one touch away; wider it shows all as it stands.</summary>
[Collection("pages")]
public class PhoneFirstTests(ServedDemo demo)
{
    [Fact]
    public async Task OnAPhone_WhatForbidsSymptomsAndCardsStand_AndTheRestIsFolded()
    {
        IPage page = await EveryPageTests.Opened(demo, "athlete-sore", 390);
        foreach (string stands in new[] { "rulings", "symptoms", "cards", "restrictions" })
        {
            Assert.Equal(0, await page.Locator($"[aria-labelledby={stands}] details.narrow").CountAsync());
            Assert.True(await page.Locator($"#{stands}").IsVisibleAsync(), stands);
        }

        // In this order, before anything that folds.
        double last = 0;
        foreach (string part in new[] { "rulings", "symptoms", "cards", "ladder" })
        {
            double at = (await page.Locator($"#{part}").BoundingBoxAsync())!.Y;
            Assert.True(at > last, part);
            last = at;
        }

        Assert.False(await page.Locator("ol.ladder").IsVisibleAsync());
        // Eight screens; it was thirty.
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollHeight"), 900, 7_200);
        await page.Locator("[aria-labelledby=ladder] details.narrow > summary").ClickAsync();
        Assert.True(await page.Locator("ol.ladder").IsVisibleAsync());
        await page.CloseAsync();
    }

    [Fact]
    public async Task Wider_NothingIsFolded()
    {
        IPage page = await EveryPageTests.Opened(demo, "athlete-sore", 820);
        Assert.True((await page.Locator("ol.ladder").BoundingBoxAsync())!.Height > 500);
        Assert.True(await page.Locator("ol.ladder").IsVisibleAsync());
        Assert.False(await page.Locator("details.narrow > summary").First.IsVisibleAsync());
        await page.CloseAsync();
    }

    [Fact]
    public async Task TheLadderOnAPhone_ShowsWhatClosesAStage_AndFoldsTheSingleSteps()
    {
        IPage page = await EveryPageTests.Opened(demo, "ladder", 390);
        Assert.True(await page.Locator("dl.reasons").First.IsVisibleAsync());
        Assert.False(await page.Locator("details.narrow dl.reasons").First.IsVisibleAsync());
        await page.CloseAsync();
    }
}
