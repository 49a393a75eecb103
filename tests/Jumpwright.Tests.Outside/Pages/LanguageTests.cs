using System.Text.RegularExpressions;
using Jumpwright.App.Wording;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Two languages from resources; no page that says it is translated holds text of its own.</summary>
public partial class LanguageTests
{
    [Fact]
    public void EveryKey_IsInBothLanguages_WithTheSameGaps()
    {
        Assert.Equal(
            TextBook.Keys("en").Order(StringComparer.Ordinal),
            TextBook.Keys("de").Order(StringComparer.Ordinal)
        );
        foreach (string key in TextBook.Keys("en").Where(k => !k.StartsWith("date.", StringComparison.Ordinal)))
        {
            Assert.Equal(Gaps(TextBook.Of("en", key)!), Gaps(TextBook.Of("de", key)!));
        }
    }

    [Fact]
    public void EveryKeyThatAPageNames_Exists()
    {
        HashSet<string> keys = [.. TextBook.Keys("en")];
        string[] named =
        [
            .. Sources("*.razor")
                .Concat(Sources("*.cs"))
                .SelectMany(s => Named().Matches(s.Text))
                .Select(m => m.Groups[1].Value),
        ];
        Assert.NotEmpty(named);
        Assert.Empty(named.Where(k => !keys.Contains(k)).Distinct());
    }

    [Fact]
    public void PagesThatAreTranslated_HoldNoTextOfTheirOwn()
    {
        (string Name, string Text)[] pages =
        [
            .. Sources("*.razor")
                .Where(s =>
                    s.Text.Contains("Translated=\"true\"", StringComparison.Ordinal)
                    || s.Name
                        is "PageFrame.razor"
                            or "LockPage.razor"
                            or "PairPage.razor"
                            or "TurnedPage.razor"
                            or "SharedCardPage.razor"
                            or "ProposalPart.razor"
                            or "ItemList.razor"
                            or "WeekLoads.razor"
                            or "OriginOf.razor"
                            or "OriginLines.razor"
                            or "TrialList.razor"
                            or "GainRow.razor"
                ),
        ];
        Assert.True(pages.Length >= 6);
        Assert.Empty(pages.SelectMany(p => Literals(p.Text).Select(l => $"{p.Name}: {l}")));
    }

