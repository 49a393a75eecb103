using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Stores;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Scripts, formulas, letters that turn the line round, and far too much of everything, in every field: all of it is text.</summary>
public sealed partial class HostileSquadTests : IAsyncLifetime
{
    private const string Script =
        "<script>alert(1)</script><img src=x onerror=alert(2)>\" ' &amp; \u202Etxt.exe =cmd|'/C calc'!A0";

    /// <summary>Routes that take something and that no form of a page leads to, or that would end the walk.</summary>
    private static readonly string[] NotWalked =
    [
        // What scripts send, as JSON or as files.
        "/floor/log",
        "/import/{intake}/file",
        "/import/{intake}/finish",
        "/trials/{sha}/{number:int}/events",
        "/trials/{sha}/{number:int}/try",
        // There while a recording could be measured if somebody said its task; sent below with every one of its fields.
        "/import/labels-of-all",
        // There while a lock is set; it would shut the walk out.
        "/lock/now",
        "/lock/open",
        // There while a plan is being worked out, or one was proposed; none of them has a field.
        "/week/leave",
        "/week/stop",
        "/week/take",
    ];

    private static readonly string Quoted = "\"" + Script.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
    private OwnSquad _squad = null!;
    private FrontDesk _desk = null!;

    public async ValueTask InitializeAsync()
    {
        _squad = await OwnSquad.Open(plans: true, few: true, before: Poison);
        _desk = _squad.Desk;
        _desk.Write(
            new JournalEntry(
                Guid.NewGuid().ToString(),
                "set",
                "a02",
                "2027-01-04-<b>",
                NodaTime.Instant.FromUtc(2027, 1, 4, 9, 0),
                Script,
                """{"exercise":"<script>alert(3)</script>","set":1,"reps":1,"contacts":1,"faults":null,"undone":false,"drop_height_m":null}"""
            )
        );
    }

    public async ValueTask DisposeAsync() => await _squad.DisposeAsync();

    /// <summary>Every column of every table has a row in which it is hostile; names, notes and a file's name are too.</summary>
    private static void Poison(string folder)
    {
        foreach (string table in Directory.EnumerateFiles(folder, "*.csv").Order(StringComparer.Ordinal))
        {
            string[] lines = File.ReadAllLines(table);
            string[] last = lines[^1].Split(',');
            File.AppendAllLines(
                table,
                Enumerable
                    .Range(0, lines[0].Split(',').Length)
                    .Select(c => string.Join(',', last.Select((cell, i) => i == c ? Quoted : cell)))
            );
        }

        string athletes = Path.Combine(folder, "athletes.csv");
        string[] rows = File.ReadAllLines(athletes);
        File.WriteAllLines(
            athletes,
            rows.Select(
                (l, i) =>
                    i == 0
                        ? l
                        : NameOf().Replace(l, "${id}," + Quoted.Replace("$", "$$", StringComparison.Ordinal) + ",")
            )
        );
        // Somebody for whom a parent is asked, so that the form for that stands there.
        string[] columns = rows[0].Split(',');
        File.AppendAllText(
            athletes,
            string.Join(
                ',',
                columns.Select(c =>
                    c switch
                    {
                        "id" => "a20",
                        "name" => "Young",
                        "birth_date" => "2013-05-05",
                        _ => "",
                    }
                )
            ) + "\n"
        );
        File.AppendAllText(
            Path.Combine(folder, "completed.csv"),
            $"a02,2027-01-01,s,snap-down,3,5,15,0,1,1,3,,\"{new string('x', 10_000_000)}\"\n"
        );
        File.WriteAllText(
            Path.Combine(folder, $"recordings/=cmd 'x' {new string('y', 180)}.csv"),
            "# athlete: a02\n# note: " + Script + "\ntime_s,force_N\n0,abc\n"
        );
    }

