using System.Diagnostics;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>An import may be killed at any moment (issue 2): another import then leaves exactly the rows of one clean import.</summary>
public sealed class ImportKilledTests : IDisposable
{
    private const int Recordings = 40;
    private readonly SquadOnDisk _squad = new(Recordings);
    private readonly string _stores = Directory.CreateTempSubdirectory("jumpwright-").FullName;

    public void Dispose()
    {
        _squad.Dispose();
        Directory.Delete(_stores, recursive: true);
    }

    [Fact]
    public async Task Import_KilledAtTwentyMomentsAndRunAgain_LeavesExactlyTheRowsOfOneCleanImport()
    {
        (string[] clean, double beforeMs, double storingMs) = await CleanImport();
        Assert.Equal(Recordings, clean.Count(r => r.StartsWith("recording|", StringComparison.Ordinal)));
        Assert.Contains(clean, r => r.StartsWith("measure|", StringComparison.Ordinal));
        var random = new Random(20270104);
        int halfDone = 0;

        for (int kill = 0; kill < 20; kill++)
        {
            // Four kills before the first recording is stored (tables, migration), the others after a random one, a random
            // part of the time between two of them later: in measuring, in a transaction, or between two.
            int stored = kill < 4 ? -1 : random.Next(Recordings);
            double afterMs = random.NextDouble() * (stored < 0 ? beforeMs : 2 * storingMs / Recordings);
            string path = Path.Combine(_stores, $"killed-{kill}.db");
            await ImportAndKill(path, stored, afterMs);

            using Store store = Store.Open(path, FixedClock.DemoDay).Require();
            halfDone += store.Recordings().Length is > 0 and < Recordings ? 1 : 0;
            Assert.Empty(store.Check());
            store.Import(_squad.Path).Require();

            Assert.Equal(clean, Dump.Rows(store));
            Assert.Empty(store.Check());
        }

        // The test has to have done what it says.
        Assert.True(halfDone >= 5, $"Only {halfDone} of 20 kills came between the first recording and the last.");
    }

    [Fact]
    public async Task Import_KilledAgainAndAgainOnOneStore_IsCompletedByTheLastToTheRowsOfOneCleanImport()
    {
        (string[] clean, _, _) = await CleanImport();
        string path = Path.Combine(_stores, "again.db");
        foreach (int stored in new[] { -1, 3, 12, 13, 30 })
        {
            await ImportAndKill(path, stored, 2);
        }

        using Store store = Store.Open(path, FixedClock.DemoDay).Require();
        store.Import(_squad.Path).Require();

        Assert.Equal(clean, Dump.Rows(store));
    }

    /// <summary>The rows, the time until storing began, and the time that storing took.</summary>
    private async Task<(string[] Rows, double BeforeMs, double StoringMs)> CleanImport()
    {
        string path = Path.Combine(_stores, "clean.db");
        using Process process = ImportProcess.Start(_squad.Path, path);
        Assert.Equal("begin", await Line(process));
        var watch = Stopwatch.StartNew();
        Assert.Equal("0", await Line(process));
        double before = watch.Elapsed.TotalMilliseconds;
        while (await Line(process) is { } line && line != "end")
        {
            Assert.True(int.TryParse(line, out _), line);
        }

        double whole = watch.Elapsed.TotalMilliseconds;
        await Ended(process);
        Assert.Equal(0, process.ExitCode);
        using Store store = Store.Open(path, FixedClock.DemoDay).Require();
        return (Dump.Rows(store), before, whole - before);
    }

    /// <summary>Kills the import some time after it has stored so many recordings; -1: after it began.</summary>
    private async Task ImportAndKill(string path, int stored, double afterMs)
    {
        using Process process = ImportProcess.Start(_squad.Path, path);
        Assert.Equal("begin", await Line(process));
        while (stored >= 0 && await Line(process) is { } line && int.TryParse(line, out int done) && done < stored) { }

        await Task.Delay(TimeSpan.FromMilliseconds(afterMs));
        process.Kill();
        await Ended(process);
    }

    private static Task<string?> Line(Process process) =>
        process.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60));

    private static Task Ended(Process process) => process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(60));
}