    [Fact]
    public void TheFloorsOwnFiles_NameEveryKeyOfTheirs_AndNoOther()
    {
        string script = Sources("floor.js").Single().Text;
        string page = string.Concat(
            Sources("floor.html")
                .Concat(Sources("floor.webmanifest"))
                .Concat(Sources("FloorRoutes.cs"))
                .Select(s => s.Text)
        );
        Assert.Equal(
            TextBook
                .Keys("en")
                .Where(k => k.StartsWith("floor.", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
            SpokenByScript()
                .Matches(script)
                .SelectMany(m => m.Groups.Values.Skip(1))
                .Where(g => g.Success)
                .Select(g => "floor." + g.Value)
                // These four are named by the reason of the rule.
                .Where(k => k != "floor.cut.")
                .Concat(Enum.GetNames<Jumpwright.Planning.FloorCutReason>().Select(r => "floor.cut." + r))
                .Concat(FloorKey().Matches(page).Select(m => m.Value))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
        // What a capital and a small letter begin is a word for people.
        Assert.DoesNotMatch("[\"`][A-Z][a-z]+ [a-z]", script);
    }

    [Fact]
    public async Task TheFloorsOwnFiles_SpeakOneLanguageAtATime_AndAnotherOneIsAnotherVersion()
    {
        await using SquadSite site = await SquadSite.Open();
        string english = (await site.Get("/floor/sw.js", "en")).Text;
        Assert.Contains("Who is where", (await site.Get("/floor/", "en")).Text);
        string german = (await site.Get("/floor/", "de")).Text;
        Assert.Contains("<html lang=\"de\">", german);
        Assert.Contains("Heutige Einheit", german);
        Assert.DoesNotMatch(@"\{[a-z.]+\}", german);
        Assert.Contains("Alles Eingetragene ist abgegeben.", (await site.Get("/floor/words.js", "de")).Text);
        Assert.NotEqual(english, (await site.Get("/floor/sw.js", "de")).Text);
        Assert.DoesNotContain("{version}", english);

        await site.Post("/settings/speech", ("units", "Metric"), ("language", "en"));
        Assert.Equal(english, (await site.Get("/floor/sw.js", "de")).Text);
    }

    [Fact]
    public async Task TheBrowsersLanguage_IsSpoken_UntilTheSettingSaysOtherwise()
    {
        await using SquadSite site = await SquadSite.Open();
        Assert.Contains("<html lang=\"en\">", (await site.Get("/")).Text);
        string german = (await site.Get("/", "fr;q=0.9, de-AT;q=0.8, en;q=0.5")).Text;
        Assert.Contains("<html lang=\"de\">", german);
        Assert.Contains("<h1>Kader</h1>", german);
        Assert.Contains("Montag, 4. Januar 2027", german);

        await site.Post("/settings/speech", ("units", "Metric"), ("language", "en"));
        Assert.Contains("<h1>Squad</h1>", (await site.Get("/", "de")).Text);
    }

    [Theory]
    [InlineData(null, "en")]
    [InlineData("fr, es", "en")]
    [InlineData("de", "de")]
    [InlineData("en;q=0.4, de;q=0.6", "de")]
    [InlineData("de;q=0, en", "en")]
    [InlineData("xx;q=nonsense,,;;", "en")]
    public void AcceptLanguage_IsRead(string? header, string expected) =>
        Assert.Equal(expected, TextBook.Asked(header));

    private static IEnumerable<string> Gaps(string text) =>
        Gap().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal);

    /// <summary>Runs of letters that stand neither in a tag, nor in code, nor behind an @.</summary>
    private static IEnumerable<string> Literals(string page)
    {
        int code = page.IndexOf("@code {", StringComparison.Ordinal);
        string text = code < 0 ? page : page[..code];
        text = Regex.Replace(text, @"@\*.*?\*@", "", RegexOptions.Singleline);
        text = Regex.Replace(text, @"^@using.*$", "", RegexOptions.Multiline);
        foreach (
            Match attribute in Regex.Matches(
                text,
                "(?:aria-label|placeholder|title|Title)=\"(?!@)([^\"]*[A-Za-z][^\"]*)\""
            )
        )
        {
            yield return attribute.Groups[1].Value;
        }

        // Control flow, its declarations, tags, and expressions.
        text = Regex.Replace(
            text,
            @"^\s*(@(if|else|foreach|for|switch)\b.*|else( if)?\b.*|(var|string)\s.*;|\{|\})\s*$",
            "",
            RegexOptions.Multiline | RegexOptions.ExplicitCapture
        );
        text = Regex.Replace(text, "=\"@\\((?:[^()]|\\((?:[^()]|\\([^()]*\\))*\\))*\\)\"", "=\"\"");
        text = Regex.Replace(text, "=\"@[^<>]*?\\]\"(?=[\\s/>])", "=\"\"");
        text = Regex.Replace(text, "<[^>]*>", " ");
        text = Regex.Replace(text, @"@\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)", " ");
        text = Regex.Replace(
            text,
            @"@[A-Za-z][\w.]*(?:\[(?:[^\[\]]|\[(?:[^\[\]])*\])*\]|\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)|[\w.])*",
            " "
        );
        foreach (Match word in Regex.Matches(text, @"[A-Za-z]{2,}"))
        {
            yield return word.Value;
        }
    }

    private static IEnumerable<(string Name, string Text)> Sources(string pattern)
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Jumpwright.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return Directory
            .EnumerateFiles(Path.Combine(at!, "src", "Jumpwright.App"), pattern, SearchOption.AllDirectories)
            .Select(f => (Path.GetFileName(f), File.ReadAllText(f)));
    }

    [GeneratedRegex("\\bT\\[\"([^\"{]+)\"")]
    private static partial Regex Named();

    [GeneratedRegex("\\b(?:t|say)\\((?:[^\"()]*\\? )?\"([^\"]+)\"(?: : \"([^\"]+)\")?")]
    private static partial Regex SpokenByScript();

    [GeneratedRegex(@"\bfloor\.(?!html|js|webmanifest)[a-z\-]+(?:\.[a-z\-]+)*")]
    private static partial Regex FloorKey();

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Gap();
}
