using System.Net;
using System.Text.RegularExpressions;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Reports;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>How high an athlete jumps is one number: in the sentence, on the picture of the last jump, in the table and on the card.</summary>
[Collection("pages")]
public partial class OneReadingTests(ServedDemo demo)
{
    [Fact]
    public async Task SentencePictureAndTable_HaveOneHeight_WithOneDoubt()
    {
        int compared = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            string page = await Page(App.Pages.Paths.Athlete(leaf.Athlete.Id));
            Match sentence = Sentence().Match(page);
            Match picture = Picture().Match(page);
            if (!sentence.Success || !picture.Success || sentence.Groups["day"].Value != picture.Groups["day"].Value)
            {
                continue;
            }

            Assert.Equal(sentence.Groups["height"].Value, picture.Groups["height"].Value);
            Assert.Contains(
                $"<summary class=\"number\">{sentence.Groups["height"].Value}</summary>",
                page,
                StringComparison.Ordinal
            );
            compared++;
        }

        Assert.True(compared >= 8, $"{compared} athletes compared");
    }

    /// <summary>The last value written on a card's trend is the sentence's, not one trial's with the plate's own small doubt.</summary>
    [Fact]
    public async Task TrendOnTheCard_EndsWithTheSentencesHeight()
    {
        int compared = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            string card = await Page(App.Pages.Paths.Card(demo.FirstSession, leaf.Athlete.Id));
            string page = await Page(App.Pages.Paths.Athlete(leaf.Athlete.Id));
            Match trend = Trend().Match(card);
            if (!trend.Success)
            {
                continue;
            }

            string last = trend.Groups["last"].Value;
            Assert.Equal(Sentence().Match(page).Groups["height"].Value, last);
            compared++;
        }

        Assert.True(compared >= 3, $"{compared} athletes compared");
    }

    /// <summary>A ruling is told once at length; where tests wait for it, the page points to it, and a report without rulings says it.</summary>
    [Fact]
    public async Task WhatForbids_IsToldOnceAtLength_AndPointedTo()
    {
        const string stop = "See a clinician first";
        string page = await Page(App.Pages.Paths.Athlete("a14"));
        string next = page[page.IndexOf("id=\"next\"", StringComparison.Ordinal)..];
        next = next[..next.IndexOf("</section>", StringComparison.Ordinal)];
        Assert.DoesNotContain(stop, next, StringComparison.Ordinal);
        Assert.Contains("(what forbids today, above)", next, StringComparison.Ordinal);
        ReportSection told = demo
            .Desk.Pictures.ReportOf(demo.Desk.Book.Find("a14")!.Dossier, demo.Desk.Book.Day)
            .Report.Sections.Single(s => s.Topic == ReportTopic.Next);
        Assert.Contains(told.Paragraphs, p => p.ToString().Contains(stop, StringComparison.Ordinal));
    }

    /// <summary>
    /// Ten hops in a row are one trial: where six trials would settle a quality, one row of ten is offered as what it is, and not as what
    /// would settle it.
    /// </summary>
    [Fact]
    public async Task RowOfHops_IsOneTrial_AndNotSaidToSettleWhatSeveralWould()
    {
        string page = await Page(App.Pages.Paths.Athlete("a12"));
        Assert.Matches(@"Pogo hop: \d trials on one day, \d more than so far", page);
        Assert.Contains(
            "Pogo hop, 10 in a row: ankle stiffness isn't settled. 10 contacts.",
            page,
            StringComparison.Ordinal
        );
    }

    private async Task<string> Page(string path)
    {
        using var client = new HttpClient();
        string html = await client.GetStringAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken);
        return WebUtility.HtmlDecode(html).Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace("\u2060", "");
    }

    [GeneratedRegex(@"Jumps (?<height>[\d.]+ ± [\d.]+ cm) \([^)]*, (?<day>\d+ \w+ \d{4})\)")]
    private static partial Regex Sentence();

    [GeneratedRegex(
        @"<title[^>]*>Countermovement jump, (?<day>\d+ \w+ \d{4}); [^<]*day: (?<height>[\d.]+ ± [\d.]+ cm)"
    )]
    private static partial Regex Picture();

    [GeneratedRegex(
        @"<desc[^>]*>(\d+ \w+ \d{4}: [\d.]+ ± [\d.]+ cm; )+\d+ \w+ \d{4}: (?<last>[\d.]+ ± [\d.]+ cm)\.</desc>"
    )]
    private static partial Regex Trend();
}
