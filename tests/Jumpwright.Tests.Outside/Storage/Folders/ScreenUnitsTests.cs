using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Folders;

public class ScreenUnitsTests
{
    [Theory]
    [InlineData("standing-long-jump,,2.10,m", 2.10)]
    [InlineData("standing-long-jump,,210,cm", 2.10)]
    [InlineData("knee-to-wall,left,112,mm", 0.112)]
    [InlineData("best-touch,,287.5,cm", 2.875)]
    public void Screen_ALabelledUnit_IsReadInMetres(string cells, double metres)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        Assert.Equal(metres, Assert.Single(folder.Screens).Value);
        Assert.Equal("m", folder.Screens[0].Unit);
    }

    [Theory]
    [InlineData("standing-long-jump,,210,")]
    [InlineData("standing-long-jump,,210,m")]
    [InlineData("standing-long-jump,,83,inch")]
    [InlineData("heel-raises,left,-3,reps")]
    [InlineData("landing-screen,,2,m")]
    public void Screen_AUnitMissingOrAValueNobodyCanBelieve_IsNotTested(string cells)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        Assert.Empty(folder.Screens);
        Assert.Equal(ProblemWeight.LeftOut, Assert.Single(folder.Problems).Weight);
    }

    [Theory]
    [InlineData("single-hop,left,142,m", "write 1.42 m, not 142")]
    [InlineData("knee-to-wall,left,12,m", "write 0.12 m, not 12")]
    [InlineData("timed-hop,right,1920,s", "write 1.92 s, not 1920")]
    [InlineData("single-hop,,1.42,m", "the side of single-hop is not said")]
    [InlineData("heel-raises,both,20,reps", "write left or right, one row each")]
    [InlineData("flight-frames,,130,frames", "must name the capture rate")]
    [InlineData("flight-frames,,130,frames@30", "not the playback rate")]
    [InlineData("flight-frames,,130.5,frames@240", "no count of frames")]
    [InlineData("tuck-jump,,14,faults", "outside 0 to 10")]
    [InlineData("knee-extension-deficit,left,80,deg", "outside -20 to 60")]
    public void Screen_ASlipOfThePen_IsNamedWithWhatWasMeant(string cells, string part)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        Assert.Empty(folder.Screens);
        Assert.Contains(part, Assert.Single(folder.Problems).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("timed-hop,left,1920,ms", 1.92, "s")]
    [InlineData("flight-frames,,130,frames @ 240", 130, "frames@240")]
    [InlineData("flight-frames,,62,Frames@119.88", 62, "frames@119.88")]
    [InlineData("knee-flexion,right,135,degrees", 135, "deg")]
    [InlineData("knee-extension-deficit,right,-5,deg", -5, "deg")]
    [InlineData("single-leg-squat,left,2,faults", 2, "faults")]
    [InlineData("squat-reps,,5,reps", 5, "reps")]
    [InlineData("knee-effusion,left,trace,grade", 0.5, "grade")]
    public void Screen_EveryTest_IsReadInItsUnit(string cells, double value, string unit)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        ScreenResult screen = Assert.Single(folder.Screens);
        Assert.Equal((value, unit), (screen.Value, screen.Unit));
        Assert.Empty(folder.Symptoms);
    }

    [Theory]
    [InlineData("knee-effusion,left,1+,grade")]
    [InlineData("knee-effusion,left,3+,grade")]
    public void Effusion_FromOnePlusOn_IsASwellingOfThatKnee(string cells)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        SymptomReport swelling = Assert.Single(folder.Symptoms);
        Assert.Equal(
            ("a01", "knee", Side.Left, "swelling"),
            (swelling.AthleteId, swelling.Site, swelling.Side, swelling.Kind)
        );
    }

    [Theory]
    [InlineData("knee-effusion,left,1,grade", "must be one of 0, trace, 1+, 2+, 3+")]
    [InlineData("knee-effusion,left,,grade", "the value is empty")]
    [InlineData("knee-effusion,,2+,grade", "the side of knee-effusion is not said")]
    [InlineData("effusion,left,2+,grade", "write knee-effusion")]
    [InlineData("knee-effusion,left,2+,", "the unit is empty")]
    public void Effusion_ThatNobodyCanRead_ClosesItsAthlete(string cells, string part)
    {
        SquadFolder folder = FolderText.Read((SquadTables.Screens, Row(cells)));

        Assert.Contains(folder.Restrictions, r => r.AthleteId == "a01");
        Assert.Contains(
            folder.Problems,
            p => p.Weight == ProblemWeight.ClosesAthlete && p.Sentence.Contains(part, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Document_HoldsEveryTest_ItsUnitItsBoundsAndItsDoubt()
    {
        string[] lines = House.Repository.Read("docs/squad-folder.md").Split('\n');
        Assert.All(
            FieldTest.All,
            t =>
            {
                string row = Assert.Single(lines, l => l.StartsWith($"| `{t.Id}` |", StringComparison.Ordinal));
                string doubt = t.Id == FieldTest.FlightFrames ? "by the rate" : Text(t.StandardUncertainty);
                Assert.Contains(
                    $"| `{t.Unit}` | {Text(t.Least)} to {Text(t.Most)} | {doubt} |",
                    row,
                    StringComparison.Ordinal
                );
                Assert.Equal(t.Sided, row.Contains("with `side`", StringComparison.Ordinal));
            }
        );

        static string Text(double value) => value.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Row(string cells) => FolderText.ScreensHeader + $"a01,2027-01-02,{cells},1,coach,\n";
}
