using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What is written in the drawn trace stands clear of the uprights of events and of whatever else is written there.</summary>
[Collection("pages")]
public class TraceLegendTests(ServedDemo demo)
{
    /// <summary>
    /// Notes what the canvas is asked to draw in its last frame: each text with the box it fills, and each upright line that is longer than a
    /// tick. A frame begins where the paper is filled.
    /// </summary>
    private const string Noting = """
        () => {
          const pen = CanvasRenderingContext2D.prototype;
          const drawn = window.drawn = { texts: [], uprights: [] };
          let at = null;
          const { fillText, moveTo, lineTo, fillRect } = pen;
          pen.fillRect = function (...all) { drawn.texts.length = drawn.uprights.length = 0; return fillRect.apply(this, all); };
          pen.moveTo = function (x, y) { at = [x, y]; return moveTo.call(this, x, y); };
          pen.lineTo = function (x, y) {
            if (at && at[0] === x && Math.abs(at[1] - y) > 12) drawn.uprights.push({ x, from: Math.min(at[1], y), to: Math.max(at[1], y), width: this.lineWidth });
            at = [x, y];
            return lineTo.call(this, x, y);
          };
          pen.fillText = function (text, x, y) {
            const m = this.measureText(text);
            drawn.texts.push({ text, left: x - m.actualBoundingBoxLeft, right: x + m.actualBoundingBoxRight, top: y - m.actualBoundingBoxAscent, bottom: y + m.actualBoundingBoxDescent });
            return fillText.call(this, text, x, y);
          };
        }
        """;

    private sealed record Box(string Text, double Left, double Right, double Top, double Bottom);

    private sealed record Upright(double X, double From, double To, double Width);

    private sealed record Drawn(Box[] Texts, Upright[] Uprights);

    public static TheoryData<int, string, JumpTask, Device, int> Views()
    {
        var views = new TheoryData<int, string, JumpTask, Device, int>();
        foreach (int width in (int[])[390, 820, 1440])
        {
            foreach (string language in (string[])["en", "de"])
            {
                views.Add(width, language, JumpTask.CountermovementJump, Device.TwoForcePlates, 0);
                views.Add(width, language, JumpTask.CountermovementJump, Device.TwoForcePlates, 3);
                views.Add(width, language, JumpTask.DropJump, Device.TwoForcePlates, 0);
                views.Add(width, language, JumpTask.CountermovementJump, Device.ForcePlate, 0);
            }
        }

        return views;
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task WhatIsWritten_StandsClearOfUprightsAndOfEachOther(
        int width,
        string language,
        JumpTask task,
        Device device,
        int laidOver
    )
    {
        MeasuredTrial trial = demo
            .Desk.Book.Leaves.SelectMany(l => l.History.Trials)
            .First(t => t.Trial.Task == task && t.Device == device);
        IPage page = await demo.Open(width);
        await page.SetExtraHTTPHeadersAsync(new Dictionary<string, string> { ["Accept-Language"] = language });
        await page.AddInitScriptAsync($"({Noting})()");
        await page.GotoAsync(App.Pages.Paths.Trial(trial.Sha256, trial.Trial.Number));
        await page.WaitForSelectorAsync(".trace[data-from]");
        for (int i = 0; i < laidOver; i++)
        {
            await page.Locator("input[data-over]").Nth(i).CheckAsync();
            await page.Locator("[data-mark]").Nth(i).FilledAsync();
        }

        foreach (string key in (string[])["", "+", "+", "ArrowRight", "0"])
        {
            if (key.Length > 0)
            {
                await page.Locator(".trace").PressAsync(key);
            }

            await page.EvaluateAsync("() => new Promise(d => requestAnimationFrame(() => requestAnimationFrame(d)))");
            Drawn drawn = JsonSerializer.Deserialize<Drawn>(
                await page.EvaluateAsync<string>("() => JSON.stringify(window.drawn)"),
                JsonSerializerOptions.Web
            )!;
            // The axes stand at 64 px; what is right of them are events.
            Upright[] events = [.. drawn.Uprights.Where(u => u.X > 64.5)];
            Box[] inside = [.. drawn.Texts.Where(t => t.Right > 64)];
            Assert.NotEmpty(inside);
            Assert.True(key.Length > 0 || events.Length > 0, "no event is drawn in the first view");
            Assert.Equal(
                "",
                string.Join(
                    "; ",
                    from t in inside
                    from u in events
                    where
                        u.X + (u.Width / 2) > t.Left
                        && u.X - (u.Width / 2) < t.Right
                        && u.To > t.Top
                        && u.From < t.Bottom
                    select $"'{t.Text}' {t.Left:0} to {t.Right:0} px on the upright at {u.X:0} px, after '{key}'"
                )
            );
            Assert.Equal(
                "",
                string.Join(
                    "; ",
                    from a in drawn.Texts.Index()
                    from b in drawn.Texts.Index()
                    where a.Index < b.Index
                    where
                        a.Item.Left < b.Item.Right
                        && b.Item.Left < a.Item.Right
                        && a.Item.Top < b.Item.Bottom
                        && b.Item.Top < a.Item.Bottom
                    select $"'{a.Item.Text}' on '{b.Item.Text}', after '{key}'"
                )
            );
            Assert.All(inside, t => Assert.InRange(t.Right, 0, width));
        }

        await page.CloseAsync();
    }

    /// <summary>Two plates: each leg is named at its own curve where there is room, in words and not in colour.</summary>
    [Fact]
    public async Task EachLeg_IsNamedAtItsOwnCurve()
    {
        MeasuredTrial trial = demo
            .Desk.Book.Find("a05")!
            .History.Trials.First(t =>
                t.Trial.Task == JumpTask.CountermovementJump && t.Device == Device.TwoForcePlates
            );
        IPage page = await demo.Open(1440);
        await page.AddInitScriptAsync($"({Noting})()");
        await page.GotoAsync(App.Pages.Paths.Trial(trial.Sha256, trial.Trial.Number));
        await page.WaitForSelectorAsync(".trace[data-from]");
        Drawn drawn = JsonSerializer.Deserialize<Drawn>(
            await page.EvaluateAsync<string>("() => JSON.stringify(window.drawn)"),
            JsonSerializerOptions.Web
        )!;
        // a05 stands and pushes more on the left.
        Assert.True(drawn.Texts.Single(t => t.Text == "left").Bottom < drawn.Texts.Single(t => t.Text == "right").Top);
        await page.CloseAsync();
    }
}

file static class Marks
{
    /// <summary>Waits until a trial that is laid over has its mark, that is until it is drawn.</summary>
    public static async Task FilledAsync(this ILocator mark) => await Assertions.Expect(mark).Not.ToHaveTextAsync("");
}
