using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.Progression;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What a squad set otherwise holds in the pages' ladders as it does in the plan's.</summary>
public sealed class LimitsInThePagesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-limits-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void SessionsToOwn_SetInTheFolder_HoldOnEveryLeaf()
    {
        DemoCommand.WriteSquad(_folder);
        Assert.True(Owned() > 0, "nobody owns anything, so the test could not fail");
        File.AppendAllText(
            Path.Combine(_folder, "overrides.csv"),
            "limit,athlete,value,who,reason,from,until\nsessions-to-own,,50,Ada Quill,a hard club,2027-01-01,2027-01-20\n"
        );
        Assert.Equal(0, Owned());
    }

    private int Owned()
    {
        using OpenedSquad squad = OpenedSquad.At(_folder, null, CancellationToken.None).Require();
        SquadMaterial material = squad.Material;
        return Bookkeeping
            .Leaves(material, material.Catalogue, DemoCommand.Day)
            .Sum(l => l.Ladder.Rungs.Count(r => r.State == RungState.Owned));
    }
}
