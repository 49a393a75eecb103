using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Tests.Outside.House;
using Microsoft.Playwright;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// A practitioner's day in one browser: recordings in, one refused, a trial corrected, what limits her, the plan, a lock, a day
/// missed, the floor without a network, the log handed in, the card, and a next week that heeds what was logged.
/// </summary>
[Collection("pages")]
public sealed class WholeDayTests(ServedDemo demo)
{
    private const string Her = "a02";
    private static readonly LocalDate NextMonday = new(2027, 1, 11);

    [Theory]
    [InlineData(390)]
    [InlineData(820)]
    [InlineData(1440)]
    public async Task Day_FromRecordingToNextWeek(int width)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true, weeks: 2);
        IPage page = await demo.Open(width);
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        int shots = 0;
        async Task Shot(string name) =>
            await page.ScreenshotAsync(
                new PageScreenshotOptions
                {
                    FullPage = true,
                    Path = Repository.At("artifacts", "screenshots", "day", $"{width}-{++shots:00}-{name}.png"),
                }
            );
        async Task Go(string path) => await page.GotoAsync(squad.Address + path);

        // The morning's recordings: a jump with its labels, and a file that is none.
        await Go("/import");
        await page.SetInputFilesAsync("#files", [Jump(squad), Broken()]);
        await page.WaitForSelectorAsync("text=Take these back out", new() { Timeout = 120_000 });
        Assert.Contains("2 recordings: 1 measured, 1 refused.", await page.Locator("main").ReadAsync());
        await Shot("import");
        await Go("/refused");
        Assert.Contains("broken.csv", await page.Locator("main").ReadAsync());
        await Shot("refused");

        // Its take-off is put right by hand.
        MeasuredTrial trial = squad
            .Desk.Book.Find(Her)!
            .History.Trials.Last(t => t.File.Contains("morning", StringComparison.Ordinal));
        await Go(App.Pages.Paths.Trial(trial.Sha256, trial.Trial.Number));
        await page.WaitForSelectorAsync(".trace[data-from]");
        double later = trial.Trial.Events.TakeOffS!.Value + 0.004;
        await page.FillAsync("[data-event=take_off]", later.ToString("0.000", null));
        await page.Locator("[data-event=take_off]").BlurAsync();
        await page.FillAsync("#who", "R. Marsh");
        await page.FillAsync("#why", "the last contact of the toes");
        await page.ClickAsync("text=Keep what is set");
        await page.WaitForSelectorAsync("text=set by hand");
        Assert.Single(squad.Desk.Book.Material.Corrected);
        await Shot("trial");

        // What limits her, with where each number comes from.
        await Go("/athletes/" + Her);
        if (await page.Locator(".origin summary:visible").CountAsync() == 0)
        {
            // On a phone its tables are folded.
            await page.Locator("details:has(.origin) > summary:visible").First.ClickAsync();
        }

        await page.Locator(".origin summary:visible").First.ClickAsync();
        await Shot("athlete");
        Assert.Contains("Seen from Monday 4 January 2027", await page.Locator(".seen").ReadAsync());

        // The plan, a lock that stays, and a day she misses.
        await Go("/week");
        await page.ClickAsync("text=Plan the week anew");
        await page.WaitForSelectorAsync("#sheet", new() { Timeout = 180_000 });
        await Shot("week");
        PlannedSession[] sessions = [.. squad.Desk.Book.PlanOrNull!.Plan.Sessions];
        PlannedSession first = sessions.First(s => !Of(s).IsEmpty);
        PlannedSession missed = sessions.First(s => s != first && !Of(s).IsEmpty);
        PlannedItem locked = Of(first)[0];
        await Go(App.Pages.Paths.Why(first.Slot.Id, Her));
        await page.Locator("button:text-is('Lock')").First.ClickAsync();
        await page.WaitForSelectorAsync("text=Locked: take it off");
        await Shot("why-locked");
        await Go(App.Pages.Paths.Why(missed.Slot.Id, Her));
        await page.ClickAsync("text=What if they miss");
        await page.WaitForSelectorAsync("#proposal", new() { Timeout = 180_000 });
        await Shot("proposal");
        await page.ClickAsync("text=Take it");
        await page.WaitForSelectorAsync("text=(locked)");
        Plan plan = squad.Desk.Book.PlanOrNull!.Plan;
        Assert.Empty(Of(plan.Sessions.Single(s => s.Slot.Id == missed.Slot.Id)));
        Assert.Contains(
            Of(plan.Sessions.Single(s => s.Slot.Id == first.Slot.Id)),
            i => i.Dose.ExerciseId == locked.Dose.ExerciseId && i.Sets == locked.Sets
        );

        // The card that is printed.
        await Go(App.Pages.Paths.Card(first.Slot.Id, Her));
        await Shot("card");
        using HttpResponseMessage pdf = await squad.Client.GetAsync(
            new Uri(App.Pages.Paths.CardPdf(first.Slot.Id, Her), UriKind.Relative),
            TestContext.Current.CancellationToken
        );
        Assert.Equal("application/pdf", pdf.Content.Headers.ContentType?.MediaType);

        // The floor, and the network goes.
        await Go("/floor/");
        await page.WaitForSelectorAsync("body[data-ready]");
        await page.SelectOptionAsync("#session", first.Slot.Id);
        await page.WaitForSelectorAsync($"[data-key='open {Her}']");
        await page.Context.SetOfflineAsync(true);
        await page.ClickAsync($"[data-key='open {Her}']");
        ILocator sets = page.Locator(".set[aria-pressed=false]");
        int logged = 0;
        while (logged < 3 && await sets.CountAsync() > 0)
        {
            await sets.First.ClickAsync();
            logged++;
            await page.WaitForSelectorAsync($"body[data-done='{logged}']");
        }

        await page.EvaluateAsync(
            $"document.querySelector(\"[data-key='pain {Her} {locked.Dose.ExerciseId} 7']\").click()"
        );
        await page.WaitForSelectorAsync("#alarms .asking");
        Assert.Contains("stop", await page.Locator("#alarms").ReadAsync());
        await Shot("floor-offline");
        Assert.DoesNotContain(squad.Desk.Journal, e => e.Kind == "set");
        await page.Context.SetOfflineAsync(false);
        await page.WaitForSelectorAsync("body[data-waiting='0']");
        Assert.Equal(logged, squad.Desk.Journal.Count(e => e.Kind == "set"));
        await Shot("floor-handed-in");

        // In the evening: done beside planned, and the morning after.
        await Go("/done");
        string done = await page.Locator("main").ReadAsync();
        Assert.Contains("on the day 7 of 10", done);
        Assert.Contains(" of ", done);
        await page.ClickAsync("text=The morning after, and effort");
        await page.FillAsync("input[name=pain]", "6");
        await page.FillAsync("input[name=rpe]", "8");
        await page.ClickAsync("text=Write down");
        await page.WaitForSelectorAsync("text=the morning after 6 of 10");
        await Shot("done");

        // What is left of this week heeds it, and next week asks for no more than before.
        int left = Asked(plan, squad, first.Slot.Date.PlusDays(1));
        int next = Asked(plan, squad, NextMonday);
        Assert.True(left > next, "there is something of this week to heed");
        await Go("/week");
        await page.ClickAsync("text=Plan the week anew");
        while (squad.Desk.Planning is not null || ReferenceEquals(plan, squad.Desk.Book.PlanOrNull!.Plan))
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        await Go("/week");
        await page.WaitForSelectorAsync("#changes");
        await Shot("next-week");
        Plan heeding = squad.Desk.Book.PlanOrNull!.Plan;
        int leftNow = Asked(heeding, squad, first.Slot.Date.PlusDays(1));
        Assert.True(leftNow < left, $"{left} contacts × tier before the pain, {leftNow} after it");
        Assert.InRange(Asked(heeding, squad, NextMonday), 0, next);
        Assert.Empty(errors);
        await page.CloseAsync();
    }

    private static System.Collections.Immutable.ImmutableArray<PlannedItem> Of(PlannedSession session) =>
        session.Athletes.FirstOrDefault(a => a.AthleteId == Her)?.Items ?? [];

    /// <summary>What the plan asks of her tissues together from that day on.</summary>
    private static int Asked(Plan plan, OwnSquad squad, LocalDate from) =>
        plan
            .Sessions.Where(s => s.Slot.Date >= from)
            .SelectMany(s => Of(s))
            .Sum(i => i.Contacts * squad.Desk.Book.Catalogue.Find(i.Dose.ExerciseId)!.Demand.Values.Sum());

    /// <summary>Somebody's recorded jump, as hers of that morning.</summary>
    private static FilePayload Jump(OwnSquad squad)
    {
        string jump = Directory
            .EnumerateFiles(squad.At("recordings"), Her + "*cmj*.csv")
            .Order(StringComparer.Ordinal)
            .First();
        string[] lines = File.ReadAllLines(jump);
        string text = string.Join(
            '\n',
            [
                "# athlete: " + Her,
                "# date: 2027-01-03",
                "# task: countermovement-jump",
                .. lines.Where(l => !l.StartsWith('#')).SkipLast(1),
            ]
        );
        return new FilePayload
        {
            Name = "morning.csv",
            MimeType = "text/csv",
            Buffer = Encoding.UTF8.GetBytes(text + "\n"),
        };
    }

    private static FilePayload Broken() =>
        new()
        {
            Name = "broken.csv",
            MimeType = "text/csv",
            Buffer = "# athlete: a02\ntime_s,force_N\n0,abc\n"u8.ToArray(),
        };
}
