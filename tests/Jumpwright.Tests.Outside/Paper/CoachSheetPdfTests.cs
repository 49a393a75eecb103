using Jumpwright.Paper;
using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Outside.Paper;

public class CoachSheetPdfTests
{
    /// <summary>Letter on its side is 27.94 cm wide and A4 on its side 21.0 cm high; 1 cm stays free at each edge.</summary>
    private const double SafeWidthCm = 27.94 - 2;
    private const double SafeHeightCm = 21.0 - 2;

    public static TheoryData<string> Sheets => ["small", "twenty", "no rotation"];

    private static CoachSheet Sheet(string name) =>
        name switch
        {
            "small" => HandMadeSheets.Small,
            "twenty" => HandMadeSheets.Twenty,
            _ => HandMadeSheets.Small with { Stations = [] },
        };

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheet_OnA4OrLetter_StaysInsideAndNeverOverlaps(string name)
    {
        var read = CardText.Read(CoachSheetPdf.Render(Sheet(name)));
        read.MustStayInside(SafeWidthCm, SafeHeightCm);
        read.MustNotOverlap();
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheet_ReadBack_SaysWhoDoesWhatWhereAndWhen(string name)
    {
        CoachSheet sheet = Sheet(name);
        var read = CardText.Read(CoachSheetPdf.Render(sheet));
        read.MustSay(sheet.SquadName);
        read.MustSay("Tuesday 5 January 2027, 17:00 to 17:45");
        Assert.All(sheet.Notes, note => read.MustSay(note));
        Assert.All(sheet.Lines.SelectMany(l => l.Items), item => MustHold(read, item));
        Assert.All(sheet.Lines, l => MustHold(read, l.AthleteName));
        Assert.All(sheet.Lines.Select(l => l.Watch).OfType<Sentence>(), watch => read.MustSay(watch));
        Assert.All(sheet.Stations, s => MustHold(read, s.Station + " " + s.Exercise));
        read.MustSay($"Ground contacts of all athletes: {sheet.Lines.Sum(l => l.Contacts)}");
    }

    [Fact]
    public void WatchNotes_OfPeople_StandOnlyOnThePageThatIsNotHungUp()
    {
        var read = CardText.Read(CoachSheetPdf.Render(HandMadeSheets.Twenty));
        string wall = string.Join(' ', read.Pages.SkipLast(1).SelectMany(p => p.Select(w => w.Text)));
        string kept = string.Join(' ', read.Pages[^1].Select(w => w.Text));
        Assert.DoesNotContain("Stop sign", wall, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("15 years old", wall, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Stop sign", kept, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("don't hang it up", kept, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void StationTimes_AreClockTimesOfTheSession()
    {
        CoachSheet sheet = HandMadeSheets.Small with
        {
            Stations = [new CoachStation($"drop box 1", $"Depth jump", 7.5, 12, ["Athlete Number1"])],
        };
        CardText.Read(CoachSheetPdf.Render(sheet)).MustSay("Depth jump 17:08 to 17:12 Athlete Number1");
    }

    /// <summary>Whoever looks at the second page of a long hall must not turn back for the time and the place.</summary>
    [Fact]
    public void Sheet_ThatGoesOnOverAPage_NamesItsTimesAndItsStationThere()
    {
        CoachSheet sheet = HandMadeSheets.Small with
        {
            Stations =
            [
                .. Enumerable
                    .Range(0, 60)
                    .Select(n => new CoachStation(
                        $"drop box 1",
                        $"Depth jump",
                        5 + (n / 3),
                        15 + (n / 3),
                        [$"Guest{n}"]
                    )),
            ],
        };
        var pages = CardText
            .Read(CoachSheetPdf.Render(sheet))
            .Pages.Select(p => p.Select(w => w.Text).ToArray())
            .ToArray();
        string[][] going = [.. pages.Where(p => p.Any(w => w.StartsWith("Guest", StringComparison.Ordinal)))];
        Assert.True(going.Length > 1, "sixty turns fit one page");
        Assert.All(going, p => Assert.Contains("17:30", p));
        Assert.All(going, p => Assert.Contains("drop", p));
    }

    [Fact]
    public void Sheet_RenderedTwice_IsTheSameByteForByte() =>
        Assert.Equal(CoachSheetPdf.Render(HandMadeSheets.Twenty), CoachSheetPdf.Render(HandMadeSheets.Twenty));

    [Fact]
    public void Sheet_WithNamesOfOtherScriptsAndMarkup_ShowsThemAsTextAndDoesNotBreak()
    {
        CoachSheet odd = HandMadeSheets.Small with
        {
            Lines =
            [
                new CoachLine("Žofia Łuczyńska-Ødegård", [$"Snap-down 2 × 5"], 10, null),
                new CoachLine("<script>alert(1)</script>", [$"Snap-down 2 × 5"], 10, null),
                new CoachLine(
                    "\u202Eevil \u05E9\u05DC\u05D5\u05DD \uD83D\uDE00 \uD800",
                    [$"Snap-down 2 × 5"],
                    10,
                    null
                ),
            ],
        };
        var read = CardText.Read(CoachSheetPdf.Render(odd));
        read.MustSay("Žofia");
        read.MustSay("<script>alert(1)</script>");
        read.MustSay("evil");
        read.MustNotOverlap();
        read.MustStayInside(SafeWidthCm, SafeHeightCm);
    }

    /// <summary>Every word stands there; columns and long words may part them.</summary>
    private static void MustHold(CardText read, string text)
    {
        string all = read.All.Replace(" ", "", StringComparison.Ordinal);
        Assert.All(
            text.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries),
            word => Assert.Contains(word, all, StringComparison.OrdinalIgnoreCase)
        );
    }
}
