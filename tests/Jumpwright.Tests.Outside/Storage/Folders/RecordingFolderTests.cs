using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Tests.Outside.Storage.Folders;

public sealed class RecordingFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Folder_WithAManifest_IsReadInItsOrderThenTheRestByOrdinalName()
    {
        Write("trials.csv", FolderText.TrialsHeader + "z.csv,a01,2027-01-02,squat-jump,,,,\nrecordings/y.csv,,,,,,,\n");
        foreach (
            string name in new[]
            {
                "z.csv",
                "recordings/y.csv",
                "recordings/x.csv",
                "b.csv",
                "A.C3D",
                "a.csv",
                "note.txt",
            }
        )
        {
            Write(name, "x");
        }

        foreach (string table in SquadTables.Csv.Where(t => t != SquadTables.Trials))
        {
            Write(table, "x");
        }

        Assert.Equal(
            ["z.csv", "recordings/y.csv", "A.C3D", "a.csv", "b.csv"],
            Files(RecordingFolder.List(_folder).Require())
        );
        Assert.Equal(
            ["z.csv", "recordings/y.csv", "A.C3D", "a.csv", "b.csv", "recordings/x.csv"],
            Files(RecordingFolder.ListSquad(_folder).Require())
        );
        Assert.Equal(JumpTask.SquatJump, RecordingFolder.List(_folder).Require()[0].Labels?.Task);
        Assert.Null(RecordingFolder.List(_folder).Require()[2].Labels);
    }

    [Theory]
    [InlineData(
        "gone.csv,a01,2027-01-02,squat-jump,,,,",
        "trials.csv line 2 lists 'gone.csv', but there is no such file"
    )]
    [InlineData("here.csv,a01,02.01.2027,squat-jump,,,,", "date '02.01.2027' is no date")]
    [InlineData("here.csv,a01,2027-01-02,squatjump,,,,", "task 'squatjump' must be one of countermovement-jump")]
    [InlineData("here.csv,a01,2027-01-02,squat-jump,-70,,,", "body_mass_kg -70 is outside")]
    [InlineData("here.csv,a01,2027-01-02,squat-jump,70,5,,,,", "it has 10 cells where the header has 8")]
    [InlineData("../here.csv,a01,2027-01-02,squat-jump,,,,", "leads out of the folder")]
    [InlineData("/etc/hosts,a01,2027-01-02,squat-jump,,,,", "leads out of the folder")]
    [InlineData("athletes.csv,a01,2027-01-02,squat-jump,,,,", "is one of the squad's own tables")]
    public void Manifest_ARowThatCannotBeUsed_RefusesItsRecordingAndNoOther(string row, string because)
    {
        Write("here.csv", "x");
        Write("other.csv", "x");
        Write("trials.csv", FolderText.TrialsHeader + row + "\n");

        var listed = RecordingFolder.List(_folder).Require();

        Assert.Null(listed[0].FullPath);
        Assert.Contains(because, listed[0].Fault?.Sentence);
        Assert.Contains(listed, l => l.File == "other.csv" && l.Fault is null);
    }

    [Fact]
    public void Manifest_OneFileUnderTwoLabels_IsRefusedOnce()
    {
        Write("a.csv", "x");
        Write("trials.csv", FolderText.TrialsHeader + "a.csv,a01,,,,,,\na.csv,a02,,,,,,\n");

        ListedRecording listed = Assert.Single(RecordingFolder.List(_folder).Require());

        Assert.Equal(
            "trials.csv lines 2 and 3 list 'a.csv' with different labels: take one out.",
            listed.Fault?.Sentence
        );
    }

    [Fact]
    public void Manifest_WithoutItsHeader_IsItselfRefused()
    {
        Write("a.csv", "x");
        Write("trials.csv", "a.csv,a01,2027-01-02,squat-jump,,,,\n");

        Assert.Equal(["trials.csv", "a.csv"], Files(RecordingFolder.List(_folder).Require()));
    }

    [Fact]
    public void Folder_ThatDoesNotExist_IsRefused()
    {
        Assert.False(RecordingFolder.List(Path.Combine(_folder, "none")).TryGet(out _, out _));
    }

    private static IEnumerable<string> Files(IEnumerable<ListedRecording> listed) => listed.Select(l => l.File);

    private void Write(string name, string text)
    {
        string path = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
