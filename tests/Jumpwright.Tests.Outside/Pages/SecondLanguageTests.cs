using System.Text.Json;
using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Safety;
using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// Every page walked in the second language, and in inches and pounds. What is still English says so (<c>lang="en"</c>): sentences of the core and
/// files' own text. Outside of that no English word of the text book stands on a page.
/// </summary>
[Collection("pages")]
public partial class SecondLanguageTests(ServedDemo demo)
{
    private const string OfTheSecond = """
        () => {
          const own = [], aloud = [], walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walk.nextNode()) {
            const node = walk.currentNode, from = node.parentElement.closest("[lang]");
            if (from && from.lang === "de" && !node.parentElement.closest("script, style")) own.push(node.textContent);
          }
          for (const e of document.querySelectorAll("[aria-label], [placeholder], [data-column]"))
            if (e.closest("[lang]").lang === "de") aloud.push(...["aria-label", "placeholder", "data-column"].map(a => e.getAttribute(a) || ""));
          return [own, aloud];
        }
        """;

    [Fact]
    public async Task InTheSecondLanguage_NoEnglishOfTheTextBookStands_OutsideOfWhatSaysItIsEnglish()
    {
        HashSet<string> german = [.. Words("de"), .. OfExercises("de")];
        // Ids stand on pages as they stand in files, in any language.
        HashSet<string> ids = [.. KitIds.All, .. LimitBook.Standard.All.Select(l => l.Id)];
        HashSet<string> english = [.. Words("en").Except(german).Except(ids)];
        var left = new List<string>();
        foreach (string name in EveryPageTests.Names)
        {
            IPage page = await Open(name, "de");
            Assert.Equal("de", await page.Locator("html").GetAttributeAsync("lang"));
            // Only its sentences may be marked, not the whole.
            Assert.Null(await page.Locator("main").GetAttributeAsync("lang"));
            string[][] found = await page.EvaluateAsync<string[][]>(OfTheSecond);
            Assert.NotEmpty(found[0]);
            // An attribute can't say of a part of it which language it is, so names stand there as they are.
            IEnumerable<string> own = found[0].Select(WithoutFixtures).Concat(found[1].Select(WithoutNames));
            left.AddRange(
                own.SelectMany(t => In(Id().Replace(t, " ")))
                    .Where(english.Contains)
                    .Distinct()
                    .Select(w => $"{name}: {w}")
            );
            await page.CloseAsync();
        }

        Assert.Equal("", string.Join("; ", left.Distinct()));
    }

    /// <summary>Numbers with units of their own, outside of sentences; those still speak in centimetres, and the setting says so.</summary>
    [Theory]
    [InlineData("/athletes/a10/ladder")]
    [InlineData("/athletes/a01/said")]
    [InlineData("/athletes/a10/said")]
    [InlineData("/athletes/a01/measures")]
    [InlineData("/athletes/a10/measures")]
    [InlineData("/athletes/a01/recordings")]
    [InlineData("/week/stations")]
    [InlineData("/week/limits")]
    [InlineData("/exercises?mass=66")]
    public async Task InInchesAndPounds_NoNumberStaysMetric(string path)
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "en"));
        (System.Net.HttpStatusCode status, string text) = await site.Get(path);
        Assert.Equal(System.Net.HttpStatusCode.OK, status);
        string numbers = string.Join('\n', Number().Matches(text).Select(m => m.Groups[1].Value));
        Assert.DoesNotMatch(@"\d (cm|kg|m)(?![\w/])", PageText.Of(numbers));
    }

    private string WithoutNames(string text) =>
        Without(WithoutFixtures(text), demo.Desk.Book.Catalogue.Exercises.Select(e => e.Name));

    /// <summary>A fixture is called what the club wrote, in any language.</summary>
    private string WithoutFixtures(string text) =>
        Without(text, demo.Desk.Book.Material.Squad.Fixtures.Select(f => f.Name));

    private static string Without(string text, IEnumerable<string> names) =>
        names
            .OrderByDescending(n => n.Length)
            .Aggregate(text, (left, name) => left.Replace(name, " ", StringComparison.OrdinalIgnoreCase));

    private async Task<IPage> Open(string name, string language)
    {
        IPage page = await demo.Open(1440);
        await page.SetExtraHTTPHeadersAsync([new("Accept-Language", language)]);
        await EveryPageTests.Go(page, demo, name);
        return page;
    }

    private static HashSet<string> Words(string language) =>
        [.. TextBook.Keys(language).Select(k => TextBook.Of(language, k)!).SelectMany(In)];

    /// <summary>What the exercises say in that language: some of it is spelt like English.</summary>
    private IEnumerable<string> OfExercises(string language) =>
        demo
            .Desk.Book.Catalogue.Exercises.Select(e => Wordings.Of(e, language))
            .Where(w => w.Language == language)
            .SelectMany(w =>
                (string[])
                    [
                        w.Name,
                        w.Purpose,
                        w.SetUp,
                        w.Progress,
                        w.StopRule,
                        .. w.Cues,
                        .. w.Cautions,
                        .. w.Faults.Select(f => f.Seen),
                        .. w.Faults.Select(f => f.Fix),
                    ]
            )
            .SelectMany(In);

    private static IEnumerable<string> In(string text) => Word().Matches(text).Select(m => m.Value.ToLowerInvariant());

    /// <summary>What can be opened as a number, and the cells of tables.</summary>
    [GeneratedRegex("<(?:summary class=\"number\"|td[^>]*|span class=\"number\")>([^<]*)<")]
    private static partial Regex Number();

    /// <summary>Ids, names of files and of their columns (<c>frames_per_second</c>), which are the same in any language.</summary>
    [GeneratedRegex(
        @"\S+\.(csv|c3d|md|yaml)\b|[a-z0-9]+(-[a-z0-9]+)+|[a-z0-9]+(_[A-Za-z0-9]+)+",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Id();

    [GeneratedRegex(@"\p{L}{3,}")]
    private static partial Regex Word();
}
