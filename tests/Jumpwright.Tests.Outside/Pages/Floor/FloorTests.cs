using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.House;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>A session logged on tablets while the program comes and goes: everything logged is there once, nothing is lost.</summary>
[Collection("pages")]
public sealed class FloorTests(ServedDemo demo) : IDisposable
{
    /// <summary>Logs so many sets by tapping, one after another, as a person would, only faster.</summary>
    private const string Tap = """
        async count => {
          const roll = document.getElementById("roll");
          for (let n = 0; n < count; n++) {
            const before = Number(document.body.dataset.done);
            let set = roll.querySelector(".set[aria-pressed=false]");
            if (!set) {
              const closed = [...roll.querySelectorAll("button[data-key^='open '][aria-expanded=false]")]
                .find(b => { const [done, all] = (b.parentElement.querySelector(".done")?.textContent.match(/\d+/g) || [0, 0]).map(Number); return done < all; });
              if (closed) closed.click();
              else if (!roll.querySelector("[data-key^='more ']")) roll.querySelector("[data-key^='open ']").click();
              set = roll.querySelector(".set[aria-pressed=false]") || roll.querySelector("button[data-key^='more ']");
            }
            set.click();
            for (let i = 0; Number(document.body.dataset.done) === before; i++) {
              if (i > 2000) throw new Error("a tap was not logged");
              await new Promise(d => setTimeout(d, 5));
            }
          }
          return Number(document.body.dataset.done);
        }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-floor-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task TwoHundredSets_WhileTheProgramIsKilledAtAnyMoment_AreTwoHundredAfterwards()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        await OpenFloor(page, server);
        int done = await page.EvaluateAsync<int>(Tap, 30);

        var random = new Random(20270104);
        using var over = new CancellationTokenSource();
        int kills = 0;
        Task killing = Task.Run(
            async () =>
            {
                while (!over.IsCancellationRequested && kills < 3)
                {
                    await Task.Delay(random.Next(50, 900), TestContext.Current.CancellationToken);
                    server.Kill();
                    Interlocked.Increment(ref kills);
                    await Task.Delay(random.Next(100, 1500), TestContext.Current.CancellationToken);
                    await server.Start();
                }
            },
            TestContext.Current.CancellationToken
        );
        while (done < 180)
        {
            if (done >= 150 && Volatile.Read(ref kills) < 2)
            {
                // A slow machine: the last sets wait until the program was killed often enough.
                await Task.Delay(100, TestContext.Current.CancellationToken);
                continue;
            }

            done = await page.EvaluateAsync<int>(Tap, 10);
            await Task.Delay(random.Next(0, 400), TestContext.Current.CancellationToken);
        }

        await over.CancelAsync();
        await killing;

        // The program is gone, the page is opened again all the same, and the last sets are logged without it.
        server.Kill();
        await page.ReloadAsync();
        await page.WaitForSelectorAsync("body[data-ready]");
        Assert.Equal("false", await page.GetAttributeAsync("body", "data-reachable"));
        Assert.Equal(180, await page.EvaluateAsync<int>("() => Number(document.body.dataset.done)"));
        Assert.Equal(200, await page.EvaluateAsync<int>(Tap, 20));
        Assert.NotEqual("0", await page.GetAttributeAsync("body", "data-waiting"));

        await server.Start();
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        server.Kill();

        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        JournalEntry[] sets = [.. squad.Entries.Where(e => e.Kind == EntryKinds.Set)];
        Assert.Equal(200, sets.Length);
        Assert.Equal(200, sets.Select(s => s.Id).Distinct().Count());
        Assert.Equal(200, SetsDone.Effective(sets).Count());
        CompletedItem[] logged =
        [
            .. squad.Material.Histories.SelectMany(h => h.Completed).Where(c => c.Date >= DemoCommand.Day),
        ];
        Assert.Equal(200, logged.Sum(c => c.Sets));
        Assert.True(kills >= 2, $"the program was killed {kills} times only");
        await page.CloseAsync();
    }

    [Fact]
    public async Task TwoTabletsLogTheSameSetWithoutTheProgram_TheLaterWordCounts_BothAreKeptAndShown()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage left = await demo.Open(820);
        IPage right = await demo.Open(820);
        await OpenFloor(left, server, "Left");
        await OpenFloor(right, server, "Right");
        server.Kill();

        Assert.Equal(1, await left.EvaluateAsync<int>(Tap, 1));
        Assert.Equal(1, await right.EvaluateAsync<int>(Tap, 1));
        await right.Locator("[data-key^='faults '][data-key$=' 2']").First.ClickAsync();
        await right.WaitForSelectorAsync("#alarms p");
        string alarm = await right.Locator("#alarms").ReadAsync();
        Assert.Contains("stop. 2 landing faults.", alarm);

        await server.Start();
        foreach (IPage tablet in new[] { left, right })
        {
            await tablet.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        }

        // Each tablet hears of the other's words.
        await left.WaitForSelectorAsync("body[data-kept='3']");
        await left.WaitForSelectorAsync("#alarms p");
        await left.GotoAsync(server.Address + "/done");
        string said = await left.Locator("main").ReadAsync();
        Assert.Contains("Said differently by two tablets", said);
        Assert.Matches("Right logged .* 2 faults, which counts; .*Left logged", said);
        server.Kill();

        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        Assert.Equal(3, squad.Entries.Length);
        (JournalEntry entry, SetEntry set) = Assert.Single(SetsDone.Effective(squad.Entries));
        Assert.Equal("Right", entry.Who);
        Assert.Equal(2, set.Faults);
        await left.CloseAsync();
        await right.CloseAsync();
    }

    [Fact]
    public async Task Absent_TheRotationIsMadeAnewWithoutThem_AndNobodyStartsLater()
    {
        IPage page = await demo.Open(820, worker: false);
        // What is logged here stays on this tablet: the demo is other tests' too.
        await page.RouteAsync("**/floor/log", async route => await route.AbortAsync());
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("body[data-ready]");
        await page.WaitForSelectorAsync("#where li");
        string name = await page.Locator(".floor-roll .name").First.ReadAsync();
        double[] before = await Ends(page);
        double[] planned =
        [
            .. demo
                .Desk.Book.PlanOrNull!.Plan.Sessions[0]
                .Rotation.Select(r => Math.Round(r.EndMin, 2, MidpointRounding.AwayFromZero)),
        ];
        Assert.Equal(planned.Order(), before.Order());
        Assert.Contains(name, await page.Locator("#where").ReadAsync());
        // Nobody was called yet: one tap says here, the next away.
        ILocator call = page.Locator("[data-key^='here ']").First;
        Assert.Equal("? Not called yet", await call.ReadAsync());
        await call.ClickAsync();
        await page.WaitForSelectorAsync("[data-key^='here ']:has-text('✓ Here')");
        await call.ClickAsync();
        await page.WaitForFunctionAsync("n => !document.getElementById('where').textContent.includes(n)", name);
        double[] after = await Ends(page);
        Assert.True(after.Max() <= before.Max(), "the session got longer");
        Assert.True(after.Length < before.Length, "no turn went");
        await page.CloseAsync();
    }

    /// <summary>
    /// Two boxes are not where they should be, and there is no network: the tablet makes the rotation anew with what is here, and the
    /// program, once it can be reached, hears of it, tells the other tablet, and would have said the same.
    /// </summary>
    [Fact]
    public async Task LessKitWithoutTheProgram_TheRotationIsMadeAnew_AndEveryTabletHearsOfIt()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        IPage other = await demo.Open(820);
        await OpenFloor(page, server, "Left");
        await OpenFloor(other, server, "Right");
        string id = await page.EvaluateAsync<string>("() => document.getElementById('session').value");
        Assert.Contains("as planned", await page.Locator("#kit-said").ReadAsync());
        string[] before = await Places(page);
        Assert.Contains(before, p => p.Contains("plyo box 2", StringComparison.OrdinalIgnoreCase));
        // The page of the session, which the program makes: of that kit no second box either.
        string[] cut = await page.EvaluateAsync<string[]>(
            """
            async id => {
              const plan = await fetch("/floor/sessions/" + id).then(r => r.json());
              const here = plan.athletes.map(a => "here=" + a.id).join("&");
              const page = await fetch(`/week/sessions/${id}?called=yes&kit-plyo-box=1&${here}`).then(r => r.text());
              const read = new DOMParser().parseFromString(page, "text/html");
              return [...read.querySelectorAll("main td, main li")].map(e => e.textContent.trim()).filter(t => /plyo box/i.test(t));
            }
            """,
            id
        );
        Assert.NotEmpty(cut);
        Assert.DoesNotContain(cut, c => System.Text.RegularExpressions.Regex.IsMatch(c, "plyo box [2-9]"));
        server.Kill();
        await page.Locator("#kit summary").ClickAsync();
        ILocator boxes = page.Locator("[data-kit='plyo-box']");
        await boxes.FillAsync("1");
        await boxes.PressAsync("Tab");
        await page.WaitForFunctionAsync(
            "() => document.getElementById('kit-said').textContent.includes('plyo box 1 of')"
        );
        string[] after = await Places(page);
        Assert.DoesNotContain(after, p => System.Text.RegularExpressions.Regex.IsMatch(p, "plyo box [2-9]"));
        Assert.Contains(after, p => p.Contains("plyo box 1", StringComparison.OrdinalIgnoreCase));
        // How long it takes to make and draw, on whatever machine this is.
        double took = await page.EvaluateAsync<double>(
            "() => { const at = performance.now(); document.getElementById('minutes').dispatchEvent(new Event('change')); return performance.now() - at; }"
        );
        Assert.InRange(took, 0, 1000);

        // The page is opened again without the program: what was counted stays.
        await page.ReloadAsync();
        await page.WaitForSelectorAsync("body[data-ready]");
        Assert.Equal("false", await page.GetAttributeAsync("body", "data-reachable"));
        Assert.Equal(after, await Places(page));
        Assert.Equal("1", await page.Locator("[data-kit='plyo-box']").InputValueAsync());

        await server.Start();
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        await other.WaitForFunctionAsync(
            "() => document.getElementById('kit-said').textContent.includes('plyo box 1 of')"
        );
        Assert.Equal(after, await Places(other));
        server.Kill();

        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        JournalEntry entry = Assert.Single(squad.Entries, e => e.Kind == EntryKinds.Kit);
        Assert.Null(entry.AthleteId);
        Assert.Equal("Left", entry.Who);
        Assert.Equal(new KitEntry("plyo-box", 1), JournalReading.Read<KitEntry>(entry));
        await page.CloseAsync();
        await other.CloseAsync();
    }

    /// <summary>
    /// Fewer minutes, said on one tablet without the program: after both have handed in, both tablets and the page of the session say
    /// the same, and of two words the later one counts.
    /// </summary>
    [Fact]
    public async Task FewerMinutes_SaidOnOneTablet_HoldOnAll_AndTheLaterWordCounts()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage left = await demo.Open(820);
        IPage right = await demo.Open(820);
        await OpenFloor(left, server, "Left");
        await OpenFloor(right, server, "Right");
        string id = await left.EvaluateAsync<string>("() => document.getElementById('session').value");
        string[] planned = await Places(left);
        server.Kill();
        await Say(left, 25);
        string[] shorter = await Places(left);
        Assert.True(shorter.Length < planned.Length, "no turn went");
        // Said later on the other, which has not heard of the first.
        await Say(right, 30);
        string[] later = await Places(right);
        Assert.NotEqual(shorter, later);

        await server.Start(plans: true);
        await left.WaitForFunctionAsync("() => document.getElementById('minutes').value === '30'");
        await right.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        Assert.Equal("30", await right.InputValueAsync("#minutes"));
        Assert.Equal(later, await Places(left));
        Assert.Equal(later, await Places(right));

        // The page of the session begins with what the floor said, its kit too.
        await left.Locator("#kit summary").ClickAsync();
        await left.Locator("[data-kit='plyo-box']").FillAsync("1");
        await left.Locator("[data-kit='plyo-box']").PressAsync("Tab");
        await left.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        IPage desk = await demo.Open(820);
        // There once the program has planned, which it does while it answers.
        while ((await desk.GotoAsync(server.Address + "/week/sessions/" + id))!.Status != 200)
        {
            await Task.Delay(500, TestContext.Current.CancellationToken);
        }

        Assert.Equal("30", await desk.InputValueAsync("#minutes"));
        Assert.Equal("1", await desk.InputValueAsync("#kit-plyo-box"));
        Assert.Contains("What tablets on the floor said", await desk.Locator("main").InnerTextAsync());
        foreach (IPage page in new[] { left, right, desk })
        {
            await page.CloseAsync();
        }

        server.Kill();

        static async Task Say(IPage page, int minutes)
        {
            await page.FillAsync("#minutes", $"{minutes}");
            await page.PressAsync("#minutes", "Tab");
            await page.WaitForFunctionAsync("() => document.body.dataset.waiting === '1'");
        }
    }

    private static async Task<string[]> Places(IPage page) =>
        await page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('#where li')].map(li => li.querySelector('.number').textContent + ' ' + li.querySelector('.name').textContent)"
        );

    /// <summary>
    /// A proposed test is logged trial by trial without the program; the tablet holds its stop rule by itself, and the program says the
    /// same of the same trials once it has them.
    /// </summary>
    [Fact]
    public async Task ProposedTest_WhoseContactPassesTheCeiling_IsStoppedOnTheTablet_AndSaidOnThePageDone()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        await page.RouteAsync("**/floor/sessions/*", async route => await WithATest(route));
        await OpenFloor(page, server);
        server.Kill();
        await page.Locator("button[data-key^='open '][data-key]").First.ClickAsync();
        ILocator test = page.Locator("details.test").First;
        await test.Locator("summary").First.ClickAsync();
        Assert.Contains("Stop when contact is longer than 250 ms", await test.ReadAsync());

        await Trial("31", "240");
        Assert.Contains("1 of 3 trials", await page.Locator("details.test").First.ReadAsync());
        Assert.Equal("", await page.Locator("#alarms").ReadAsync());
        await Trial("30", "270");
        await page.WaitForSelectorAsync("#alarms p");
        const string Says = "contact is 255 ms, over the ceiling of 250 ms";
        Assert.Contains(Says, await page.Locator("#alarms").ReadAsync());
        Assert.Equal(0, await page.Locator("[data-key^='trial ']").CountAsync());

        await server.Start();
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        await page.GotoAsync(server.Address + "/done");
        string said = await page.Locator("main").ReadAsync();
        Assert.Contains("trial 2: " + Says, said);
        Assert.Contains("test: ", said);
        server.Kill();

        // Both trials cost a contact, and what was measured of them is kept.
        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        (JournalEntry Entry, SetEntry Set)[] trials = [.. SetsDone.Effective(squad.Entries)];
        Assert.Equal([0.24, 0.27], trials.Select(t => t.Set.ContactTimeS!.Value));
        Assert.Equal([0.31, 0.30], trials.Select(t => t.Set.HeightM!.Value));
        CompletedItem done = Assert.Single(
            squad.Material.Histories.SelectMany(h => h.Completed),
            c => c.Date >= DemoCommand.Day
        );
        Assert.Equal(2, done.Contacts);
        Assert.Equal(0.30, done.DropHeightM);
        await page.CloseAsync();

        async Task Trial(string height, string contact)
        {
            ILocator now = page.Locator("details.test").First;
            await now.Locator("[data-key^='height ']").FillAsync(height);
            await now.Locator("[data-key^='contact ']").FillAsync(contact);
            await now.Locator("[data-key^='trial ']").ClickAsync();
            await page.WaitForSelectorAsync("[data-key^='back ']");
        }
    }

    /// <summary>
    /// Whoever has nothing planned but a test open sees it, and can log it; pain in a new place stops it before the next trial, wherever
    /// it was said, and the program says the same.
    /// </summary>
    [Fact]
    public async Task ProposedTest_OfAnAthleteWithNothingPlanned_IsStoppedByPainInANewPlace()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        await page.RouteAsync("**/floor/sessions/*", async route => await WithATest(route, toNobody: true));
        await OpenFloor(page, server);
        ILocator row = page.Locator(".floor-roll li")
            .Filter(new LocatorFilterOptions { HasText = "A test may be done, if you like." })
            .First;
        await row.Locator("[data-key^='open ']").ClickAsync();
        await page.Locator("details.test summary").First.ClickAsync();
        await page.Locator("[data-key^='height ']").First.FillAsync("31");
        await page.Locator("[data-key^='trial ']").First.ClickAsync();
        await page.WaitForSelectorAsync("[data-key^='back ']");
        Assert.Equal("", await page.Locator("#alarms").ReadAsync());

        ILocator rest = page.Locator(".work-now > details:has-text('Pain at rest')").First;
        await rest.Locator("summary").ClickAsync();
        await rest.Locator("[data-key^='place ']").ClickAsync();
        await page.WaitForSelectorAsync("#alarms p");
        Assert.Contains("stop. it hurts in a new place.", await page.Locator("#alarms").ReadAsync());
        Assert.Equal(0, await page.Locator("[data-key^='trial ']").CountAsync());
        Assert.Contains("Say how bad it is", await page.Locator(".work-now").ReadAsync());

        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        await page.GotoAsync(server.Address + "/done");
        string said = await page.Locator("main").ReadAsync();
        Assert.Contains("trial 1: it hurt in a new place", said);
        Assert.Contains("; it hurt in a new place", said);
        server.Kill();
        await page.CloseAsync();
    }

    /// <summary>The session as the program gives it, with one test more for whoever has something planned, or for all others.</summary>
    private static async Task WithATest(IRoute route, bool toNobody = false)
    {
        IAPIResponse answer = await route.FetchAsync();
        JsonNode session = JsonNode.Parse(await answer.TextAsync())!;
        foreach (JsonNode? athlete in session["athletes"]!.AsArray().Where(a => a!["nothing"] is not null == toNobody))
        {
            athlete!["tests"] = JsonNode.Parse(
                """
                [{
                  "question": "drop height", "exercise": "depth-jump", "name": "Depth jump", "why": "It would tell most.",
                  "trials": 3, "contacts_per_trial": 1, "drop_height_m": 0.30,
                  "stop": {
                    "contact_above_s": 0.25, "height_loss_pct": 10, "height_from_m": null, "landing_faults": 1, "pain_above": 2,
                    "pain_site_new": true, "words": ["contact is longer than 250 ms"]
                  }
                }]
                """
            );
        }

        await route.FulfillAsync(new RouteFulfillOptions { Response = answer, Body = session.ToJsonString() });
    }

    [Fact]
    public async Task PainAboveFive_StopsEverythingAtOnce_InWords()
    {
        IPage page = await demo.Open(390, worker: false);
        // What is logged here stays on this tablet: the demo is other tests' too.
        await page.RouteAsync("**/floor/log", async route => await route.AbortAsync());
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("body[data-ready]");
        await page.Locator("[data-key^='open ']").Last.ClickAsync();
        ILocator pain = page.Locator(".work-now details:has-text(\"Pain at rest\")").Last;
        await pain.Locator("summary").ClickAsync();
        await pain.Locator("button", new LocatorLocatorOptions { HasTextString = "6" }).ClickAsync();
        await page.WaitForSelectorAsync("#alarms p");
        Assert.Contains(
            "stop everything, no jumps today. Pain is 6 of 10, above 5.",
            await page.Locator("#alarms").ReadAsync()
        );
        Assert.Equal("alert", await page.GetAttributeAsync("#alarms", "role"));
        await page.CloseAsync();
    }

    /// <summary>A tablet with the work open of the last in the roll who has any.</summary>
    private async Task<(IPage Page, ILocator Row)> WithARowOpen()
    {
        IPage page = await demo.Open(820, worker: false);
        // What is logged here stays on this tablet: the demo is other tests' too.
        await page.RouteAsync("**/floor/log", async route => await route.AbortAsync());
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("#where li");
        ILocator row = page.Locator(".floor-roll > li:has(.done)").Last;
        await row.Locator("[data-key^='open ']").ClickAsync();
        return (page, row);
    }

    /// <summary>
    /// The card asks for pain before anything is done, and from 3 to 5 leaves what stands instead of each exercise. The tablet says the same: pain at
    /// rest is of no exercise, so it counts for each. Up to 2 work goes on.
    /// </summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(4, true)]
    public async Task PainAtRest_LeavesOnlyWhatStandsInstead_OfEveryExercise(int score, bool closes)
    {
        (IPage page, ILocator row) = await WithARowOpen();
        string name = await row.Locator(".name").First.ReadAsync();
        ILocator rest = row.Locator(".work-now > details:has-text('Pain at rest')");
        await rest.Locator("summary").First.ClickAsync();
        await rest.Locator($"p.tools button:text-is('{score}')").ClickAsync();
        await row.GetByText($"Logged: {score} of 10").First.WaitForAsync();
        int items = await row.Locator(".work-now > .item").CountAsync();
        Assert.True(items > 1);
        Assert.Equal(closes ? items : 0, await row.Locator(".work-now > .item > .asking").CountAsync());
        Assert.Equal(0, await row.Locator("[data-closed]").CountAsync());
        string alarms = await page.Locator("#alarms").ReadAsync();
        Assert.Equal(closes, alarms.Contains($"Pain was {score} of 10, above 2.", StringComparison.Ordinal));
        Assert.Equal(!closes, (await page.Locator("#where").ReadAsync()).Contains(name, StringComparison.Ordinal));
        await page.CloseAsync();
    }

    /// <summary>A plan keeps to what rules allow, a finger does not: the first contact beyond what was planned is said at once.</summary>
    [Fact]
    public async Task MoreContactsThanPlanned_AreSaidAtOnce()
    {
        (IPage page, ILocator row) = await WithARowOpen();
        ILocator beyond = row.Locator(".asking:has-text('More than planned')");
        for (int tap = 0; tap < 40 && await beyond.CountAsync() == 0; tap++)
        {
            await row.Locator("[data-key^='more ']").First.ClickAsync();
        }

        string said = await beyond.ReadAsync();
        string[] numbers = [.. said.Split(' ').Where(w => w.All(char.IsAsciiDigit) && w.Length > 0)];
        Assert.True(
            int.Parse(numbers[0], CultureInfo.InvariantCulture) > int.Parse(numbers[1], CultureInfo.InvariantCulture),
            said
        );
        await page.CloseAsync();
    }

    /// <summary>
    /// "3 to 5: do only the 'instead' of each exercise", says the card: of each, and not only of the one in which it hurt. Turns and the rest's
    /// next exercise follow, and one line says it for all.
    /// </summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(4, true)]
    public async Task PainInOneExercise_LeavesOnlyWhatStandsInstead_OfEveryOther(int score, bool closes)
    {
        (IPage page, ILocator row) = await WithARowOpen();
        string name = await row.Locator(".name").First.ReadAsync();
        ILocator pain = row.Locator(".item details:has-text('Pain during')").First;
        await pain.Locator("summary").First.ClickAsync();
        await pain.Locator($"p.tools button:text-is('{score}')").ClickAsync();
        await row.GetByText($"Logged: {score} of 10").First.WaitForAsync();
        int items = await row.Locator(".work-now > .item").CountAsync();
        Assert.True(items > 1);
        Assert.Equal(closes ? items : 0, await row.Locator(".work-now > .item:has(> .asking)").CountAsync());
        Assert.Equal(
            closes ? 1 : 0,
            await page.Locator("#alarms p:has-text('Of every other exercise, too')").CountAsync()
        );
        Assert.Equal(!closes, (await page.Locator("#where").ReadAsync()).Contains(name, StringComparison.Ordinal));
        await page.CloseAsync();
    }

    /// <summary>
    /// How much it hurts is asked first and kept at once, where it hurts after it. At the shin no number goes on, as the card says; at the Achilles
    /// tendon a 1 does, and the place goes to the program with the pain.
    /// </summary>
    [Theory]
    [InlineData("shin", true)]
    [InlineData("Achilles", false)]
    public async Task WhereItHurts_IsAskedAfterHowMuch_AndABoneStopsAtAnyNumber(string place, bool stops)
    {
        (IPage page, ILocator row) = await WithARowOpen();
        ILocator pain = row.Locator(".item details:has-text('Pain during')").First;
        await pain.Locator("summary").First.ClickAsync();
        await pain.Locator("p.tools button:text-is('1')").ClickAsync();
        await Assertions.Expect(pain.Locator("p.asking")).ToHaveTextAsync("Where does it hurt?");
        await Assertions.Expect(row.Locator("[data-closed]")).ToHaveCountAsync(0);
        await page.ScreenshotAsync(
            new PageScreenshotOptions
            {
                Path = Repository.At("artifacts", "screenshots", "floor-where-it-hurts.png"),
                FullPage = true,
            }
        );
        await pain.Locator($"button:text-is('{place}')").First.ClickAsync();
        await row.Locator("[data-key^='side '][data-key$=' left']").First.ClickAsync();
        await Assertions.Expect(row.Locator("[data-closed]")).ToHaveCountAsync(stops ? 1 : 0);
        await Assertions
            .Expect(page.Locator("#alarms p:has-text('bone can be what hurts')"))
            .ToHaveCountAsync(stops ? 1 : 0);

        await page.CloseAsync();
    }

    /// <summary>
    /// After pain above five nothing is offered any more: no countdown, no set, no test, no turn. What was done before is still counted.
    /// </summary>
    [Fact]
    public async Task PainAboveFive_DuringASet_ClosesTheDay_AndOnlyWhatWasDoneIsStillLogged()
    {
        IPage page = await demo.Open(820, worker: false);
        await page.RouteAsync("**/floor/sessions/*", async route => await WithATest(route));
        // What is logged here stays on this tablet: the demo is other tests' too.
        await page.RouteAsync("**/floor/log", async route => await route.AbortAsync());
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("#where li");
        ILocator row = page.Locator(".floor-roll > li:has(.done)").Last;
        string name = await row.Locator(".name").First.ReadAsync();
        Assert.Contains(name, await page.Locator("#where").ReadAsync());
        await row.Locator("[data-key^='open ']").ClickAsync();
        await row.Locator(".set[aria-pressed=false]").First.ClickAsync();
        await row.Locator(".rest:has-text('Rest ')").WaitForAsync();
        Assert.Equal(1, await row.Locator("details.test").CountAsync());

        ILocator pain = row.Locator(".item details:has-text('Pain during')").First;
        await pain.Locator("summary").ClickAsync();
        await pain.Locator("button", new LocatorLocatorOptions { HasTextString = "7" }).ClickAsync();
        await page.WaitForSelectorAsync("#alarms p");
        Assert.Contains(
            "No jumps today: pain is 7 of 10, above 5. Tell the coach",
            await row.Locator("[data-closed]").ReadAsync()
        );
        Assert.Equal(0, await row.Locator(".rest").CountAsync());
        Assert.Equal(0, await row.Locator("details.test").CountAsync());
        Assert.Equal(
            0,
            await row.Locator("button.set[aria-pressed=false]:visible, [data-key^='more ']:visible").CountAsync()
        );
        await page.WaitForFunctionAsync("n => !document.getElementById('where').textContent.includes(n)", name);
        Assert.DoesNotContain("If sore", await row.ReadAsync());

        // A set done before the stop costs its contacts all the same, and starts no countdown.
        await row.Locator("details.before-stop summary").First.ClickAsync();
        await row.Locator("details.before-stop button").First.ClickAsync();
        await row.Locator(".done:has-text('2 of ')").WaitForAsync();
        Assert.DoesNotContain("Rest ", await row.ReadAsync());
        await page.CloseAsync();
    }

    /// <summary>
    /// Pain in the middle of a set, with the program away: the set counts as possibly done until somebody says how many reps it had, and the
    /// minutes up to the stop stand in the books. The page Done says both.
    /// </summary>
    [Fact]
    public async Task PainInTheMiddleOfASet_ItsRepsAreAsked_AndCountOnceTheyAreSaid()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        await OpenFloor(page, server, "Left");
        server.Kill();
        await page.Locator("#begin").ClickAsync();
        ILocator row = page.Locator(".floor-roll > li:has(.done)").Last;
        await row.Locator("[data-key^='open ']").ClickAsync();
        await row.Locator(".set[aria-pressed=false]").First.ClickAsync();
        ILocator pain = row.Locator(".item details:has-text('Pain during')").First;
        await pain.Locator("summary").ClickAsync();
        await pain.Locator("button:text-is('7')").ClickAsync();
        await row.Locator("[data-closed]").WaitForAsync();
        Assert.Contains("Set 2 was stopped. How many reps were done?", await row.Locator(".item").First.ReadAsync());
        await row.Locator(".work-now > details:has-text('How hard') > summary").ClickAsync();
        Assert.Equal("1", await row.Locator("[data-key^='minutes ']").InputValueAsync());
        await row.Locator("[data-key^='effort '][data-key$=' 6']").ClickAsync();

        await server.Start();
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        IPage done = await demo.Open(820);
        await done.GotoAsync(server.Address + "/done");
        string open = await done.Locator("main").ReadAsync();
        Assert.Matches(@"\d+ \(perhaps up to \d+\)", open);
        Assert.Contains("Pain stopped a set and nobody said how many reps were done.", open);
        Assert.Contains("6 of 10, 1 min", open);

        await row.Locator("[data-key^='reps '][data-key$=' 1']").ClickAsync();
        await row.Locator(".item:has-text('Set 2 was stopped after 1 reps.')").WaitForAsync();
        Assert.Equal(0, await row.Locator("[data-key^='reps ']").CountAsync());
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        await done.ReloadAsync();
        string said = await done.Locator("main").ReadAsync();
        Assert.DoesNotContain("perhaps up to", said);
        Assert.Contains("1 reps of a set that was stopped", said);
        server.Kill();

        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        CompletedItem work = Assert.Single(
            squad.Material.Histories.SelectMany(h => h.Completed),
            c => c.Date >= DemoCommand.Day
        );
        SetEntry[] sets = [.. SetsDone.Effective(squad.Entries).Select(s => s.Set)];
        Assert.Equal(sets.Sum(s => s.Contacts), work.Contacts);
        Assert.True(sets.Single(s => s.BrokenOff).Contacts < sets.Single(s => !s.BrokenOff).Contacts);
        Assert.All(squad.Material.Histories, h => Assert.Empty(h.PossiblyDone));
        await page.CloseAsync();
        await done.CloseAsync();
    }

    /// <summary>A finger slipped: the pain is taken back with a name, without the program, the day opens again, and both words are kept and shown.</summary>
    [Fact]
    public async Task PainTappedByMistake_IsTakenBackWithAName_AndBothStayInTheRecord()
    {
        DemoCommand.WriteSquad(_folder);
        using var server = new ServeProcess(_folder);
        await server.Start(plans: true);
        IPage page = await demo.Open(820);
        await OpenFloor(page, server, "Left");
        ILocator row = page.Locator(".floor-roll > li:has(.done)").Last;
        string name = await row.Locator(".name").First.ReadAsync();
        server.Kill();
        await row.Locator("[data-key^='open ']").ClickAsync();
        await row.Locator(".work-now > details:has-text('Pain at rest') > summary").ClickAsync();
        await row.Locator(".work-now > details:has-text('Pain at rest') > p.tools button:text-is('8')").ClickAsync();
        await row.Locator("[data-closed]").WaitForAsync();

        // It stays open, because it asks where.
        await row.Locator(".mistake > summary").ClickAsync();
        // Without a name nothing is taken back.
        await row.Locator("[data-key^='pain-back ']").ClickAsync();
        Assert.Equal("true", await row.Locator("[data-key^='back-by ']").GetAttributeAsync("aria-invalid"));
        Assert.Equal(1, await row.Locator("[data-closed]").CountAsync());
        await row.Locator("[data-key^='back-by ']").FillAsync("Sam Coach");
        await row.Locator("[data-key^='pain-back ']").ClickAsync();
        await page.WaitForFunctionAsync("() => document.getElementById('alarms').textContent === ''");
        Assert.Equal(0, await row.Locator("[data-closed]").CountAsync());
        Assert.Contains(name, await page.Locator("#where").ReadAsync());
        Assert.Contains("Taken back: 8 of 10, by Sam Coach.", await row.Locator(".work-now").TextContentAsync());
        Assert.Equal("2", await page.GetAttributeAsync("body", "data-kept"));

        await server.Start();
        await page.WaitForSelectorAsync("body[data-waiting='0'][data-reachable=true]");
        await page.GotoAsync(server.Address + "/done");
        Assert.Contains("8 of 10 was taken back by Sam Coach that day", await page.Locator("main").ReadAsync());
        server.Kill();

        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        // A tablet hands in what it kept by its ids, so that either may come first.
        Assert.Equal([EntryKinds.Pain, EntryKinds.PainWithdrawn], squad.Entries.Select(e => e.Kind).Order());
        Assert.DoesNotContain(squad.Material.Histories, h => h.Symptoms.Any(s => s.Site == PainEntry.PlaceNotSaid));
        await page.CloseAsync();
    }

    /// <summary>A stop rule closes its own exercise, and leaves the others open.</summary>
    [Fact]
    public async Task TwoLandingFaults_CloseThatExercise_AndNoOther()
    {
        IPage page = await demo.Open(820, worker: false);
        await page.RouteAsync("**/floor/log", async route => await route.AbortAsync());
        await page.GotoAsync("/floor/");
        await page.WaitForSelectorAsync("#where li");
        string first = await page.EvaluateAsync<string>(
            """
            async () => {
              const id = document.getElementById("session").value;
              const plan = await fetch("/floor/sessions/" + id).then(r => r.json());
              const a = plan.athletes.find(a => a.items.length > 1 && a.items[0].stop.landing_faults === 2 && a.items[0].sets > 1);
              return a.id + " " + a.items[0].exercise;
            }
            """
        );
        await page.Locator($"[data-key='open {first.Split(' ')[0]}']").ClickAsync();
        await page.Locator($"[data-key='set {first} 1']").ClickAsync();
        await page.Locator($"[data-key='faults {first} 2']").ClickAsync();
        await page.WaitForSelectorAsync("#alarms p");
        Assert.False(await page.Locator($"[data-key='set {first} 2']").IsVisibleAsync());
        Assert.False(await page.Locator($"[data-key='more {first}']").IsVisibleAsync());
        Assert.True(await page.Locator(".item").Nth(1).Locator(".set").First.IsVisibleAsync());

        // Said wrongly, and said anew: it is open again.
        await page.Locator($"[data-key='faults {first} 0']").ClickAsync();
        await page.Locator($"[data-key='set {first} 2']").WaitForAsync();
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("{\"entries\":[{\"id\":\"x\"}]}")]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000001\",\"kind\":\"correction\",\"athlete\":\"a01\",\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{}}]}"
    )]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000002\",\"kind\":\"set\",\"athlete\":\"a01\",\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{\"exercise\":\"snap-down\",\"set\":-1,\"reps\":5,\"contacts\":5}}]}"
    )]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000003\",\"kind\":\"pain\",\"athlete\":\"nobody\",\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{\"score\":3,\"when\":\"rest\"}}]}"
    )]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000004\",\"kind\":\"kit\",\"athlete\":null,\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{\"kit\":\"plyo-box\",\"count\":-1}}]}"
    )]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000005\",\"kind\":\"kit\",\"athlete\":\"a01\",\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{\"kit\":\"plyo-box\",\"count\":1}}]}"
    )]
    [InlineData(
        "{\"entries\":[{\"id\":\"0f0e0d0c-0000-4000-8000-000000000006\",\"kind\":\"pain-withdrawn\",\"athlete\":\"a01\",\"session\":\"s\",\"made_at\":\"2027-01-04T10:00:00Z\",\"who\":\"x\",\"data\":{\"pain\":\"0f0e0d0c-0000-4000-8000-000000000003\",\"by\":\" \"}}]}"
    )]
    public async Task EntriesThatNoTabletWrites_AreToldAndNotTaken(string body)
    {
        int before = demo.Desk.Journal.Length;
        using var client = new HttpClient();
        using var content = new StringContent(body, null, "application/json");
        using HttpResponseMessage answer = await client.PostAsync(
            new Uri(demo.Address + "/floor/log"),
            content,
            TestContext.Current.CancellationToken
        );
        JsonElement told = JsonDocument
            .Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))
            .RootElement;
        Assert.Equal(1, told.GetProperty("refused").GetArrayLength());
        Assert.Equal(before, demo.Desk.Journal.Length);
    }

    private static async Task OpenFloor(IPage page, ServeProcess server, string? name = null)
    {
        await page.GotoAsync(server.Address + "/week");
        await page.WaitForSelectorAsync("form[action='/week/plan']");
        await page.GotoAsync(server.Address + "/floor/");
        await page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await page.WaitForSelectorAsync("body[data-ready]");
        await page.WaitForSelectorAsync(".floor-roll li");
        if (name is not null)
        {
            await page.FillAsync("#device", name);
            await page.Locator("#device").BlurAsync();
        }
    }

    private static async Task<double[]> Ends(IPage page) =>
        await page.EvaluateAsync<double[]>(
            "() => [...document.querySelectorAll('#where .number')].map(e => Number(e.textContent.match(/to ([\\d.]+)/)[1]))"
        );
}
