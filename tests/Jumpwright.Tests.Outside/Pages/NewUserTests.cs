using System.Diagnostics;
using Jumpwright.App.Desk;
using Jumpwright.Tests.Outside.House;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// From a folder of recordings to a printed card with nothing but the pages, each step by what stands on the page: the way of
/// docs/first-use.md, which says how long it took and where it stalled.
/// </summary>
[Collection("pages")]
public sealed class NewUserTests(ServedDemo demo)
{
    /// <summary>On a phone, a tablet and a desk. Times beside the pictures are the program's and a script's, never a person's.</summary>
    [Theory]
    [InlineData(390)]
    [InlineData(820)]
    [InlineData(1440)]
    public async Task FolderOfRecordings_NobodySetUp_EndsInACardToPrint(int width)
    {
        string kept = Repository.At("artifacts", "screenshots", "first-use", $"{width}");
        Directory.CreateDirectory(kept);
        var clock = Stopwatch.StartNew();
        var times = new List<string>();
        await using OwnSquad squad = await OwnSquad.Begin();
        string club = Directory.CreateTempSubdirectory("jumpwright-monday-").FullName;
        try
        {
            WriteRecordings(club);
            IPage page = await demo.Open(width);
            int shots = 0;
            async Task Shot(string name)
            {
                times.Add(FormattableString.Invariant($"{clock.Elapsed.TotalSeconds:0.0} s: {name}"));
                await page.ScreenshotAsync(
                    new PageScreenshotOptions { FullPage = true, Path = Path.Combine(kept, $"{++shots:00}-{name}.png") }
                );
                Assert.False(
                    await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth + 1"),
                    $"{name} scrolls sideways at {width}"
                );
            }

            await page.GotoAsync(squad.Address + "/");
            await Shot("nobody-yet");
            await page.ClickAsync("text=set it up");
            await page.FillAsync("#name", "Nora Field");
            await page.FillAsync("#born", "2001-02-03");
            await page.FillAsync("#mass", "66");
            await page.FillAsync("#stature", "1.78");
            await page.SelectOptionAsync("#level", "intermediate");
            await page.SelectOptionAsync("#ever", "no");
            await page.ClickAsync("text=Add the athlete");
            await page.WaitForSelectorAsync("text=is a01.");
            await page.SelectOptionAsync("#day", "Tuesday");
            await page.ClickAsync("text=Add the time");
            await page.WaitForSelectorAsync("text=is a training time.");
            await page.FillAsync("#kit-plyo-box", "2");
            await page.ClickAsync("text=Write the kit down");
            await page.WaitForSelectorAsync("text=The kit is written down.");
            await Shot("set-up");

            await page.ClickAsync("text=Take in recordings");
            await page.SetInputFilesAsync("#folder", club);
            await page.WaitForSelectorAsync("text=Take these back out", new() { Timeout = 120_000 });
            await Shot("taken-in");
            ILocator missing = page.Locator("form.lacking");
            await missing.Locator("select[name=athlete]").SelectOptionAsync("a01");
            await missing.Locator("input[name=date]").FillAsync("2027-01-03");
            await missing.Locator("select[name=task]").SelectOptionAsync("countermovement-jump");
            // One of them is of frames that somebody counted in a film, and says not how fast the camera was.
            await missing.Locator("input[name=frames_per_second]").FillAsync("240");
            await missing.Locator("button[value=all]").ClickAsync();
            await page.WaitForSelectorAsync("text=For 3 recordings that is written down now");
            await Shot("labelled");

            await page.ClickAsync("nav >> text=Squad");
            await page.ClickAsync("text=Nora Field");
            await page.WaitForSelectorAsync(
                "section:has(#measures) table",
                new() { State = WaitForSelectorState.Attached }
            );
            Assert.Contains("There is no symptom report", await page.Locator("main").ReadAsync());
            await page.ClickAsync("text=Ask, and write it down");
            await page.FillAsync("#score", "0");
            await page.ClickAsync("button:text-is('Write it down')");
            await page.ArriveAt("#symptoms$");
            Assert.DoesNotContain("There is no symptom report", await page.Locator("main").ReadAsync());
            await Shot("athlete");
            await page.ClickAsync("nav >> text=Week");
            await page.ClickAsync("text=Plan the week anew");
            await page.WaitForSelectorAsync("#sheet", new() { Timeout = 180_000 });
            await Shot("week");
            await page.ClickAsync("td >> text=card");
            await page.WaitForSelectorAsync("text=To print");
            await Shot("card");
            PlannedWeek week = squad.Desk.Book.PlanOrNull!;
            Assert.Equal(3, squad.Desk.Book.Find("a01")!.History.Trials.Length);
            Assert.Null(week.Cards[0].NothingPlanned);
            using HttpResponseMessage pdf = await squad.Client.GetAsync(
                new Uri(App.Pages.Paths.CardPdf(week.Cards[0].SessionId, "a01") + "?paper=a4", UriKind.Relative),
                TestContext.Current.CancellationToken
            );
            Assert.Equal("application/pdf", pdf.Content.Headers.ContentType?.MediaType);
            await File.WriteAllBytesAsync(
                Path.Combine(kept, "card.pdf"),
                await pdf.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken),
                TestContext.Current.CancellationToken
            );
            times.Add(FormattableString.Invariant($"{clock.Elapsed.TotalSeconds:0.0} s: printed"));
            await File.WriteAllLinesAsync(
                Path.Combine(kept, "times.txt"),
                times,
                TestContext.Current.CancellationToken
            );
            await page.CloseAsync();
        }
        finally
        {
            Directory.Delete(club, recursive: true);
        }
    }

    /// <summary>Two jumps as a device writes them, and one counted in a film: nobody's name, day or task, and no camera's rate.</summary>
    private static void WriteRecordings(string folder)
    {
        string demoFolder = Directory.CreateTempSubdirectory("jumpwright-source-").FullName;
        App.Commands.DemoCommand.WriteSquad(demoFolder);
        foreach (
            string jump in Directory
                .EnumerateFiles(Path.Combine(demoFolder, "recordings"), "a01-2026-12-28-cmj-*.csv")
                .Order(StringComparer.Ordinal)
        )
        {
            File.WriteAllLines(
                Path.Combine(folder, Path.GetFileName(jump)[15..]),
                File.ReadAllLines(jump).Where(l => !l.StartsWith('#'))
            );
        }

        File.WriteAllText(Path.Combine(folder, "phone.csv"), "frame,event\n118,take-off\n243,touch-down\n");
        Directory.Delete(demoFolder, recursive: true);
    }
}
