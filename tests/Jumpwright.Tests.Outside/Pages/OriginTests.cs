using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Change;
using Jumpwright.Progression;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Numbers inside sentences lead to the recording or the typed result they come from, for everybody of the demo squad.</summary>
[Collection("pages")]
public class OriginTests(ServedDemo demo)
{
    [Fact]
    public void Ladder_EveryNumberWithItsDoubt_HasItsOrigin()
    {
        int numbers = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            foreach (RungReason reason in leaf.Ladder.Rungs.SelectMany(r => r.Reasons))
            {
                if (!reason.Sentence.ToString().Contains('±', StringComparison.Ordinal))
                {
                    continue;
                }

                numbers++;
                Assert.True(
                    !Origins.Of(reason, leaf).IsEmpty,
                    $"{leaf.Athlete.Id}, {reason.CriterionId}: {reason.Sentence}"
                );
            }
        }

        Assert.True(numbers > 100, $"{numbers} numbers");
    }

    /// <summary>Drops from 30 cm and from 40 cm on one day are two means: each opens its own recordings and no others.</summary>
    [Fact]
    public void Measure_LinksTheRecordingsThatItsMeanIsOf_AndNoOthers()
    {
        int seen = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            foreach (Evidence evidence in leaf.Profile.Current.Where(e => e.Device is not null))
            {
                seen++;
                Assert.Equal(evidence.Trials, Origins.Of(evidence, leaf.History).Recordings.Length);
            }
        }

        Assert.True(seen > 100, $"{seen} measures");
    }

    [Fact]
    public async Task Roll_EverySentenceWithANumber_RestsOnSomethingThatCanBeOpened()
    {
        using var client = new HttpClient();
        int opened = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            string sentence = SpokenSentences.Text(Sentences.Of(leaf));
            string page = PageText.Of(
                await client.GetStringAsync(
                    new Uri($"{demo.Address}/athletes/{leaf.Athlete.Id}/said"),
                    TestContext.Current.CancellationToken
                )
            );
            Assert.Contains(sentence, page, StringComparison.Ordinal);
            Ruling? closed = leaf.Rulings.FirstOrDefault(r => r.Effect is NothingPlanned);
            if (closed is not null)
            {
                Assert.Contains(
                    $"{SpokenSentences.Text(closed.Because)} <span class=\"note\">",
                    page,
                    StringComparison.Ordinal
                );
            }
            else if (
                sentence.Contains('±', StringComparison.Ordinal)
                || leaf.Profile.Findings.Any(f => f.Verdict is FindingVerdict.Limits)
            )
            {
                opened++;
                Assert.Contains("class=\"origin\"", page, StringComparison.Ordinal);
                Assert.Contains("<dt>Doubt</dt>", page, StringComparison.Ordinal);
            }
        }

        Assert.True(opened > 5, $"{opened} sentences with numbers");
    }

    [Fact]
    public async Task Report_EverySentenceOfATrend_OpensItsLevelItsDoubtAndItsRecordings()
    {
        using var client = new HttpClient();
        int opened = 0;
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            string page = PageText.Of(
                await client.GetStringAsync(
                    new Uri($"{demo.Address}/athletes/{leaf.Athlete.Id}"),
                    TestContext.Current.CancellationToken
                )
            );
            foreach (Trend trend in demo.Desk.Pictures.ReportOf(leaf.Dossier, demo.Desk.Book.Day).Facts.Shown)
            {
                Origin origin = Origins.Of(trend, leaf.History);
                Assert.NotEmpty(origin.Recordings);
                int at = page.IndexOf(trend.Sentence + "</summary>", StringComparison.Ordinal);
                Assert.True(at > 0, $"{leaf.Athlete.Id}: {trend.Sentence}");
                string fold = page[at..page.IndexOf("</details>", at, StringComparison.Ordinal)];
                Assert.Contains(origin.Said, fold, StringComparison.Ordinal);
                Assert.Contains(origin.Recordings[0].Path, fold, StringComparison.Ordinal);
                opened++;
            }
        }

        Assert.True(opened > 5, $"{opened} sentences of trends");
    }
}
