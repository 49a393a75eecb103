using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Folders;

public class SquadFolderTests
{
    [Fact]
    public void Folder_WellKept_IsReadWithoutAProblem()
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Symptoms, FolderText.SymptomsHeader + "a02,2027-01-02,knee,left,,,pain,during,3,\n"),
            (
                SquadTables.Restrictions,
                FolderText.RestrictionsHeader
                    + "a02,2026-12-01,2027-02-01,knee,left,snap-down;pogo-hops,depth-jump,drops ≤ 0.20 m,Dr Roy,surgeon,\n"
            ),
            (SquadTables.Screens, FolderText.ScreensHeader + "a01,2027-01-02,landing-screen,,1,faults,1,coach,\n"),
            (SquadTables.Completed, FolderText.CompletedHeader + "a01,2026-12-30,s1,pogo-hops,3,10,30,0,0,0,5,,\n"),
            (SquadTables.Trials, FolderText.TrialsHeader + "recordings/a.csv,a01,2027-01-02,squat-jump,,,,both\n")
        );

        Assert.Empty(folder.Problems);
        Assert.Equal("Riverside Club", folder.Squad.Name);
        Assert.Equal(new KitCount("plyo-box", 3), Assert.Single(folder.Squad.Kit));
        Assert.Equal(
            new TrainingWindow(IsoDayOfWeek.Monday, new LocalTime(17, 0), 45),
            Assert.Single(folder.Squad.Windows)
        );
        Assert.Equal(
            new Practice(IsoDayOfWeek.Tuesday, new LocalTime(19, 0), 90, "volleyball"),
            Assert.Single(folder.Squad.Practices)
        );
        Assert.Equal("100", folder.Squad.Policy["contacts_per_session"]);
        Assert.Equal(
            new Athlete(
                "a01",
                "Ada",
                new LocalDate(2000, 5, 1),
                64.5,
                1.72,
                "volleyball",
                TrainingLevel.Advanced,
                null,
                null
            ),
            folder.Athletes[0]
        );
        Assert.Equal(new Operation(new LocalDate(2026, 9, 1), "knee", Side.Left), folder.Athletes[1].Operation);
        Assert.Equal("torn, mended", folder.Athletes[1].Note);
        Assert.Equal(3, Assert.Single(folder.Symptoms).Score);
        Assert.Equal(["snap-down", "pogo-hops"], Assert.Single(folder.Restrictions).Allowed);
        Assert.Equal(1, Assert.Single(folder.Screens).Value);
        Assert.Equal(30, Assert.Single(folder.Completed).Contacts);
        Assert.Equal("recordings/a.csv", Assert.Single(folder.Manifest).File);
    }

    [Fact]
    public void Folder_ByteOrderMarkAndCarriageReturns_AreRepairedSilently()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(FolderText.Athletes.Replace("\n", "\r\n"))];

        SquadFolder folder = FolderText.Read((SquadTables.Athletes, bytes));

        Assert.Equal(["a01", "a02"], folder.Athletes.Select(a => a.Id));
        Assert.Empty(folder.Problems);
    }

    [Fact]
    public void Folder_SavedAsUtf16_IsReadAndSaid()
    {
        byte[] bytes = [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(FolderText.Athletes)];

        SquadFolder folder = FolderText.Read((SquadTables.Athletes, bytes));

        Assert.Equal(2, folder.Athletes.Length);
        Assert.Contains("UTF-16", Assert.Single(folder.Problems).Sentence);
    }

    [Fact]
    public void Folder_PartedBySemicolons_IsReadAndSaid()
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Athletes, FolderText.AthletesHeader.Replace(',', ';') + "a01;Ada;2000-05-01;;64,5;;;;;;;\n")
        );

        Assert.Equal(new LocalDate(2000, 5, 1), Assert.Single(folder.Athletes).BirthDate);
        Assert.Null(folder.Athletes[0].BodyMassKg);
        Assert.Contains(folder.Problems, p => p.Sentence.Contains("semicolons"));
        Assert.Contains(folder.Problems, p => p.Sentence.Contains("'64,5' has a decimal comma") && p.Line == 2);
    }

    [Fact]
    public void Folder_MissingSquadYaml_StopsPlanning()
    {
        var files = new Dictionary<string, ReadOnlyMemory<byte>>
        {
            [SquadTables.Athletes] = Encoding.UTF8.GetBytes(FolderText.Athletes),
        };

        SquadFolder folder = SquadFolder.Read("club", files).Require();

        Assert.Equal("club", folder.Squad.Name);
        Assert.Equal(SquadTables.Squad, Assert.Single(folder.StopsPlanning).File);
    }

    [Fact]
    public void Folder_ThatIsNone_IsRefusedWithASentence()
    {
        Assert.False(SquadFolder.Read("no/such/folder").TryGet(out _, out var refusal));
        Assert.Equal("There is no folder 'no/such/folder': check the path.", refusal.Sentence);
    }

    [Fact]
    public void Table_WithAnUnknownColumn_IsReadWithAWarning()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Screens,
                "athlete,date,test,side,value,unit,colour\na01,2027-01-02,heel-raises,left,25,reps,red\n"
            )
        );

        Assert.Equal(25, Assert.Single(folder.Screens).Value);
        FolderProblem problem = Assert.Single(folder.Problems);
        Assert.Equal(ProblemWeight.Note, problem.Weight);
        Assert.StartsWith("screens.csv line 1: the column 'colour' is not known", problem.Sentence);
    }

    [Fact]
    public void SquadYaml_SurfaceAndWeather_AreRead_AStrangeFloorCountsAsHard_WeatherThatCantBeReadStopsPlanning()
    {
        const string Head = "name: Club\ntime_zone: Europe/Paris\nkit: []\nwindows:\n";
        SquadFolder good = FolderText.Read(
            (
                SquadTables.Squad,
                Head
                    + "  - {day: monday, start: \"17:00\", minutes: 45, surface: grass}\n"
                    + "  - {day: friday, start: \"17:00\", minutes: 45, surface: moon dust}\n"
                    + "weather:\n  - {date: 2027-07-05, air_c: 31.5, humidity_pct: 55}\n"
            )
        );
        Assert.Equal([Surface.Grass, Surface.Unknown], good.Squad.Windows.Select(w => w.Surface!.Value));
        Assert.Equal(new Weather(new LocalDate(2027, 7, 5), 31.5, 55), Assert.Single(good.Squad.Weather));
        Assert.Contains("'moon dust' is not known and counts as hard", Assert.Single(good.Problems).Sentence);

        SquadFolder bad = FolderText.Read(
            (
                SquadTables.Squad,
                Head
                    + "  - {day: monday, start: \"17:00\", minutes: 45}\nweather:\n  - {date: 2027-07-05, air_c: 31.5}\n"
            )
        );
        Assert.Equal(ProblemWeight.StopsPlanning, Assert.Single(bad.Problems).Weight);
    }

    [Fact]
    public void SquadYaml_WhoTakesNoPart_IsReadOfPracticesAndFixtures()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Squad,
                "name: Club\ntime_zone: Europe/Paris\nkit: []\nwindows:\n  - {day: monday, start: \"17:00\", minutes: 45}\n"
                    + "practices:\n  - {day: tuesday, minutes: 90, without: [a01, a02]}\n"
                    + "fixtures:\n  - {date: 2027-01-09, without: a02}\n"
            )
        );
        Assert.Empty(folder.Problems);
        Assert.Equal(["a01", "a02"], Assert.Single(folder.Squad.Practices).Without);
        Assert.False(Assert.Single(folder.Squad.Fixtures).Has("a02"));
        Assert.True(Assert.Single(folder.Squad.Fixtures).Has("a01"));
    }
}
