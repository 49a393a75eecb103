using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Folders;

public class FixturesCalendarTests
{
    [Fact]
    public void AllDayEvent_IsAFixtureWithoutAStart()
    {
        Assert.Equal(
            [new Fixture(new LocalDate(2027, 1, 16), null, "Cup")],
            Fixtures("DTSTART;VALUE=DATE:20270116\nDTEND;VALUE=DATE:20270117\nSUMMARY:Cup")
        );
    }

    [Fact]
    public void TournamentOverTwoDays_IsAFixtureOnEach()
    {
        Assert.Equal(
            [new LocalDate(2027, 1, 16), new LocalDate(2027, 1, 17)],
            Fixtures("DTSTART;VALUE=DATE:20270116\nDTEND;VALUE=DATE:20270118\nSUMMARY:Cup").Select(f => f.Date)
        );
    }

    [Theory]
    [InlineData("DTSTART:20270116T233000Z", 17, 0, 30)]
    [InlineData("DTSTART;TZID=Europe/London:20270116T150000", 16, 16, 0)]
    [InlineData("DTSTART;TZID=GMT Standard Time:20270116T150000", 16, 16, 0)]
    [InlineData("DTSTART:20270116T150000", 16, 15, 0)]
    public void TimedEvent_StandsOnTheSquadsOwnDayAndTime(string start, int day, int hour, int minute)
    {
        Assert.Equal(
            [new Fixture(new LocalDate(2027, 1, day), new LocalTime(hour, minute), "Match")],
            Fixtures(start + "\nSUMMARY:Match")
        );
    }

    [Fact]
    public void WeeklyEvent_IsAFixtureEveryWeek_AcrossTheClockChange()
    {
        Fixture[] fixtures = Fixtures(
            "DTSTART;TZID=Europe/Paris:20270320T150000\nRRULE:FREQ=WEEKLY;COUNT=3\nSUMMARY:League"
        );

        Assert.Equal([20, 27, 3], fixtures.Select(f => f.Date.Day));
        Assert.All(fixtures, f => Assert.Equal(new LocalTime(15, 0), f.Start));
    }

    [Fact]
    public void EndlessWeeklyEvent_ReachesYearsAhead()
    {
        Fixture[] fixtures = Fixtures("DTSTART:20270102T150000\nRRULE:FREQ=WEEKLY\nSUMMARY:League");

        Assert.Contains(fixtures, f => f.Date == new LocalDate(2032, 1, 3));
    }

    [Fact]
    public void WeeklyEvent_OneWeekMovedAndOneTakenOut_StandsWhereItIsPlayed()
    {
        Fixture[] fixtures = Fixtures(
            "DTSTART;TZID=Europe/Paris:20270102T150000\nRRULE:FREQ=WEEKLY;COUNT=4\n"
                + "EXDATE;TZID=Europe/Paris:20270109T150000\nSUMMARY:League\nEND:VEVENT\n"
                + "BEGIN:VEVENT\nUID:1\nDTSTAMP:20261201T000000Z\nRECURRENCE-ID;TZID=Europe/Paris:20270116T150000\n"
                + "DTSTART;TZID=Europe/Paris:20270117T110000\nSUMMARY:League moved"
        );

        Assert.Equal(
            [
                new Fixture(new LocalDate(2027, 1, 2), new LocalTime(15, 0), "League"),
                new Fixture(new LocalDate(2027, 1, 17), new LocalTime(11, 0), "League moved"),
                new Fixture(new LocalDate(2027, 1, 23), new LocalTime(15, 0), "League"),
            ],
            fixtures
        );
    }

    [Fact]
    public void EveningEventAcrossMidnight_IsAFixtureOnBothDays()
    {
        Assert.Equal(
            [16, 17],
            Fixtures("DTSTART:20270116T220000\nDURATION:PT4H\nSUMMARY:Relay").Select(f => f.Date.Day)
        );
    }

    [Fact]
    public void EventThatEndsAtMidnight_IsAFixtureOnItsDayAlone()
    {
        Assert.Equal(
            [16],
            Fixtures("DTSTART:20270116T220000\nDTEND:20270117T000000\nSUMMARY:Relay").Select(f => f.Date.Day)
        );
    }

    [Fact]
    public void CancelledEvent_IsNoFixture()
    {
        Assert.Empty(Fixtures("DTSTART:20270116T150000\nSTATUS:CANCELLED\nSUMMARY:Match"));
    }

    [Fact]
    public void UnknownZone_KeepsTheDayAsWritten()
    {
        Assert.Equal(
            [new Fixture(new LocalDate(2027, 1, 16), null, "Match")],
            Fixtures("DTSTART;TZID=Nowhere/Land:20270116T150000\nSUMMARY:Match")
        );
    }

    [Theory]
    [InlineData("this is no calendar")]
    [InlineData("BEGIN:VCALENDAR\nBEGIN:VEVENT\nDTSTART:someday\nEND:VEVENT\nEND:VCALENDAR\n")]
    [InlineData("BEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:Match\nEND:VEVENT\nEND:VCALENDAR\n")]
    [InlineData("")]
    public void CalendarThatNobodyCanRead_StopsPlanning(string text)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Fixtures, text));

        Assert.NotEmpty(folder.StopsPlanning);
    }

    private static Fixture[] Fixtures(string lines)
    {
        string text =
            "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//test//EN\nBEGIN:VEVENT\nUID:1\nDTSTAMP:20261201T000000Z\n"
            + lines
            + "\nEND:VEVENT\nEND:VCALENDAR\n";
        SquadFolder folder = FolderText.Read((SquadTables.Fixtures, text.ReplaceLineEndings("\r\n")));
        Assert.Empty(folder.StopsPlanning);
        return folder.Squad.Fixtures.Where(f => f.Name != "Home match").ToArray();
    }
}
