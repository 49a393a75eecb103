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

    private static string Row(string cells) => FolderText.ScreensHeader + $"a01,2027-01-02,{cells},1,coach,\n";
}
