using System.Net;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.Exercises;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Pages speak to people: in names, in what is needed, and no surer than something is known.</summary>
[Collection("pages")]
public partial class WhatPeopleReadTests(ServedDemo demo)
{
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public async Task NoPage_NamesAnExerciseByItsId(string language)
    {
        // An id that is a name's own words as well tells nothing.
        string names = string.Join(' ', Catalogue.Standard.Exercises.Select(e => e.Name.ToLowerInvariant()));
        string[] ids =
        [
            .. Catalogue
                .Standard.Exercises.Select(e => e.Id)
                .Where(id => id.Contains('-', StringComparison.Ordinal))
                .Where(id => !names.Contains(id, StringComparison.Ordinal)),
        ];
        Assert.True(ids.Length > 40, $"{ids.Length} ids");
        foreach (string path in Paths())
        {
            string read = await Read(path, language);
            Assert.All(ids, id => Assert.DoesNotMatch($@"(?<![\w/-]){id}(?![\w-])", read));
        }
    }

    /// <summary>The landing screen was failed: that is what closes, and nothing that somebody should show.</summary>
    [Theory]
    [InlineData(
        "en",
        "Closed by: Landing comes first: landing screen 7.3 ± 0.6 faults",
        "not met: Landing comes first"
    )]
    [InlineData(
        "de",
        "Geschlossen durch: Die Landung kommt zuerst: Landescreening 7,3 ± 0,6 Fehler",
        "nicht erfüllt: Die Landung"
    )]
    public async Task WhatClosesAStep_IsSaidToCloseIt(string language, string said, string not)
    {
        string ladder = await Read("/athletes/a06/ladder", language);
        Assert.Contains(said, ladder, StringComparison.Ordinal);
        Assert.DoesNotContain(not, ladder, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("en", "Owned means: 2 clean sessions within 21 days.")]
    [InlineData("de", "Beherrscht heißt: 2 saubere Einheiten innerhalb von 21 Tagen.")]
    public async Task WhatItTakesToOwn_StandsWithItsNumbers(string language, string said)
    {
        Assert.Contains(said, await Read("/athletes/a06/ladder", language), StringComparison.Ordinal);
        Assert.Contains(said, await Read("/exercises", language), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "(impulse-momentum)")]
    [InlineData("de", "(Impulsmethode)")]
    public async Task TheLastJump_SaysHowItsHeightWasGot(string language, string method)
    {
        foreach (string path in new[] { "/athletes/a01", $"/cards/{demo.FirstSession}/a01" })
        {
            string caption = LastJump().Match(await Read(path, language)).Value;
            Assert.EndsWith(method, caption, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task WhatIsUnlikelyToLimit_IsNotSaidNotToLimit_AndNothingIsSaidToBeSettled()
    {
        string page = await Read("/athletes/a01", "en");
        Assert.Contains("unlikely to limit (probability that it limits: 0.24)", page, StringComparison.Ordinal);
        Assert.DoesNotContain("does not limit", page, StringComparison.Ordinal);
        Assert.Contains("counts as sure enough from 0.75", page, StringComparison.Ordinal);
        Assert.Contains("counts as sure enough from 0.90", page, StringComparison.Ordinal);
    }

    private IEnumerable<string> Paths()
    {
        yield return "/";
        yield return "/week";
        yield return "/week/limits";
        yield return "/week/left-out";
        yield return "/exercises";
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            yield return $"/athletes/{leaf.Athlete.Id}";
            yield return $"/athletes/{leaf.Athlete.Id}/ladder";
            yield return $"/athletes/{leaf.Athlete.Id}/said";
        }

        foreach (SessionCard card in demo.Desk.Book.PlanOrNull!.Cards.Where(c => c.Items.Length > 0))
        {
            yield return $"/cards/{card.SessionId}/{card.AthleteId}";
            yield return $"/cards/{card.SessionId}/{card.AthleteId}/why";
        }
    }

    private async Task<string> Read(string path, string language)
    {
        using var client = new HttpClient();
        client.DefaultRequestHeaders.Add("Accept-Language", language);
        string page = await client.GetStringAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken);
        return Blank().Replace(PageText.Of(Tag().Replace(page, "")), " ");
    }

    [GeneratedRegex("(?s)<(script|style)[^>]*>.*?</\\1>|<[^>]+>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex(@"Countermovement.jump, [^:]+: [0-9.,]+ ± [0-9.,]+ cm \([^)]*\)", RegexOptions.IgnoreCase)]
    private static partial Regex LastJump();
}