    [Fact]
    public async Task EveryPage_ShowsItAsText_AndStaysOfABearableSize()
    {
        string session = _desk.Book.PlanOrNull?.Cards.FirstOrDefault()?.SessionId ?? "none";
        string sha = _desk.Book.Find("a02")!.History.Trials[0].Sha256;
        string hostile = Uri.EscapeDataString(Script);
        string[] paths =
        [
            "/",
            "/?find=" + hostile,
            "/week",
            "/done",
            "/refused",
            "/import",
            "/settings",
            "/settings/rules",
            "/athletes/a02",
            "/athletes/" + hostile,
            $"/trials/{sha}/1",
            $"/cards/{session}/a02",
            $"/cards/{session}/a02/why?not=" + hostile,
            $"/week/sessions/{session}?called=yes&minutes=x&here=" + hostile + "&kit-seat=" + hostile,
            "/week/sessions/" + hostile,
            "/kit?tool=bands&rest=" + hostile + "&anchor=" + hostile,
            "/kit?tool=box&box=" + new string('9', 5000),
            "/api/athletes",
            "/floor/sessions",
        ];
        using var client = new HttpClient();
        foreach (string path in paths)
        {
            using HttpResponseMessage answer = await client.GetAsync(
                new Uri(_squad.Address + path),
                TestContext.Current.CancellationToken
            );
            Assert.True(
                answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.NotFound,
                $"{path[..Math.Min(40, path.Length)]} answered {answer.StatusCode}"
            );
            string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.True(text.Length < 2_000_000, $"{path} is {text.Length} letters long");
            if (answer.Content.Headers.ContentType?.MediaType == "text/html")
            {
                Assert.DoesNotContain("<script>alert", text, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("<img src=x", text, StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    [Fact]
    public async Task BodiesThatAreTooLongOrOfAnotherShape_AreAnsweredNotTaken()
    {
        using var client = new HttpClient();
        foreach (
            (string path, string body) in new (string, string)[]
            {
                ("/floor/log", "{\"entries\":[" + new string(' ', 10_000_000) + "]}"),
                ("/floor/log", new string('[', 5000)),
                ("/trials/x/1/try", "{}"),
            }
        )
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/json");
            using HttpResponseMessage answer = await client.PostAsync(
                new Uri(_squad.Address + path),
                content,
                TestContext.Current.CancellationToken
            );
            Assert.True((int)answer.StatusCode is >= 400 and < 500, $"{path} answered {answer.StatusCode}");
        }
    }

    /// <summary>
    /// Each form of each page that links lead to, each of its fields: a script, letters that turn the line, and ten megabytes; then
    /// every page once more, which shows what was taken as text.
    /// </summary>
    [Fact]
    public async Task EveryFieldOfEveryForm_TakesAnythingAsText()
    {
        // So that the forms stand there that take something back.
        foreach (string id in new[] { "a01", "a02" })
        {
            await Send(
                $"/health/{id}/restriction",
                true,
                [
                    ("set_by", "x"),
                    ("role", "coach"),
                    ("from", "2027-01-04"),
                    ("endless", "yes"),
                    ("whole", "yes"),
                    ("forbidden", "jumps"),
                ]
            );
        }

        await Send(
            "/settings/rules/limit",
            true,
            [
                ("limit", "youth-drop"),
                ("value", "0.2"),
                ("who", "x"),
                ("reason", "x"),
                ("from", "2027-01-04"),
                ("until", "2027-01-10"),
            ]
        );
        await Send(
            "/import/film",
            true,
            [
                ("athlete", "a02"),
                ("date", "2027-01-03"),
                ("task", "countermovement-jump"),
                ("frames_per_second", "240"),
                ("first", "take-off"),
                ("frames", "118, 243"),
            ]
        );
        Dictionary<string, string> pages = await Walk();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var posted = new HashSet<string>(StringComparer.Ordinal);
        foreach ((string page, string html) in pages)
        {
            foreach (Match form in FormOf().Matches(html))
            {
                string head = form.Groups["head"].Value;
                string to = WebUtility.HtmlDecode(
                    ActionOf().Match(head) is { Success: true } action ? action.Groups["to"].Value : page
                );
                to = to.Split('#')[0].Split('?')[0];
                bool posts = head.Contains("method=\"post\"", StringComparison.OrdinalIgnoreCase);
                if (posts)
                {
                    posted.Add(Shape(to));
                }

                (string Name, string Value)[] fields =
                [
                    .. FieldOf()
                        .Matches(form.Groups["body"].Value)
                        .Select(f =>
                            (
                                WebUtility.HtmlDecode(f.Groups["name"].Value),
                                ValueOf().Match(f.Value) is { Success: true } v
                                    ? WebUtility.HtmlDecode(v.Groups["value"].Value)
                                    : "x"
                            )
                        ),
                ];
                foreach ((string name, _) in fields.Where(f => seen.Add($"{posts} {Shape(to)} {f.Name}")))
                {
                    int at = Array.FindIndex(fields, f => f.Name == name);
                    foreach (string value in new[] { Script, new string('9', posts ? 10_000_000 : 5000) })
                    {
                        await Send(to, posts, [.. fields.Select((f, i) => i == at ? (name, value) : f)]);
                    }
                }
            }
        }

        foreach (
            string name in new[]
            {
                "intake",
                "file",
                "athlete",
                "date",
                "task",
                "limb",
                "device",
                "frames_per_second",
                "some",
            }
        )
        {
            foreach (string value in new[] { Script, new string('9', 10_000_000) })
            {
                await Send("/import/labels-of-all", true, [("some", "all"), (name, value)]);
            }
        }

        // Fields that nobody walked make a test that can't fail.
        Assert.InRange(seen.Count, 100, 600);
        // Whatever takes a form was sent one that a page holds. The others take no form (files, what scripts send), or theirs stands on a
        // page that is there for a moment only, each for a reason.
        string[] notWalked =
        [
            .. Routes("POST").Where(r => !posted.Contains(Shape(r.Replace("{", "").Replace("}", "")))).Order(),
        ];
        Assert.Equal(string.Join('\n', NotWalked.Order()), string.Join('\n', notWalked));

        foreach ((string page, string html) in await Walk())
        {
            Assert.DoesNotContain("<script>alert", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img src=x", html, StringComparison.OrdinalIgnoreCase);
            Assert.True(html.Length < 2_000_000, $"{page} is {html.Length} letters long");
        }
    }

    /// <summary>Every page that links lead to from the first, two of each kind at most; what a page shows, by its address.</summary>
    private async Task<Dictionary<string, string>> Walk()
    {
        var pages = new Dictionary<string, string>(StringComparer.Ordinal);
        var kinds = new Dictionary<string, int>(StringComparer.Ordinal);
        var waiting = new Queue<string>(["/"]);
        while (waiting.TryDequeue(out string? path))
        {
            if (pages.ContainsKey(path))
            {
                continue;
            }

            // A page of the squad knows its kind by its route; a calculator is another page by its question.
            string kind = Shape(path) + (path.StartsWith("/kit", StringComparison.Ordinal) ? path : "");
            if (kinds.TryGetValue(kind, out int met) && met >= 2)
            {
                continue;
            }

            kinds[kind] = met + 1;
            using HttpResponseMessage answer = await _squad.Client.GetAsync(
                new Uri(path, UriKind.Relative),
                TestContext.Current.CancellationToken
            );
            Assert.True((int)answer.StatusCode < 500, $"{path} answered {answer.StatusCode}");
            if (answer.Content.Headers.ContentType?.MediaType != "text/html")
            {
                continue;
            }

            string html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            pages[path] = html;
            foreach (Match link in LinkOf().Matches(html))
            {
                waiting.Enqueue(WebUtility.HtmlDecode(link.Groups["to"].Value).Split('#')[0]);
            }
        }

        return pages;
    }

    /// <summary>The route that answers an address: its segments that are somebody's or something's own are one.</summary>
    private string Shape(string path)
    {
        string[] parts = path.Split('?')[0].Split('/');
        string? route = Routes("GET")
            .Concat(Routes("POST"))
            .OrderBy(r => r.Count(c => c == '{'))
            .FirstOrDefault(r =>
                r.Split('/') is var own
                && own.Length == parts.Length
                && own.Zip(parts).All(p => p.First.StartsWith('{') || p.First == p.Second)
            );
        return route ?? path.Split('?')[0];
    }

    private IEnumerable<string> Routes(string method) =>
        _squad
            .Site.Services.GetServices<EndpointDataSource>()
            .SelectMany(s => s.Endpoints)
            .OfType<RouteEndpoint>()
            .Where(e => e.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(method) == true)
            .Select(e => "/" + e.RoutePattern.RawText!.TrimStart('/'))
            .Distinct();

    [Fact]
    public async Task ExportedCells_AreNoFormulas()
    {
        string csv = await _squad.Get("/api/export/measures.csv");
        Assert.Contains("a02", csv);
        foreach (string line in csv.Split('\n'))
        {
            Assert.DoesNotMatch("(^|,)\"?[=+@\t]", line);
            Assert.DoesNotMatch("(^|,)\"?-[^0-9]", line);
        }
    }

    private async Task Send(string path, bool posts, (string Name, string Value)[] fields)
    {
        string what =
            $"{path}: {string.Join(", ", fields.Select(f => $"{f.Name}={f.Value[..Math.Min(12, f.Value.Length)]}"))}";
        using HttpResponseMessage answer = posts
            ? await Heard(path, fields, what)
            : await _squad.Client.GetAsync(
                new Uri(
                    path + "?" + string.Join('&', fields.Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value)}")),
                    UriKind.Relative
                ),
                TestContext.Current.CancellationToken
            );
        Assert.True((int)answer.StatusCode < 500, $"{what} answered {answer.StatusCode}");
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("<script>alert", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", text, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Sent to its end: a browser that is cut off while it sends shows no sentence.</summary>
    private async Task<HttpResponseMessage> Heard(string path, (string Name, string Value)[] fields, string what)
    {
        try
        {
            return await _squad.Post(path, fields);
        }
        catch (HttpRequestException e)
        {
            throw new Xunit.Sdk.XunitException($"{what} was not heard to its end.", e);
        }
    }

    [GeneratedRegex("<form(?<head>[^>]*)>(?<body>.*?)</form>", RegexOptions.Singleline, 1000)]
    private static partial Regex FormOf();

    [GeneratedRegex(" action=\"(?<to>[^\"]*)\"", RegexOptions.None, 1000)]
    private static partial Regex ActionOf();

    [GeneratedRegex("<a [^>]*href=\"(?<to>/[^\"]*)\"", RegexOptions.None, 1000)]
    private static partial Regex LinkOf();

    [GeneratedRegex("<(?:input|select|textarea|button)[^>]* name=\"(?<name>[^\"]*)\"[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex FieldOf();

    [GeneratedRegex(" value=\"(?<value>[^\"]*)\"", RegexOptions.None, 1000)]
    private static partial Regex ValueOf();

    [GeneratedRegex("^(?<id>[^,]*),[^,]*,", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NameOf();
}
