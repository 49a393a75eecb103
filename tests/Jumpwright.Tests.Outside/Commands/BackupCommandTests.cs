using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>A squad goes into one file and comes out as it was, with what was written in the pages.</summary>
public class BackupCommandTests
{
    [Fact]
    public async Task BackupAndRestore_GiveTheSameSquad_AndOverwriteNothing()
    {
        using var folder = new WorkFolder();
        string club = folder.At("club");
        DemoCommand.WriteSquad(club);
        using (OpenedSquad squad = OpenedSquad.Kept(club, null, null, CancellationToken.None).Require())
        {
            squad.Append([new JournalEntry("0", "consent", "a01", null, Instant.FromUtc(2027, 1, 4, 9, 0), "x", "{}")]);
        }

        Assert.Equal(ExitCodes.Done, (await CommandRun.Of("backup", club, folder.At("club.zip"))).Exit);
        Assert.Equal(ExitCodes.Usage, (await CommandRun.Of("backup", club, folder.At("club.zip"))).Exit);
        Assert.Equal(ExitCodes.Done, (await CommandRun.Of("restore", folder.At("club.zip"), folder.At("again"))).Exit);

        using (OpenedSquad before = OpenedSquad.At(club, null, CancellationToken.None).Require())
        using (OpenedSquad after = OpenedSquad.At(folder.At("again"), null, CancellationToken.None).Require())
        {
            Assert.Equal(before.Entries, after.Entries);
            Assert.Equal(before.Recordings.Length, after.Recordings.Length);
            Assert.Equal(
                before.Material.Histories.SelectMany(h => h.Trials).Select(t => t.Sha256),
                after.Material.Histories.SelectMany(h => h.Trials).Select(t => t.Sha256)
            );
            Assert.Equal(
                before.Material.Histories.SelectMany(h => h.Completed),
                after.Material.Histories.SelectMany(h => h.Completed)
            );
        }

        string kept = File.ReadAllText(folder.At("again/athletes.csv"));
        Assert.Equal(
            ExitCodes.SomeRefused,
            (await CommandRun.Of("restore", folder.At("club.zip"), folder.At("again"))).Exit
        );
        Assert.Equal(kept, File.ReadAllText(folder.At("again/athletes.csv")));
        File.WriteAllText(folder.At("no.zip"), "nothing");
        Assert.Equal(
            ExitCodes.SomeRefused,
            (await CommandRun.Of("restore", folder.At("no.zip"), folder.At("third"))).Exit
        );
    }
}
