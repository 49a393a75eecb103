using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Desk;

/// <summary>A squad that is opened without reading its recordings, and what an entry or a recording then touches.</summary>
public sealed class OpenedAtOnceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-at-once-").FullName;

    public OpenedAtOnceTests()
    {
        DemoCommand.WriteSquad(_folder);
        // Four of them say as much as all, and are measured in a moment.
        foreach (string recording in Directory.EnumerateFiles(Path.Combine(_folder, "recordings")))
        {
            if (!new[] { "a01", "a02", "a03", "a04" }.Any(a => Path.GetFileName(recording).Contains(a)))
            {
                File.Delete(recording);
            }
        }

        OpenedSquad.Kept(_folder, null, null, CancellationToken.None).Require().Dispose();
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void AtOnce_ReadsNoTrial_AndThenKnowsTheSame()
    {
        using OpenedSquad whole = OpenedSquad.Kept(_folder, null, null, CancellationToken.None).Require();
        using OpenedSquad atOnce = OpenedSquad.AtOnce(_folder, null, CancellationToken.None).Require();

        Assert.True(atOnce.IsBehind);
        Assert.DoesNotContain(atOnce.Material.Dossiers, d => d.IsRead);
        Assert.False(atOnce.LookThrough(CancellationToken.None));
        Assert.False(atOnce.IsBehind);
        Assert.NotEmpty(atOnce.Material.Histories.SelectMany(h => h.Trials));
        Assert.Equal(
            whole.Material.Histories.SelectMany(h => h.Trials).Select(t => (t.File, t.Trial.Number)),
            atOnce.Material.Histories.SelectMany(h => h.Trials).Select(t => (t.File, t.Trial.Number))
        );
        Assert.Equal(whole.Material.Problems, atOnce.Material.Problems);
        Assert.Equal(whole.Material.Refused, atOnce.Material.Refused);
    }

    [Fact]
    public void AtOnce_WhereATableChanged_TakesTheFolderInFirst()
    {
        File.AppendAllText(Path.Combine(_folder, "symptoms.csv"), "a02,2027-01-03,knee,left,,,pain,after,8,\n");

        using OpenedSquad atOnce = OpenedSquad.AtOnce(_folder, null, CancellationToken.None).Require();

        Assert.False(atOnce.IsBehind);
        Assert.Contains(
            atOnce.Material.Dossiers.Single(d => d.Athlete.Id == "a02").Bare.Symptoms,
            s => s is { Score: 8, Site: "knee" }
        );
    }

    [Fact]
    public void LookThrough_FindsANewRecording_AndOnlyItsAthleteIsReadAnew()
    {
        using OpenedSquad squad = OpenedSquad.AtOnce(_folder, null, CancellationToken.None).Require();
        SquadMaterial before = squad.Material;
        string some = before.Dossiers[0].History.Trials[0].File;
        // The same jump under another name and with a line more is another content of the same athlete.
        string copy = Path.Combine(_folder, "recordings", "again.csv");
        File.WriteAllText(copy, File.ReadAllText(Path.Combine(_folder, some)) + "\n");
        string row = File.ReadAllLines(Path.Combine(_folder, "trials.csv")).First(l => l.Contains(some));
        File.AppendAllText(Path.Combine(_folder, "trials.csv"), row.Replace(some, "recordings/again.csv") + "\n");

        Assert.True(squad.LookThrough(CancellationToken.None));
        squad.ImportAgain(null, CancellationToken.None).Require();

        string whose = before.Dossiers[0].Athlete.Id;
        foreach (Dossier dossier in squad.Material.Dossiers)
        {
            Dossier then = before.Dossiers.Single(d => d.Athlete.Id == dossier.Athlete.Id);
            Assert.Equal(dossier.Athlete.Id != whose, dossier.HasTrialsOf(then));
        }

        Assert.Contains(squad.Material.Dossiers[0].History.Trials, t => t.File == "recordings/again.csv");
    }

    [Fact]
    public void AnEntry_TouchesItsAthleteAlone_AndReadsNoTrialAgain()
    {
        using var desk = new FrontDesk(
            OpenedSquad.AtOnce(_folder, null, CancellationToken.None).Require(),
            DemoCommand.Day,
            1
        );
        Workbook before = desk.Book;

        desk.Write(
            new JournalEntry(
                Guid.NewGuid().ToString(),
                EntryKinds.Pain,
                "a02",
                null,
                SystemClock.Instance.GetCurrentInstant(),
                "test",
                """{"site":"knee","side":"left","score":9,"when":"rest"}"""
            )
        );

        foreach ((AthleteLeaf was, AthleteLeaf now) in before.Leaves.Zip(desk.Book.Leaves))
        {
            Assert.Equal(now.Athlete.Id != "a02", ReferenceEquals(was, now));
        }

        AthleteLeaf theirs = desk.Book.Find("a02")!;
        Assert.True(theirs.Dossier.HasTrialsOf(before.Find("a02")!.Dossier));
        Assert.Contains(theirs.History.Symptoms, s => s.Score == 9);
    }
}
