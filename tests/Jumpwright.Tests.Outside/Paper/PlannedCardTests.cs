using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Plans;
using Jumpwright.Sessions;
using Jumpwright.Tests.Sessions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>Cards of real exercises, printed and read back.</summary>
public class PlannedCardTests
{
    private static readonly string[] FiveExercises =
    [
        "snap-down",
        "low-pogo",
        "seated-box-jump",
        "depth-jump",
        "rear-foot-elevated-jump-continuous",
    ];

    private static readonly Plan Five = PlanByHand.Plan([.. FiveExercises.Select(id => PlanByHand.Item(id))]);

    [Fact]
    public void Card_OfFiveRealExercises_IsTwoPagesAtMost()
    {
        var read = CardText.Read(CardPdf.Render(PlanByHand.Card(Five)));
        Assert.InRange(read.Pages.Count, 1, 2);
        Assert.Equal(FiveExercises.Select(id => Catalogue.Standard.Find(id)!.Name), read.ExerciseNames());
    }

    [Fact]
    public void Card_ReadBack_SaysEachItemsDoseRestStopAndInstead()
    {
        SessionCard card = PlanByHand.Card(Five);
        var read = CardText.Read(CardPdf.Render(card));
        Assert.All(
            card.Items,
            item =>
            {
                read.MustSay(item.Dose + (item.HeightOrLoad is { } height ? $", {height}" : "") + ".");
                read.MustSay("Rest " + item.Rest);
                read.MustSay("Set up " + item.SetUp);
                read.MustSay("Think " + item.Cue);
                read.MustSay("Stop when " + item.StopWhen);
                read.MustSay("Instead " + item.InsteadIfSore);
            }
        );
        Assert.All(card.Questions, q => Assert.All(q.Answers, a => read.MustSay(a.Answer + ":")));
    }

    [Fact]
    public void Card_ReadBack_CountsTheContactsOfThePlan()
    {
        var read = CardText.Read(CardPdf.Render(PlanByHand.Card(Five)));
        PlannedItem[] planned = [.. Five.Sessions[0].Athletes[0].Items];
        Assert.Equal(planned.Sum(i => i.Contacts), read.TotalContacts());
        // What stands instead where it is sore has a dose as well.
        (Dose Dose, int Sets)[] printed =
        [
            .. planned.SelectMany(i =>
                new[] { (i.Dose, i.Sets), i.Dose.InsteadOf(i.Sets) }.OfType<(Dose Dose, int Sets)>()
            ),
        ];
        Assert.Equal(printed.Select(p => (p.Sets, p.Dose.Reps)), read.Doses());
        Assert.Equal(
            printed.Select(p => p.Dose.DropHeightM).OfType<double>().Select(m => Math.Round(m, 2)),
            read.DropsM()
        );
    }

    [Fact]
    public void Card_OfEveryExerciseOfTheCatalogue_StaysInsideAndNeverOverlaps()
    {
        foreach (Exercise[] some in Catalogue.Standard.Exercises.Chunk(7))
        {
            Plan plan = PlanByHand.Plan([.. some.Select(e => PlanByHand.Item(e.Id))]);
            var read = CardText.Read(CardPdf.Render(PlanByHand.Card(plan)));
            read.MustStayInside(13.97 - 1.6, 21.0 - 1.6);
            read.MustNotOverlap();
            Assert.Equal(some.Select(e => e.Name), read.ExerciseNames());
            Assert.True(read.SmallestType(aboveBottomCm: 1.6) >= 9, "type to be read is 9 pt at least");
        }
    }

    [Theory]
    [InlineData("Żółć Ångström Đặng")]
    [InlineData("<b>Ada</b> & \"Co\" <script>")]
    public void Card_OfANameWithMarksOrMarkup_ShowsItAsItIs(string name) =>
        CardText.Read(CardPdf.Render(PlanByHand.Card(Five, PlanByHand.Somebody with { Name = name }))).MustSay(name);

    [Fact]
    public void Card_OfANameWithoutLettersInTheFont_ShowsTheIdToo()
    {
        // Right-to-left letters and a direction mark that would turn the rest of a line round.
        string name = "\u202E\u05D0\u05D3\u05D4";
        var read = CardText.Read(CardPdf.Render(PlanByHand.Card(Five, PlanByHand.Somebody with { Name = name })));
        read.MustSay("(a01)");
        read.MustSay("Tuesday 5 January 2027, 17:00");
        Assert.DoesNotContain('\u202E', read.All);
    }

    [Fact]
    public void Card_WithPictures_HasTheWordsBesideThem()
    {
        Picture trend = Plots.Trend([new TrendPoint(PlanByHand.Day, 39.4, 0.5)], "Height", "cm");
        SessionCard card = PlanByHand.Card(Five);
        byte[] pdf = CardPdf.Render(card, new CardPictures(null, trend));
        var read = CardText.Read(pdf);
        read.MustSay("5 Jan 2027: 39.4 ± 0.5 cm.");
        read.MustStayInside(13.97 - 1.6, 21.0 - 1.6);
        Assert.Equal(pdf, CardPdf.Render(card, new CardPictures(null, trend)));
    }

    /// <summary>On every sheet a picture's type is as large as the card's own and no larger: 9 pt, 288 pt of width.</summary>
    [Theory]
    [InlineData(CardPaper.A5)]
    [InlineData(CardPaper.A4)]
    [InlineData(CardPaper.Letter)]
    public void Pictures_NeverGrowWithTheSheet_AndTheirWordsStandBesideOrUnderThem(CardPaper paper)
    {
        Picture trend = Plots.Trend([new TrendPoint(PlanByHand.Day, 39.4, 0.5)], "Height", "cm");
        byte[] pdf = CardPdf.Render(PlanByHand.Card(Five), new CardPictures(null, trend), paper);
        using PdfDocument document = PdfDocument.Open(pdf);
        UglyToad.PdfPig.Content.Page page = document.GetPages().Single(p => p.GetImages().Any());
        PdfRectangle drawn = page.GetImages().Single().BoundingBox;
        Assert.Equal(288, drawn.Width, 0.5);
        double left = page.GetWords().Where(w => w.Text is "39.4").Min(w => w.BoundingBox.Left);
        Assert.Equal(paper != CardPaper.A5, left > drawn.Right);
    }
}
