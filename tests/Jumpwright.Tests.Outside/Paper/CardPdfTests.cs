using Jumpwright.Paper;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Outside.Paper;

public class CardPdfTests
{
    /// <summary>Half a Letter sheet is 13.97 cm wide and A5 21.0 cm high; 0.8 cm stay free at each edge.</summary>
    private const double SafeWidthCm = 13.97 - 1.6;
    private const double SafeHeightCm = 21.0 - 1.6;

    public static TheoryData<string> Cards => ["ordinary", "nothing", "worst"];

    private static SessionCard Card(string name) =>
        name switch
        {
            "ordinary" => HandMadeCards.Ordinary,
            "nothing" => HandMadeCards.Nothing,
            _ => HandMadeCards.Worst,
        };

    [Theory]
    [MemberData(nameof(Cards))]
    public void Card_ReadBack_SaysEveryWordOfTheRecord(string name)
    {
        SessionCard card = Card(name);
        var read = CardText.Read(CardPdf.Render(card));
        read.MustSay(card.Headline);
        read.MustSay("Tuesday 5 January 2027");
        read.MustSay("Valid on this day only");
        read.MustSay(card.Caution);
        read.MustSay(card.StopAtOnce);
        Assert.All(card.LandingLines, line => read.MustSay(line));
        foreach (CardQuestion question in card.Questions)
        {
            Assert.All(question.Answers, a => read.MustSay(a.Answer + ":"));
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Card_ReadBack_NamesItsExercisesInOrder(string name)
    {
        SessionCard card = Card(name);
        IReadOnlyList<string> names = CardText.Read(CardPdf.Render(card)).ExerciseNames();
        Assert.Equal(
            card.Items.Select(i => i.Name.Replace(" ", "", StringComparison.Ordinal)),
            names.Select(n => n.Replace(" ", "", StringComparison.Ordinal))
        );
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Card_OnA5OrHalfALetterSheet_StaysInsideAndNeverOverlaps(string name)
    {
        var read = CardText.Read(CardPdf.Render(Card(name)));
        read.MustStayInside(SafeWidthCm, SafeHeightCm);
        read.MustNotOverlap();
    }

    [Fact]
    public void Card_RenderedTwice_IsTheSameByteForByte() =>
        Assert.Equal(CardPdf.Render(HandMadeCards.Ordinary), CardPdf.Render(HandMadeCards.Ordinary));

    [Fact]
    public void Card_WithAnotherWord_IsAnotherFile() =>
        Assert.NotEqual(
            CardPdf.Render(HandMadeCards.Ordinary),
            CardPdf.Render(HandMadeCards.Ordinary with { Headline = $"Another." })
        );
}
