using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.House;
using Jumpwright.Tests.Recordings.C3d;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>C3D files beside CSV: the same order, the same fields, labels from the manifest.</summary>
public class MeasureC3dTests
{
    private static readonly string Jump1 = Repository.At(
        "tests",
        "Jumpwright.Tests",
        "Data",
        "one-plate-jump",
        "jump1.csv"
    );

    /// <summary>The kept jump as a C3D file of two plates: nobody on the first, the jump on the second.</summary>
    private static byte[] AsC3d()
    {
        var force = (ForceRecording)Recording.From(File.ReadAllBytes(Jump1)).Require();
        double[] total = force.TotalN.ToArray();
        Channel still = new("N", 1, 0, _ => 0);
        Channel jump = new("N", -1, 0, i => total[i]);
        return new C3dWriter
        {
            Floating = true,
            Frames = total.Length / 4,
            SamplesPerFrame = 4,
            FrameRate = Math.Round(force.RateHz) / 4,
            Channels = [still, still, still, still, still, still, still, still, jump, still, still, still],
            Plates = [new(2, [1, 2, 3, 4, 5, 6], C3dWriter.ZDown), new(2, [7, 8, 9, 10, 11, 12], C3dWriter.ZDown)],
        }.Write();
    }

    private static WorkFolder Mixed()
    {
        var folder = new WorkFolder();
        folder.With("trials.csv", "file,athlete,date,task,plates\nz.c3d,a01,2027-01-04,countermovement-jump,2\n");
        File.WriteAllBytes(folder.At("z.c3d"), AsC3d());
        File.WriteAllBytes(folder.At("b.c3d"), AsC3d());
        File.WriteAllBytes(folder.At("c.c3d"), AsC3d()[..3000]);
        File.Copy(Jump1, folder.At("a.csv"));
        return folder;
    }

    [Fact]
    public async Task C3d_IsMeasuredInTheContractsOrder_LikeTheSameJumpAsCsv()
    {
        using WorkFolder folder = Mixed();
        folder.With(
            "trials.csv",
            File.ReadAllText(folder.At("trials.csv")) + "a.csv,a01,2027-01-04,countermovement-jump,\n"
        );
        IReadOnlyList<JsonObject> lines = (await CommandRun.Of("measure", folder.Path, "--json")).Lines;

        Assert.Equal(["z.c3d", "a.csv", "b.c3d", "c.c3d"], lines.Select(l => (string)l["file"]!));
        Assert.Null((string?)lines[0]["reason"]);
        Assert.Equal(["measured", "measured", "refused", "refused"], lines.Select(l => (string)l["verdict"]!));
        Assert.Equal(
            Convert.ToHexStringLower(
                System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(folder.At("z.c3d")))
            ),
            (string)lines[0]["sha256"]!
        );
        double Height(int line) => (double)lines[line]["measures"]!["jump_height_m"]!["value"]!;
        Assert.Equal(Height(1), Height(0), 0.002);
        Assert.DoesNotContain(
            lines[0]["warnings"]!.AsArray(),
            w => ((string)w!).Contains("plate", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task C3d_WithoutATask_IsRefusedInTheSameWordsAsCsv()
    {
        using WorkFolder folder = Mixed();
        folder.With(
            "d.csv",
            "time_s,force_N\n" + string.Concat(Enumerable.Range(0, 900).Select(i => $"{i / 1000.0},700\n"))
        );
        IReadOnlyList<JsonObject> lines = (await CommandRun.Of("measure", folder.Path, "--json")).Lines;
        string Reason(string file) => (string)lines.Single(l => (string)l["file"]! == file)["reason"]!;
        Assert.Equal(Reason("d.csv"), Reason("b.c3d"));
        Assert.Contains("cut off", Reason("c.c3d"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2", 2, null)]
    [InlineData(" 2 + 1 ", 2, 1)]
    [InlineData("", null, null)]
    public void Manifest_NamesThePlates(string cell, int? first, int? right)
    {
        using var folder = new WorkFolder();
        folder.With("trials.csv", $"file,plates\nz.c3d,{cell}\n").With("z.c3d", "x");
        ImmutableArray<ListedRecording> listed = RecordingFolder.List(folder.Path).Require();
        Assert.Equal(first is { } f ? new PlateChoice(f, right) : null, listed[0].Labels!.Plates);
    }

    [Theory]
    [InlineData("left")]
    [InlineData("0")]
    [InlineData("1+1")]
    [InlineData("1+2+3")]
    public void Manifest_PlatesThatAreNone_RefuseTheRecording(string cell)
    {
        using var folder = new WorkFolder();
        folder.With("trials.csv", $"file,plates\nz.c3d,{cell}\n").With("z.c3d", "x");
        Assert.Contains(
            "must be a plate's number",
            RecordingFolder.List(folder.Path).Require()[0].Fault!.Sentence,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("2+1")]
    [InlineData(null)]
    public void Store_KeepsThePlates_WithTheOtherLabels(string? plates)
    {
        var labels = new RecordingLabels("a01", Note: "after\twarm-up", Plates: PlateChoice.Parse(plates));
        Assert.Equal(labels, MeasurementIds.Labels(MeasurementIds.Line(labels)));
    }
}
