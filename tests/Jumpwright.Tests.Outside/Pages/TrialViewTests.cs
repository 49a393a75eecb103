using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Runtime.InteropServices;
using System.Text.Json;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The trace of a trial: seen, moved along, corrected; the correction stands beside what was measured.</summary>
[Collection("pages")]
public class TrialViewTests(ServedDemo demo)
{
    private MeasuredTrial Trial =>
        demo
            .Desk.Book.Find("a02")!
            .History.Trials.First(t =>
                t.Trial.Task == JumpTask.CountermovementJump && t.Device == Device.TwoForcePlates
            );

    private string Path => App.Pages.Paths.Trial(Trial.Sha256, Trial.Trial.Number);

    [Fact]
    public async Task TakeOffDraggedLater_MeasuresFollowAtOnce_AndAreKeptWithWhoAndWhy()
    {
        Trial automatic = Trial.Trial;
        IPage page = await demo.Open(1440);
        await page.GotoAsync(Path);
        await page.WaitForSelectorAsync(".trace[data-from]");
        ILocator flight = page.Locator("[data-measure=flight_time_s]");
        string before = await flight.TextContentAsync() ?? "";

        ILocator canvas = page.Locator(".trace canvas");
        await canvas.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await canvas.BoundingBoxAsync())!;
        double at = await Across(page, automatic.Events.TakeOffS!.Value, box);
        double to = await Across(page, automatic.Events.TakeOffS!.Value + 0.03, box);
        await page.Mouse.MoveAsync((float)at, box.Y + 200);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((float)to, box.Y + 200, new MouseMoveOptions { Steps = 5 });
        await page.Mouse.UpAsync();
        await page.WaitForFunctionAsync(
            "was => document.querySelector('[data-measure=flight_time_s]').textContent !== was",
            before
        );
        Assert.Empty(demo.Desk.Book.Material.Corrected);

        await page.FillAsync("#who", "Kim Test");
        await page.FillAsync("#why", "The toes left later");
        await page.ClickAsync("button[type=submit]");
        await page.WaitForSelectorAsync("text=Kim Test set by hand");
        CorrectedTrial kept = Assert.Single(demo.Desk.Book.Material.Corrected);
        Assert.Equal(automatic, kept.Automatic);
        Assert.Equal("Kim Test", kept.Who);
        Assert.Equal("The toes left later", kept.Set.Why);
        Assert.Null(kept.Objection);
        double moved = Trial.Trial.Events.TakeOffS!.Value - automatic.Events.TakeOffS.Value;
        Assert.InRange(moved, 0.02, 0.04);
        Assert.Equal(
            automatic.Find(MeasureNames.FlightTime)!.Value - moved,
            Trial.Trial.Find(MeasureNames.FlightTime)!.Value,
            1e-6
        );

