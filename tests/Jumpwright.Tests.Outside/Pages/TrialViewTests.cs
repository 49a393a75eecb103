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

    /// <summary>
    /// A time is no law on a shared machine, so the work of a frame is counted, and its time only told. It holds at sixty frames a second
    /// where both counts stay small: asking the layout once for each column cost 10 of 13 ms.
    /// </summary>
    [Fact]
    public async Task TwentyThousandPoints_AFrameOfZoomAndPanTakesWorkForTheScreensPixelsNotForThePoints()
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
        double[][] frames = await page.EvaluateAsync<double[][]>(
            """
            async () => {
              const trace = document.querySelector(".trace"), canvas = trace.querySelector("canvas");
              let strokes = 0, layouts = 0;
              const pen = CanvasRenderingContext2D.prototype;
              for (const name of ["moveTo", "lineTo", "rect", "fillRect", "stroke", "fill", "fillText", "measureText"]) {
                const drawn = pen[name];
                pen[name] = function (...all) { strokes++; return drawn.apply(this, all); };
              }
              const width = canvas.clientWidth;
              Object.defineProperty(canvas, "clientWidth", { get: () => { layouts++; return width; } });
              const frame = () => new Promise(requestAnimationFrame);
              const frames = [];
              for (const key of ["0", ..."+++---", ...Array(20).fill("ArrowRight"), ...Array(20).fill("-"), ...Array(14).fill("+")]) {
                strokes = layouts = 0;
                trace.dispatchEvent(new KeyboardEvent("keydown", { key }));
                await frame(); await frame();
                frames.push([Number(trace.dataset.drawMs), strokes / width, layouts]);
              }
              return frames;
            }
            """
        );
        double[] milliseconds = [.. frames.Select(f => f[0]).Order()];
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"half of the frames in {milliseconds[milliseconds.Length / 2]} ms, 95 % in {milliseconds[(int)(0.95 * milliseconds.Length)]} ms"
        );
        double asked = frames.Max(f => f[1]);
        TestContext.Current.TestOutputHelper?.WriteLine($"{asked:0.0} calls a pixel, layout {frames.Max(f => f[2])}");
        Assert.True(asked is > 1 and < 12, $"{asked} calls of the canvas for each pixel across");
        Assert.True(
            frames.Max(f => f[2]) is > 0 and < 200,
            $"the layout was asked {frames.Max(f => f[2])} times in a frame"
        );
        await page.CloseAsync();
    }

    /// <summary>On a phone most phases are too narrow for their names; under the trace none is missing.</summary>
    [Fact]
    public async Task EveryPhase_IsNamedWithItsTimes_OnAPhoneToo()
    {
        IPage page = await demo.Open(390);
        await page.GotoAsync(Path);
        await page.WaitForSelectorAsync("[data-phases] li");
        IReadOnlyList<string> phases = await page.Locator("[data-phases] li").AllInnerTextsAsync();
        Assert.Equal(7, phases.Count);
        Assert.All(phases.SkipLast(1), p => Assert.Matches(@"^[1-6] [a-z ]+: \d+\.\d\d to \d+\.\d\d s$", p));
        // There is no room for its name beside the line itself.
        Assert.Equal("— · — body weight", phases[^1]);
        await page.CloseAsync();
    }

    /// <summary>Trials of one day are told apart by their files.</summary>
    [Fact]
    public async Task TrialsToLayOver_AreNamedApart()
    {
        IPage page = await demo.Open(820);
        await page.GotoAsync(Path);
        IReadOnlyList<string> named = await page.Locator(".choices label").AllInnerTextsAsync();
        Assert.NotEmpty(named);
        Assert.Equal(named.Count, named.Distinct(StringComparer.Ordinal).Count());
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
