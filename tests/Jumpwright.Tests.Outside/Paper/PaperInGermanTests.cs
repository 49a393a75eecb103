using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using Jumpwright.Tests.Sessions;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>What is printed speaks the language and units that were chosen, and the longer words keep inside the sheet.</summary>
public partial class PaperInGermanTests
{
    private static readonly string[] Some =
    [
        "snap-down",
        "low-pogo",
        "seated-box-jump",
        "depth-jump",
        "rear-foot-elevated-jump-continuous",
    ];

    private static readonly Plan Five = PlanByHand.Plan([.. Some.Select(id => PlanByHand.Item(id))]);

    /// <summary>What paper says of its own, whatever the card.</summary>
    private static readonly string[] Labels =
    [
        "Valid on this day only",
        "Before you start",
        "Total ground contacts",
        "Rest",
        "Why",
        "Set up",
        "Think",
        "Stop when",
        "Instead",
        "Landing, every time",
        "Page",
        "plan from",
        "January",
        "Tuesday",
    ];

    [Fact]
    public async Task ACardInGerman_HoldsNoEnglishSentenceOfTheCard()
    {
        await Task.Yield();
        SessionCard card = PlanByHand.Card(Five);
        string english = CardText.Read(CardPdf.Render(card)).All;
        Assert.All(Labels, label => Assert.Contains(label, english, StringComparison.OrdinalIgnoreCase));
        string[] said = [.. Said(card).Distinct()];
        Assert.True(said.Length > 40);

        CardText read = CardText.Read(InGerman(card, UnitSystem.Metric));
        Assert.All(said, sentence => MustNotSay(read, sentence));
        Assert.All(Labels, label => MustNotSay(read, label));
        Assert.DoesNotMatch(@"(?<![0-9.])[0-9]+\.[0-9]+(?![0-9.])", read.All);
        read.MustSay("Dienstag, 5. Januar 2027, 17:00. Gilt nur an diesem Tag.");
        read.MustSay("Bodenkontakte insgesamt: " + card.TotalContacts);
        read.MustSay("Seite 1 von");
        Assert.Equal(Some.Select(id => Wordings.Of(Catalogue.Standard.Find(id)!, "de").Name), read.ExerciseNames());
        Assert.Equal(CardText.Read(CardPdf.Render(card)).Doses(), read.Doses());
    }

    [Fact]
    public async Task ACardForInchesAndPounds_HoldsNoCentimetre()
    {
        await Task.Yield();
        SessionCard card = PlanByHand.Card(Five);
        string printed = CardText.Read(InGerman(card, UnitSystem.InchPound)).All;
        Assert.Matches(@"von \d+(,\d)? Zoll heruntertreten", printed);
        Assert.DoesNotMatch(Metric(), printed);
    }

    [Theory]
    [InlineData(CardPaper.A5)]
    [InlineData(CardPaper.A4)]
    [InlineData(CardPaper.Letter)]
    public async Task CardsInGerman_OfEveryExercise_StayInsideAndNeverOverlap(CardPaper paper)
    {
        await Task.Yield();
        foreach (Exercise[] some in Catalogue.Standard.Exercises.Chunk(7))
        {
            Plan plan = PlanByHand.Plan([.. some.Select(e => PlanByHand.Item(e.Id))]);
            CardText read = CardText.Read(InGerman(PlanByHand.Card(plan), UnitSystem.InchPound, paper));
            (double width, double height) = read.Sizes[0];
            read.MustStayInside((width / 72 * 2.54) - 1.6, (height / 72 * 2.54) - 1.6);
            read.MustNotOverlap();
            Assert.Equal(some.Select(e => Wordings.Of(e, "de").Name), read.ExerciseNames());
        }
    }

    [Fact]
    public async Task ACoachsSheetInGerman_HoldsNoEnglishSentenceOfTheSheet()
    {
        await Task.Yield();
        CoachSheet sheet = PlanByHand.Sheet(Five);
        string english = CardText.Read(CoachSheetPdf.Render(sheet)).All;
        string[] labels =
        [
            "Coach's sheet",
            "Valid on this day only",
            "Before anybody jumps",
            "Where and when",
            "Who does what",
            "In this order",
            "Done, pain, what you saw",
            "Ground contacts of all athletes",
            "Training advice, not medical advice.",
            "Page",
        ];
        Assert.All(labels, label => Assert.Contains(label, english, StringComparison.Ordinal));
        Speech.Use(new Speech("de", UnitSystem.Metric));
        CardText read = CardText.Read(CoachSheetPdf.Render(sheet, SpokenSentences.Writer));
        Assert.All(labels, label => MustNotSay(read, label));
        Assert.All(
            sheet
                .Lines.SelectMany(l => l.Items)
                .Concat(sheet.Stations.Select(s => s.Station))
                .Select(s => s.ToString()),
            // Some exercises are called the same in both.
            sentence =>
                Assert.True(sentence.StartsWith("Snap-down", StringComparison.Ordinal) || Without(read, sentence))
        );
        read.MustSay("Trainerblatt");
        read.MustSay(Wordings.Of(Catalogue.Standard.Find("depth-jump")!, "de").Name);
        read.MustNotOverlap();
        read.MustStayInside(27.94 - 2, 21.0 - 2);
    }

    private static byte[] InGerman(SessionCard card, UnitSystem units, CardPaper paper = CardPaper.A5)
    {
        Speech.Use(new Speech("de", units));
        return CardPdf.Render(SpokenCards.Of(card, Catalogue.Standard), null, paper, SpokenSentences.Writer);
    }

    /// <summary>Every sentence of the card that has words, as English says it.</summary>
    private static IEnumerable<string> Said(SessionCard card) =>
        card.OnEvery()
            .Select(s => s.ToString())
            .Concat(
                card.Items.SelectMany(i =>
                    new string?[] { i.SetUp, i.Cue, i.Why, i.HeightOrLoad, i.Rest, i.StopWhen, i.InsteadIfSore }
                )
            )
            .Append(card.Headline.ToString())
            .OfType<string>()
            .Where(s => Words().IsMatch(s));

    /// <summary>As words of their own: "Page" is not in "Pageant".</summary>
    private static void MustNotSay(CardText read, string english) =>
        Assert.True(Without(read, english), $"The paper says \"{english}\": {read.All}");

    private static bool Without(CardText read, string english) =>
        !Regex.IsMatch(
            read.All,
            $@"(?<!\p{{L}}){Regex.Escape(english)}(?!\p{{L}})",
            RegexOptions.None,
            TimeSpan.FromSeconds(5)
        );

    [GeneratedRegex(@"\p{L}{3,}")]
    private static partial Regex Words();

    [GeneratedRegex(@"\d (cm|m|kg)\b")]
    private static partial Regex Metric();
}
