using Jumpwright.App.Commands;
using Jumpwright.Tests.Outside.Paper;

namespace Jumpwright.Tests.Outside.Demo;

/// <summary>One run of <c>jumpwright demo --no-serve</c> into a folder of its own, shared by all tests that look at it.</summary>
public sealed class DemoRun : IAsyncLifetime
{
    private readonly Lazy<IReadOnlyList<CardText>> _cards;

    public DemoRun() =>
        _cards = new(() =>
            [
                .. Directory
                    .EnumerateFiles(CardsFolder, "*.pdf")
                    .Order(StringComparer.Ordinal)
                    .Select(f => CardText.Read(File.ReadAllBytes(f)))
                    .Where(c => !c.Says("Coach's sheet:")),
            ]
        );

    public string Folder { get; } = Directory.CreateTempSubdirectory("jumpwright-demo-").FullName;

    public string CardsFolder => Path.Combine(Folder, "cards");

    public int ExitCode { get; private set; } = -1;

    public string Output { get; private set; } = "";

    public string Errors { get; private set; } = "";

    /// <summary>Every athlete's card, read back from its PDF; coach's sheets are not among them.</summary>
    internal IReadOnlyList<CardText> Cards => _cards.Value;

    public async ValueTask InitializeAsync()
    {
        (ExitCode, Output, Errors) = await Run(Folder);
        Assert.True(ExitCode == 0, Errors);
    }

    public ValueTask DisposeAsync()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>The command itself, in this process.</summary>
    internal static async Task<(int Exit, string Output, string Errors)> Run(string folder)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, errors, ShowsProgress: false);
        int exit = await CommandLine.RunAsync(["demo", "--no-serve", "--out", folder], terminal);
        return (exit, output.ToString(), errors.ToString());
    }
}
