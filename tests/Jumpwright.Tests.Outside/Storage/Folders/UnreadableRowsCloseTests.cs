using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>Unknown closes, never opens: what can't be read may be the row that forbids.</summary>
public class UnreadableRowsCloseTests
{
    [Theory]
    [InlineData("a01,02/01/2027,knee,left,,,swelling,rest,,", "'02/01/2027' is no date")]
    [InlineData("a01,,knee,left,,,swelling,rest,,", "the date is empty")]
    [InlineData("a01,2027-01-02,knee,left,,,swolen,rest,,", "kind 'swolen' must be one of pain, swelling")]
    [InlineData("a01,2027-01-02,knee,left,,,,rest,,", "the kind is empty")]
    [InlineData("a01,2027-01-02,knee,left,,,pain,at night,3,", "when 'at-night' must be one of rest, night")]
    [InlineData("a01,2027-01-02,knee,left,,,pain,during,11,", "score_0_10 11 is outside 0 to 10")]
    [InlineData("a01,2027-01-02,knee,left,,,pain,during,-1,", "score_0_10 -1 is outside 0 to 10")]
    [InlineData("a01,2027-01-02,knee,left,,,pain,during,\"2,5\",", "'2,5' has a decimal comma")]
    [InlineData("a01,2027-01-02,knee,left,,,pain,during,2,5,", "it has 11 cells where the header has 10")]
    [InlineData("a01,2027-01-02,,left,,,pain,during,2,", "the site is empty")]
    [InlineData("a01,2027-01-02,knee,inner,,,pain,during,2,", "side 'inner' must be left, right, both or empty")]
    public void Symptom_ThatNobodyCanRead_ClosesItsAthleteAndNobodyElse(string row, string because)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Symptoms, FolderText.SymptomsHeader + row + "\na02,2027-01-03,shin,right,,,pain,after,2,\n")
        );

        Assert.Equal(["a01"], folder.Closed());
        FolderProblem problem = Assert.Single(folder.Problems);
        Assert.Equal(ProblemWeight.ClosesAthlete, problem.Weight);
        Assert.StartsWith("symptoms.csv line 2: ", problem.Sentence);
        Assert.Contains(because, problem.Sentence);
        Assert.Contains(folder.Symptoms, s => s.AthleteId == "a02" && s.Score == 2);
    }

    [Theory]
    [InlineData("a01,2026-13-01,,knee,left,,depth-jump,,Dr Roy,surgeon,", "'2026-13-01' is no date")]
    [InlineData("a01,2026-12-01,soon,knee,left,,depth-jump,,Dr Roy,surgeon,", "'soon' is no date")]
    [InlineData("a01,2026-12-01,2026-11-01,knee,left,,depth-jump,,Dr Roy,surgeon,", "lies before from")]
    [InlineData("a01,2026-12-01,,knee,left,,depth-jump,Dr Roy,surgeon,", "it has 10 cells where the header has 11")]
    [InlineData("a01,2026-12-01,,kn\"ee,left,,depth-jump,,Dr Roy,surgeon,", "a quotation mark")]
    public void Restriction_ThatNobodyCanRead_ClosesItsAthlete(string row, string because)
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Restrictions,
                FolderText.RestrictionsHeader + row + "\na02,2026-12-01,,knee,left,pogo-hops,,,Dr Roy,surgeon,\n"
            )
        );

        Assert.Equal(["a01"], folder.Closed());
        Assert.Contains(because, Assert.Single(folder.Problems).Sentence);
        Assert.Contains(folder.Restrictions, r => r.AthleteId == "a02" && r.Allowed is ["pogo-hops"]);
    }

    [Fact]
    public void Closure_IsInForceOnEveryDay_NamesWhomToAsk_AndHoldsNoWordThatARuleKnows()
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Symptoms, FolderText.SymptomsHeader + "a01,yesterday,knee,,,,pain,,3,\n")
        );

        Restriction closure = Assert.Single(folder.Restrictions);
        Assert.True(closure.From.Year <= 1900);
        Assert.Null(closure.Until);
        Assert.Empty(closure.Allowed);
        Assert.Equal(["row that nobody can read"], closure.Forbidden);
        Assert.Equal("whoever keeps symptoms.csv", closure.SetBy);
        Assert.Contains("symptoms.csv line 2", closure.Note);
    }

    [Theory]
    [InlineData("A01")]
    [InlineData("a1")]
    [InlineData("a 01")]
    public void SafetyRow_WithAnIdThatLooksLikeSomebodys_ClosesForThem(string id)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Symptoms, FolderText.SymptomsHeader + id + ",2027-01-02,knee,,,,pain,during,1,\n")
        );

        Assert.Equal(["a01"], folder.Closed());
        Assert.Contains("if a01 is meant, write a01", folder.Problems[0].Sentence);
    }

    [Fact]
    public void SafetyRow_OfSomebodyWhoLeftTheSquad_IsNamedAndClosesNobody()
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Symptoms, FolderText.SymptomsHeader + "z99,2027-01-02,knee,,,,pain,during,1,\n")
        );

        Assert.Empty(folder.Closed());
        Assert.Contains("'z99' is nobody's in athletes.csv", Assert.Single(folder.Problems).Sentence);
    }

    [Fact]
    public void SafetyRow_WithoutAnAthlete_StopsPlanning()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Restrictions,
                FolderText.RestrictionsHeader + ",2026-12-01,,knee,,,depth-jump,,Dr Roy,surgeon,\n"
            )
        );

        Assert.Equal(2, Assert.Single(folder.StopsPlanning).Line);
    }

    [Theory]
    [InlineData(SquadTables.Symptoms, "athlete,date,site,side,kind,when,score,note\na01,2027-01-02,knee,,pain,,9,\n")]
    [InlineData(
        SquadTables.Restrictions,
        "athlete,from,until,allowed,forbiden,limit,set_by,role\na01,2026-12-01,,,jumps,,Dr Roy,surgeon\n"
    )]
    [InlineData(SquadTables.Symptoms, "")]
    [InlineData(SquadTables.Athletes, "id,name\na01,Ada\n")]
    public void SafetyTable_WhoseHeaderLosesAFact_StopsPlanning(string file, string text)
    {
        SquadFolder folder = FolderText.Read((file, text));

        FolderProblem problem = Assert.Single(folder.StopsPlanning);
        Assert.Equal(file, problem.File);
        Assert.Equal(1, problem.Line);
    }

    [Fact]
    public void SafetyTable_ThatIsNoText_StopsPlanning()
    {
        SquadFolder folder = FolderText.Read((SquadTables.Symptoms, new byte[] { 0x50, 0x4B, 3, 4, 0, 0, 0, 8 }));

        Assert.Contains("is no text", Assert.Single(folder.StopsPlanning).Sentence);
    }

    [Fact]
    public void StrayQuotationMarks_SwallowNoOtherRow()
    {
        // Two inch marks would, read generously, make one long cell of everything between them.
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Symptoms,
                FolderText.SymptomsHeader
                    + "a01,2027-01-02,knee,,,,pain,during,1,12\" box\n"
                    + "a02,2027-01-02,knee,,,,swelling,rest,,\n"
                    + "a01,2027-01-03,knee,,,,pain,during,1,12\" box\n"
            )
        );

        Assert.Contains(folder.Symptoms, s => s.AthleteId == "a02" && s.Kind == "swelling");
        Assert.Equal(["a01"], folder.Closed());
        Assert.Equal([2, 4], folder.Problems.Select(p => p.Line!.Value));
    }

    [Theory]
    [InlineData("a01,tomorrow,s1,pogo-hops,3,10,30,0,0,0,5,,")]
    [InlineData("a01,2026-12-30,s1,,3,10,30,0,0,0,5,,")]
    [InlineData("a01,2026-12-30,s1,pogo-hops,3,10,30,0,x,0,5,,")]
    public void WorkDone_WhoseDayExerciseOrPainNobodyCanRead_ClosesItsAthlete(string row)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Completed, FolderText.CompletedHeader + row + "\n"));

        Assert.Equal(["a01"], folder.Closed());
    }

    [Fact]
    public void WorkDone_WithACountNobodyCanRead_KeepsTheRowWithoutIt()
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Completed, FolderText.CompletedHeader + "a01,2026-12-30,s1,pogo-hops,three,10,-30,0,0,0,5,,\n")
        );

        Assert.Empty(folder.Closed());
        CompletedItem item = Assert.Single(folder.Completed);
        Assert.Equal((0, 10, 0), (item.Sets, item.Reps, item.Contacts));
        Assert.Equal(ProblemWeight.LeftOut, Assert.Single(folder.Problems).Weight);
    }

    [Fact]
    public void Screen_ThatNobodyCanRead_HidesTheOlderResultsOfItsTestAndNoOther()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Screens,
                FolderText.ScreensHeader
                    + "a01,2026-12-01,landing-screen,,1,faults,1,coach,\n"
                    + "a01,2026-12-01,heel-raises,left,25,reps,1,coach,\n"
                    + "a01,2027-01-02,landing-screen,,many,faults,1,coach,\n"
                    + "a02,2026-12-01,landing-screen,,2,faults,1,coach,\n"
            )
        );

        Assert.Equal(
            [("a01", "heel-raises"), ("a02", "landing-screen")],
            folder.Screens.Select(s => (s.AthleteId, s.Test))
        );
        Assert.Contains(
            "'landing-screen' of a01 up to 2027-01-02 count as not tested",
            Assert.Single(folder.Problems).Sentence
        );
    }

    [Fact]
    public void Athlete_WhoseRowIsBroken_IsThereWithEverythingUnknownAndAnOperationPossible()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Athletes,
                FolderText.AthletesHeader + "a01,Ada,2000-05-01,female,64,5,1.72,volleyball,advanced,,,,\n"
            )
        );

        Athlete athlete = Assert.Single(folder.Athletes);
        Assert.Equal((null, null, TrainingLevel.Unknown), (athlete.BirthDate, athlete.BodyMassKg, athlete.Level));
        Assert.NotNull(athlete.Operation);
        Assert.Null(athlete.Operation.Date);
    }

    [Theory]
    [InlineData("a01,Ada,1899-05-01,,64,,,,,,,")]
    [InlineData("a01,Ada,01.05.2000,,64,,,,,,,")]
    public void Athlete_WithABirthDateNobodyCanRead_IsOfUnknownAge(string row)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Athletes, FolderText.AthletesHeader + row + "\n"));

        Assert.Null(Assert.Single(folder.Athletes).BirthDate);
        Assert.Equal(64, folder.Athletes[0].BodyMassKg);
    }

    [Theory]
    [InlineData("-64")]
    [InlineData("0")]
    [InlineData("645")]
    [InlineData("64 kg")]
    [InlineData("NaN")]
    [InlineData("1e2")]
    public void Athlete_WithAMassNobodyCanBelieve_IsOfUnknownMass(string mass)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Athletes, FolderText.AthletesHeader + $"a01,Ada,2000-05-01,,{mass},,,,,,,\n")
        );

        Assert.Null(Assert.Single(folder.Athletes).BodyMassKg);
        Assert.Contains("body_mass_kg", Assert.Single(folder.Problems).Sentence);
    }

    [Theory]
    [InlineData("2026-09-01,,")]
    [InlineData(",,left")]
    [InlineData("once,,")]
    public void Athlete_WithAnyHintOfAnOperation_WasOperated(string operation)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Athletes, FolderText.AthletesHeader + $"a01,Ada,2000-05-01,,64,,,,{operation},\n")
        );

        Assert.NotNull(Assert.Single(folder.Athletes).Operation);
        Assert.NotEmpty(folder.Problems);
    }

    [Fact]
    public void Athlete_WrittenTwiceDifferently_IsUnknownWhereTheRowsDiffer()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Athletes,
                FolderText.AthletesHeader
                    + "a01,Ada,2000-05-01,,64,,,advanced,,,,\n"
                    + "a01,Ada,2012-05-01,,64,,,advanced,,knee,,\n"
            )
        );

        Athlete athlete = Assert.Single(folder.Athletes);
        Assert.Null(athlete.BirthDate);
        Assert.Equal(64, athlete.BodyMassKg);
        Assert.Equal("knee", athlete.Operation?.Site);
    }

    [Theory]
    [InlineData("../x")]
    [InlineData("a/../../x")]
    [InlineData("a01;drop")]
    [InlineData("con:")]
    public void Athlete_WithAnIdUnfitForAFileName_IsLeftOut(string id)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Athletes, FolderText.AthletesHeader + $"{id},Ada,2000-05-01,,64,,,,,,,\n")
        );

        Assert.Empty(folder.Athletes);
        Assert.Contains("must be letters and digits", Assert.Single(folder.Problems).Sentence);
    }

    [Theory]
    [InlineData("fixtures:\n  - {date: 9 Jan 2027, name: Home match}", 4)]
    [InlineData("fixtures: Saturday", 3)]
    [InlineData("policy: [100]", 3)]
    public void SquadYaml_FixtureOrPolicyNobodyCanRead_StopsPlanning(string yaml, int line)
    {
        SquadFolder folder = FolderText.Read(
            (SquadTables.Squad, "name: Club\ntime_zone: Europe/Paris\n" + yaml + "\n")
        );

        Assert.Equal(line, Assert.Single(folder.StopsPlanning).Line);
    }

    [Theory]
    [InlineData("name: Club")]
    [InlineData("name: Club\ntime_zone: Paris")]
    [InlineData("name: Club\n\ttime_zone: Europe/Paris")]
    [InlineData("just a sentence")]
    [InlineData("")]
    public void SquadYaml_WithoutATimeZoneThatIsKnown_StopsPlanning(string yaml)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Squad, Encoding.UTF8.GetBytes(yaml)));

        Assert.NotEmpty(folder.StopsPlanning);
    }

    [Fact]
    public void SquadYaml_OfAHundredThousandBrackets_StopsPlanningAndNotTheProgram()
    {
        SquadFolder folder = FolderText.Read((SquadTables.Squad, "name: " + new string('[', 100_000)));

        Assert.NotEmpty(folder.StopsPlanning);
    }

    [Fact]
    public void SquadYaml_KitAndWindowsNobodyCanRead_AreNotThere()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Squad,
                """
                name: Club
                time_zone: Europe/Paris
                kit: [{id: plyo-box, count: some}, {id: band, count: 4}, {count: 2}]
                windows:
                  - {day: funday, start: "17:00", minutes: 45}
                  - {day: friday, start: "17:00", minutes: 45}
                """
            )
        );

        Assert.Equal("band", Assert.Single(folder.Squad.Kit).Id);
        Assert.Single(folder.Squad.Windows);
        Assert.Empty(folder.StopsPlanning);
        Assert.Equal(3, folder.Problems.Length);
    }
}
