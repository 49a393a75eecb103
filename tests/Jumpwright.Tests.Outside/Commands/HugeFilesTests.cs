using System.Text.Json.Nodes;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>Files that are no recordings, of sizes that would fill the memory of the machine.</summary>
public class HugeFilesTests
{
    [Theory]
    [InlineData(2L << 30, "zeros.csv", "too large for a recording of a jump", 32)]
    [InlineData(2L << 30, "zeros.c3d", "too large for a recording of a jump", 32)]
    [InlineData(80L << 20, "zeros.csv", "the file is not text", 32)]
    public async Task Zeros_AreRefused_WithoutMemoryBeyondTheLimit(
        long length,
        string name,
        string part,
        long mostMegabytes
    )
    {
        using var folder = new WorkFolder();
        await using (FileStream sparse = File.Create(folder.At(name)))
        {
            sparse.SetLength(length);
        }

        CommandRun run = await CommandProcess.Within(
            mostMegabytes << 20,
            "measure",
            folder.Path,
            "--json",
            "--jobs",
            "1"
        );

        Assert.Equal(3, run.Exit);
        JsonObject line = Assert.Single(run.Lines);
        Assert.Contains(part, (string)line["reason"]!, StringComparison.Ordinal);
    }
}
