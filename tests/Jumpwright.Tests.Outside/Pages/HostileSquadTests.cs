using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Plans;
using Jumpwright.Storage.Stores;
using Microsoft.AspNetCore.Builder;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Scripts, formulas, letters that turn the line round, and far too much of everything, in every field: all of it is text.</summary>
public sealed partial class HostileSquadTests : IAsyncLifetime
{
    private const string Script =
        "<script>alert(1)</script><img src=x onerror=alert(2)>\" ' &amp; \u202Etxt.exe =cmd|'/C calc'!A0";

    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-hostile-").FullName;
    private FrontDesk _desk = null!;
    private WebApplication _site = null!;

    public async ValueTask InitializeAsync()
    {
        DemoCommand.WriteSquad(_folder);
        string quoted = "\"" + Script.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
        Edit("athletes.csv", line => NameOf().Replace(line, "${id}," + quoted + ","));
        await File.AppendAllTextAsync(
            At("symptoms.csv"),
            $"a02,2027-01-02,{quoted},left,,,other,rest,1,{quoted}\n",
            TestContext.Current.CancellationToken
        );
        await File.AppendAllTextAsync(
            At("completed.csv"),
            $"a02,2027-01-01,s,snap-down,3,5,15,0,1,1,3,,\"{new string('x', 10_000_000)}\"\n",
            TestContext.Current.CancellationToken
        );
        await File.WriteAllTextAsync(
            At($"recordings/=cmd 'x' {new string('y', 180)}.csv"),
            "# athlete: a02\n# note: " + Script + "\ntime_s,force_N\n0,abc\n",
            TestContext.Current.CancellationToken
        );
        _desk = new FrontDesk(
            OpenedSquad.Kept(_folder, null, null, CancellationToken.None).Require(),
            DemoCommand.Day,
            1,
            new SolveBudget { DeterministicTime = 0.2 }
        );
        _desk.Plan(null, CancellationToken.None);
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
        _site = Site.Build(_desk, 0);
        await _site.StartAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _site.DisposeAsync();
        _desk.Dispose();
        Directory.Delete(_folder, recursive: true);
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
            "/athletes/a02",
            "/athletes/" + hostile,
            $"/trials/{sha}/1",
            $"/cards/{session}/a02",
            $"/cards/{session}/a02/why",
            "/kit?tool=bands&rest=" + hostile + "&anchor=" + hostile,
            "/kit?tool=box&box=" + new string('9', 5000),
            "/api/athletes",
            "/floor/sessions",
        ];
        using var client = new HttpClient();
        foreach (string path in paths)
        {
            using HttpResponseMessage answer = await client.GetAsync(
                new Uri(_site.Urls.First() + path),
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
                new Uri(_site.Urls.First() + path),
                content,
                TestContext.Current.CancellationToken
            );
            Assert.True((int)answer.StatusCode is >= 400 and < 500, $"{path} answered {answer.StatusCode}");
        }
    }

    private string At(string name) => Path.Combine(_folder, name);

    private void Edit(string name, Func<string, string> edit)
    {
        string[] lines = File.ReadAllLines(At(name));
        File.WriteAllLines(At(name), lines.Select((l, i) => i == 0 ? l : edit(l)));
    }

    [GeneratedRegex("^(?<id>[^,]*),[^,]*,", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NameOf();
}
