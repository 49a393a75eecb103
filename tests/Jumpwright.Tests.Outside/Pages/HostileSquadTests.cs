using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Scripts, formulas, letters that turn the line round, and far too much of everything, in every field: all of it is text.</summary>
public sealed partial class HostileSquadTests : IAsyncLifetime
{
    private const string Script =
        "<script>alert(1)</script><img src=x onerror=alert(2)>\" ' &amp; \u202Etxt.exe =cmd|'/C calc'!A0";

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

    /// <summary>Each form of each page, each of its fields: a script, letters that turn the line, and ten megabytes.</summary>
    [Fact]
    public async Task EveryFieldOfEveryForm_TakesAnythingAsText()
    {
        string session = _desk.Book.PlanOrNull!.Cards[0].SessionId;
        string sha = _desk.Book.Find("a02")!.History.Trials[0].Sha256;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (
            string path in new[]
            {
                "/",
                "/week",
                "/done",
                "/import",
                "/settings",
                "/set-up",
                "/athletes/a02",
                "/share",
                "/kit?tool=bands",
                "/kit?tool=seat",
                "/kit?tool=drop",
                "/kit?tool=load",
                "/kit?tool=run-up",
                $"/week/sessions/{session}",
                $"/cards/{session}/a02/why",
                $"/trials/{sha}/1",
            }
        )
        {
            foreach (Match form in FormOf().Matches(await _squad.Get(path)))
            {
                string to = WebUtility.HtmlDecode(form.Groups["to"].Value.Split('#')[0]);
                bool posts = form.Groups["head"].Value.Contains("post", StringComparison.OrdinalIgnoreCase);
                (string Name, string Value)[] fields =
                [
                    .. FieldOf()
                        .Matches(form.Groups["body"].Value)
                        .Select(f =>
                            (
                                f.Groups["name"].Value,
                                ValueOf().Match(f.Value) is { Success: true } v
                                    ? WebUtility.HtmlDecode(v.Groups["value"].Value)
                                    : "x"
                            )
                        ),
                ];
                foreach ((string name, _) in fields.Where(f => seen.Add(to + " " + f.Name)))
                {
                    await Send(to, posts, [.. fields.Select(f => f.Name == name ? (name, Script) : f)]);
                    await Send(
                        to,
                        posts,
                        [.. fields.Select(f => f.Name == name ? (name, new string('9', posts ? 10_000_000 : 5000)) : f)]
                    );
                }
            }
        }

        // Fields that nobody walked make a test that can't fail.
        Assert.InRange(seen.Count, 40, 400);
    }

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
        using HttpResponseMessage answer = posts
            ? await _squad.Post(path, fields)
            : await _squad.Client.GetAsync(
                new Uri(
                    path + "?" + string.Join('&', fields.Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value)}")),
                    UriKind.Relative
                ),
                TestContext.Current.CancellationToken
            );
        string what =
            $"{path}: {string.Join(", ", fields.Select(f => $"{f.Name}={f.Value[..Math.Min(12, f.Value.Length)]}"))}";
        Assert.True((int)answer.StatusCode < 500, $"{what} answered {answer.StatusCode}");
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("<script>alert", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", text, StringComparison.OrdinalIgnoreCase);
    }

    [GeneratedRegex(
        "<form (?<head>[^>]*action=\"(?<to>[^\"]*)\"[^>]*)>(?<body>.*?)</form>",
        RegexOptions.Singleline,
        1000
    )]
    private static partial Regex FormOf();

    [GeneratedRegex("<(?:input|select|textarea|button)[^>]* name=\"(?<name>[^\"]*)\"[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex FieldOf();

    [GeneratedRegex(" value=\"(?<value>[^\"]*)\"", RegexOptions.None, 1000)]
    private static partial Regex ValueOf();

    [GeneratedRegex("^(?<id>[^,]*),[^,]*,", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NameOf();
}