        // Given back to measuring, nothing of it is left but the two words in the journal.
        await page.ClickAsync("[data-automatic-again]");
        await page.FillAsync("#why", "Looked again");
        await page.ClickAsync("button[type=submit]");
        await page.WaitForFunctionAsync("() => !document.body.textContent.includes('set by hand,')");
        Assert.Equal(automatic, Trial.Trial);
        Assert.Equal(2, demo.Desk.Journal.Count(e => e.Kind == "correction"));
        await page.CloseAsync();
    }

    [Fact]
    public async Task Keyboard_ComesCloserMovesAlongAndShowsAll()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync(Path);
        await page.WaitForSelectorAsync(".trace[data-from]");
        await page.Locator(".trace").FocusAsync();
        double[] first = await View(page);
        await page.Keyboard.PressAsync("+");
        await page.Keyboard.PressAsync("+");
        double[] near = await View(page);
        Assert.True(near[1] - near[0] < 0.7 * (first[1] - first[0]));
        await page.Keyboard.PressAsync("ArrowRight");
        double[] right = await View(page);
        Assert.True(right[0] > near[0]);
        Assert.Equal(near[1] - near[0], right[1] - right[0], 0.001);
        await page.Keyboard.PressAsync("0");
        double[] all = await View(page);
        Assert.True(all[1] - all[0] > first[1] - first[0]);
        await page.CloseAsync();
    }

    [Fact]
    public async Task TwentyThousandPoints_AFrameOfZoomAndPanIsDrawnInASixtiethOfASecond()
    {
        const int points = 20_000;
        IPage page = await demo.Open(1440);
        string column = Convert.ToBase64String(
            MemoryMarshal.AsBytes(
                Enumerable
                    .Range(0, points)
                    .Select(i => (float)(700 + (600 * Math.Sin(i / 50.0)) + (30 * Math.Sin(i * 1.7))))
                    .ToArray()
                    .AsSpan()
            )
        );
        string trace = JsonSerializer.Serialize(
            new
            {
                label = "long",
                start_s = 0.0,
                rate_hz = 1000.0,
                weight_n = 700.0,
                events = new { take_off = 10.0, touch_down = 10.5 },
                phases = new[]
                {
                    new
                    {
                        name = "flight",
                        from = 10.0,
                        to = 10.5,
                    },
                },
                force = column,
                left = column,
                right = column,
                velocity = column,
                displacement = column,
            }
        );
        await page.RouteAsync(
            "**/trace",
            route => route.FulfillAsync(new RouteFulfillOptions { ContentType = "application/json", Body = trace })
        );
        await page.GotoAsync(Path);
        await page.WaitForSelectorAsync(".trace[data-points='20000']");
        double[] drawn = await page.EvaluateAsync<double[]>(
            """
            async () => {
              const trace = document.querySelector(".trace");
              const press = key => trace.dispatchEvent(new KeyboardEvent("keydown", { key }));
              const frame = () => new Promise(requestAnimationFrame);
              press("0");
              await frame(); await frame();
              const times = [];
              for (const key of [..."+++---", ...Array(20).fill("ArrowRight"), ...Array(20).fill("-"), ...Array(14).fill("+")]) {
                press(key);
                await frame(); await frame();
                times.push(Number(trace.dataset.drawMs));
              }
              return times.sort((a, b) => a - b);
            }
            """
        );
        double half = drawn[drawn.Length / 2];
        double p95 = drawn[(int)(0.95 * drawn.Length)];
        TestContext.Current.TestOutputHelper?.WriteLine($"half of the frames in {half} ms, 95 % in {p95} ms");
        // Half, not nearly all: on a machine that other tests keep busy the rest tells of them.
        Assert.True(half < 1000.0 / 60, $"half of the frames were drawn in {half} ms, 95 % in {p95} ms");
        await page.CloseAsync();
    }

    [Fact]
    public async Task AnotherTrialLaidOver_IsDrawn_LevelAtTakeOff()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync(Path);
        await page.WaitForSelectorAsync(".trace[data-from]");
        byte[] alone = await page.Locator(".trace canvas").ScreenshotAsync();
        await page.Locator("input[data-over]").First.CheckAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('[data-mark]').textContent !== ''");
        await page.WaitForTimeoutAsync(200);
        byte[] both = await page.Locator(".trace canvas").ScreenshotAsync();
        Assert.NotEqual(alone, both);
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("{\"events\":[{\"event\":\"take_off\",\"time_s\":-9}]}", HttpStatusCode.Conflict)]
    [InlineData("{\"events\":[{\"event\":\"take_off\",\"time_s\":1e308}]}", HttpStatusCode.Conflict)]
    [InlineData("{\"events\":\"<script>\"}", HttpStatusCode.BadRequest)]
    [InlineData("{}", HttpStatusCode.BadRequest)]
    [InlineData("[", HttpStatusCode.BadRequest)]
    public async Task EventsThatMakeNoSense_AreAnsweredWithASentence(string body, HttpStatusCode status)
    {
        using var client = new HttpClient();
        using var content = new StringContent(body, null, "application/json");
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri(demo.Address + Path + "/try"),
            content,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(status, answer.StatusCode);
        JsonElement json = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        Assert.EndsWith(".", json.GetProperty("refused").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SomethingSentFromAForeignPage_IsTurnedAway()
    {
        using var client = new HttpClient();
        using var asked = new HttpRequestMessage(HttpMethod.Post, demo.Address + Path + "/try");
        asked.Headers.Add("Origin", "http://club.example");
        asked.Content = new StringContent("{\"events\":[]}", null, "application/json");
        using HttpResponseMessage answer = await client.SendAsync(asked, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    private static async Task<double> Across(IPage page, double atS, LocatorBoundingBoxResult box)
    {
        double[] view = await View(page);
        return box.X + 64 + ((atS - view[0]) / (view[1] - view[0]) * (box.Width - 64 - 12));
    }

    private static async Task<double[]> View(IPage page)
    {
        await page.EvaluateAsync("() => new Promise(d => requestAnimationFrame(() => requestAnimationFrame(d)))");
        ILocator trace = page.Locator(".trace");
        string? from = await trace.GetAttributeAsync("data-from");
        string? to = await trace.GetAttributeAsync("data-to");
        return [double.Parse(from!, CultureInfo.InvariantCulture), double.Parse(to!, CultureInfo.InvariantCulture)];
    }
}
