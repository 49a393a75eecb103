using System.Text.RegularExpressions;
using Jumpwright.Tests.Outside.House;
using Jumpwright.Tests.Outside.Paper;

namespace Jumpwright.Tests.Outside.Demo;

/// <summary>
/// Reads the printed cards of the athletes for whom something is forbidden, and proves that none of it stands on them: neither
/// as work nor as the 'instead'. What is forbidden is worked out here from the written rule and the catalogue's files, not by the
/// program's own safety rules.
/// </summary>
[Collection("demo")]
public partial class SpecialAthletesTests(DemoRun demo)
{
    [Theory]
    [InlineData("Jonah Pellwick")]
    [InlineData("Saoirse Tullin")]
    public void Under16_NoDepthJump_AndNoDropOf30CentimetresOrMore(string name)
    {
        foreach (CardText card in CardsOf(name))
        {
            Assert.All(Work(card), e => Assert.False(e.IsDepthJump, e.Name));
            Assert.All(card.DropsM(), drop => Assert.True(drop < 0.30, $"{name} steps off {drop} m"));
        }
    }

    [Fact]
    public void Over100Kilograms_NoDropAbove46Centimetres()
    {
        foreach (CardText card in CardsOf("Bastian Krohl"))
        {
            Assert.NotEmpty(Work(card));
            Assert.All(card.DropsM(), drop => Assert.True(drop <= 0.46, $"steps off {drop} m"));
        }
    }

    [Fact]
    public void FourMonthsAfterAKneeOperation_OnlyWhatIsWritten_OnBothLegs_AtMost40Contacts()
    {
        string row = Repository
            .Read("demo/restrictions.csv")
            .Split('\n')
            .Single(l => l.StartsWith("a10,", StringComparison.Ordinal));
        HashSet<string> allowed = [.. row.Split(',')[5].Split(';')];
        Assert.NotEmpty(allowed);
        foreach (CardText card in CardsOf("Nadia Ferrow"))
        {
            Assert.NotEmpty(Work(card));
            Assert.All(Work(card), e => Assert.Contains(e.Id, allowed));
            Assert.All(Work(card), e => Assert.False(e.SingleLegLanding, e.Name));
            Assert.InRange(card.TotalContacts() ?? 0, 0, 40);
        }
    }

    [Fact]
    public void SoreAchilles_NothingAboveTheLowestTierOnIt()
    {
        foreach (CardText card in CardsOf("Marek Holloway"))
        {
            Assert.NotEmpty(Work(card));
            Assert.All(Work(card), e => Assert.True(e.AchillesTier <= 1, e.Name));
            Assert.InRange(card.TotalContacts() ?? 0, 0, 40);
        }
    }

    [Fact]
    public void PhoneAndTapeOnly_NothingThatAsksForATestNobodyMade()
    {
        foreach (CardText card in CardsOf("Lucy Amberton"))
        {
            Assert.NotEmpty(Work(card));
            Assert.All(
                Work(card),
                e =>
                {
                    Assert.DoesNotContain(e.Entry, c => c.Test == "hex-bar-load");
                    Assert.DoesNotContain(e.Entry, c => c is { Test: "contact_time_s", Task: "drop-jump" });
                }
            );
        }
    }

    [Fact]
    public void NewAndUntested_OnlyWhatIsOpenToAnybody()
    {
        foreach (CardText card in CardsOf("Piet Varga"))
        {
            Assert.NotEmpty(Work(card));
            Assert.All(Work(card), e => Assert.Empty(e.Entry));
        }
    }

    [Fact]
    public void StopSign_NoWorkAtAll_AndAClinicianFirst()
    {
        foreach (CardText card in CardsOf("Hanna Lindqvar"))
        {
            Assert.Empty(card.ExerciseNames());
            card.MustSay("clinician");
            card.MustSay("No jumps");
        }
    }

    [Fact]
    public void EveryCard_CountsItsContactsRight_AndSaysTheThreeQuestions()
    {
        int ordinary = 0;
        foreach (CardText card in demo.Cards.Where(c => c.ExerciseNames().Count > 0))
        {
            ordinary++;
            card.MustSay("Pain today?");
            card.MustSay("Worse than yesterday");
            card.MustSay("Swelling, or does");
            card.MustSay("Step off the box, don't jump off it.");
            card.MustSay("Training advice, not medical advice.");
            Assert.NotNull(card.TotalContacts());
        }

        Assert.True(ordinary >= 30, $"{ordinary} cards with work");
    }

    private List<CardText> CardsOf(string name)
    {
        List<CardText> cards = [.. demo.Cards.Where(c => c.Says(name))];
        Assert.Equal(3, cards.Count);
        return cards;
    }

    /// <summary>The exercises on the card, and those it offers instead.</summary>
    private static IEnumerable<CatalogueFacts> Work(CardText card) =>
        card.ExerciseNames()
            .Concat(Instead().Matches(card.All).Select(m => m.Groups["name"].Value))
            .Distinct(StringComparer.Ordinal)
            .Select(name =>
                CatalogueFacts.ByName.TryGetValue(name, out CatalogueFacts? facts)
                    ? facts
                    : throw new KeyNotFoundException($"The card names '{name}', which is not in the catalogue.")
            );

    [GeneratedRegex("at pain 3 to 5: (?<name>[^:]+?), [0-9]+ × [0-9]+", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Instead();
}
