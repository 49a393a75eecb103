using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Folders;

/// <summary>overrides.csv, the exercises folder, and rows of completed.csv by set.</summary>
public class OverridesAndOwnExercisesTests
{
    private const string Header = "limit,athlete,value,who,reason,from,until\n";

    [Fact]
    public void Overrides_WellKept_AreReadForTheSquadAndForOne()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Overrides,
                Header
                    + "days-off,,10,Ada Quill,new season,2027-01-04,2027-01-31\n"
                    + "contacts-per-session-beginner,a01,90,Ada Quill,clean for six weeks,,2027-01-20\n"
            )
        );
        Assert.Empty(folder.Problems);
        Assert.Equal(2, folder.Squad.Overrides.Length);
        Assert.Equal(
            new LimitOverride("days-off", null, 10, "Ada Quill", "new season", new(2027, 1, 4), new(2027, 1, 31)),
            folder.Squad.Overrides[0]
        );
        Assert.Contains(folder.Squad.OverridesOf("a01"), o => o.Limit == "contacts-per-session-beginner");
        Assert.DoesNotContain(folder.Squad.OverridesOf("a02"), o => o.Limit == "contacts-per-session-beginner");
    }

    [Theory]
    [InlineData("days-off,,ten,Ada,reason,,2027-01-20")]
    [InlineData("days-off,zz,10,Ada,reason,,2027-01-20")]
    [InlineData(",,10,Ada,reason,,2027-01-20")]
    [InlineData("days-off,,10,Ada,reason,,soon")]
    public void Overrides_RowThatCannotBeRead_IsLeftOutAndSaid(string row)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Overrides, Header + row + "\n"));
        Assert.Empty(folder.Squad.Overrides);
        Assert.Contains("as shipped stands", Assert.Single(folder.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Completed_BySet_KeepsWhatWasMeasured()
    {
        SquadFolder folder = FolderText.Read(
            (
                SquadTables.Completed,
                "athlete,date,session,exercise,set,reps,contacts,height_m,contact_time_s,session_minutes\n"
                    + "a01,2026-12-30,s1,box-jump,1,5,5,0.41,,45\n"
                    + "a01,2026-12-30,s1,box-jump,2,5,5,0.36,0.21,45\n"
            )
        );
        Assert.Empty(folder.Problems);
        Assert.Equal([1, 2], folder.Completed.Select(c => c.Set));
        Assert.All(folder.Completed, c => Assert.Equal(1, c.Sets));
        Assert.Equal(0.36, folder.Completed[1].HeightM);
        Assert.Equal(0.21, folder.Completed[1].ContactTimeS);
        Assert.Equal(45, folder.Completed[1].SessionMinutes);
    }

    [Fact]
    public void Exercises_InTheirFolder_AreReadAsText()
    {
        SquadFolder folder = FolderText.Read(("exercises/gate-jump.json", "{}"));
        KeyValuePair<string, string> file = Assert.Single(folder.Squad.ExerciseFiles);
        Assert.Equal("exercises/gate-jump.json", file.Key);
        Assert.Equal("{}", file.Value);
    }
}
