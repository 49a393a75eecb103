using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Progression;
using Jumpwright.Safety;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Card, page, report and plan say the same of what an athlete may do today.</summary>
[Collection("pages")]
public class OpenWorkOnPagesTests(ServedDemo demo, ITestOutputHelper output)
{
    private Workbook Book => demo.Desk.Book;

    /// <summary>On the book's own day: what is planned and offered is open on the page, and so is what a card names instead.</summary>
    [Fact]
    public void WhatIsPlannedOrOfferedToday_IsOpenOnThePage()
    {
        Dictionary<string, Profile> profiles = Book.Leaves.ToDictionary(
            l => l.Athlete.Id,
            l => Profiling.Of(l.History, Book.Day),
            StringComparer.Ordinal
        );
        int planned = 0;
        int instead = 0;
        int offered = 0;
        foreach (AthleteLeaf leaf in Book.Leaves)
        {
            foreach (
                PlannedItem item in Book.PlanOrNull!.Plan.Sessions.Where(s => s.Slot.Date == Book.Day)
                    .SelectMany(s => s.Athletes.Where(a => a.AthleteId == leaf.Athlete.Id).SelectMany(a => a.Items))
            )
            {
                Exercise exercise = Book.Catalogue.Find(item.Dose.ExerciseId)!;
                Assert.True(leaf.Open.Of(exercise, item.Dose.DropHeightM).IsOpen, $"{leaf.Athlete.Id} {exercise.Id}");
                planned++;
                if (item.Dose.ReplacesIfSore is { } id)
                {
                    Assert.True(leaf.Open.Of(Book.Catalogue.Find(id)!).IsOpen, $"{leaf.Athlete.Id} {id} instead");
                    instead++;
                }
            }

            Prescription facts = Reporting.OfAthlete(
                Book.Material.Squad,
                leaf.History,
                profiles,
                Book.Catalogue,
                [],
                Book.Day
            );
            foreach (TestOffer offer in facts.NextTests)
            {
                if (offer.Test.TryGet(out TestProposal? test, out _))
                {
                    Exercise exercise = Book.Catalogue.Find(test.ExerciseId)!;
                    Assert.True(leaf.Open.Of(exercise, test.Ask.DropM, test.Ask.InsteadOfBar).IsOpen, test.Because);
                    offered++;
                }
            }

            // Page and report name the same test of each quality, or the same reason.
            Assert.Equal(
                leaf.Profile.Findings.Select(f => (f.Quality, f.NextTest, f.TestWaits)),
                facts.Profile.Findings.Select(f => (f.Quality, f.NextTest, f.TestWaits))
            );
        }

        output.WriteLine($"{planned} planned, {instead} named instead, {offered} tests offered");
        Assert.True(planned > 30 && instead > 10 && offered > 10);
    }

    /// <summary>Wherever what brings most isn't settled, the section of centimetres says which test would help, or that it is closed for now.</summary>
    [Fact]
    public async Task Centimetres_SayWhatWouldSettleThem_OrThatItIsClosedForNow()
    {
        using var client = new HttpClient();
        client.DefaultRequestHeaders.Add("Accept-Language", "en");
        int open = 0;
        int byRuling = 0;
        int otherwise = 0;
        foreach (AthleteLeaf leaf in Book.Leaves)
        {
            string page = PageText.Of(
                await client.GetStringAsync(
                    new Uri($"{demo.Address}/athletes/{leaf.Athlete.Id}"),
                    TestContext.Current.CancellationToken
                )
            );
            int from = page.IndexOf("id=\"gains\"", StringComparison.Ordinal);
            string gains = page[from..page.IndexOf("</section>", from, StringComparison.Ordinal)];
            if (
                gains.Contains("Centimetres can't be named", StringComparison.Ordinal)
                || !(
                    gains.Contains("can't be told apart", StringComparison.Ordinal)
                    || gains.Contains("which isn't known", StringComparison.Ordinal)
                )
            )
            {
                continue;
            }

            bool helps = gains.Contains("Would help to settle it: ", StringComparison.Ordinal);
            bool forbidden = gains.Contains("closed for now: what forbids today, above,", StringComparison.Ordinal);
            bool waits = gains.Contains("would help to settle it waits (closed for now: ", StringComparison.Ordinal);
            bool none = gains.Contains("No test of this athlete settles it", StringComparison.Ordinal);
            Assert.True(helps || forbidden || waits || none, $"{leaf.Athlete.Id}: {gains}");
            bool sore = leaf.Rulings.Any(r => r.Effect is TierAtMost { Tier: <= 1 } or NothingPlanned);
            Assert.False(forbidden && leaf.Rulings.IsEmpty);
            open += helps ? 1 : 0;
            byRuling += forbidden && sore ? 1 : 0;
            otherwise += waits ? 1 : 0;
        }

        output.WriteLine($"{open} open, {byRuling} forbidden to somebody sore, {otherwise} closed by the ladder");
        Assert.True(open > 0 && byRuling > 0 && otherwise > 0);
    }

    /// <summary>Three landing faults, and landing comes first: nobody is sent to drop jumps then.</summary>
    [Fact]
    public void NobodyOfTheSquad_IsSentToADropJumpThatTheLadderCloses()
    {
        int closed = 0;
        foreach (AthleteLeaf leaf in Book.Leaves.Where(l => l.Ladder.Find("low-drop-jump")!.State == RungState.Closed))
        {
            closed++;
            Assert.All(
                leaf.Profile.Findings.Where(f => f.Quality == Quality.ReactiveStrength && f.NextTest is not null),
                f => Assert.True(f.TestWaits, $"{leaf.Athlete.Id}: {f.NextTest}")
            );
        }

        Assert.True(closed > 3);
    }
}
