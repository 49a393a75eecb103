using System.Security.Cryptography;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Tests.Outside.Storage.Stores;

public sealed class StoreInAFileTests : StoreContract
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-").FullName;

    private string Path => System.IO.Path.Combine(_folder, "store.db");

    protected override Store New() => Store.Open(Path, FixedClock.DemoDay).Require();

    protected override void Clean() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Store_ClosedAndOpened_HoldsWhatItHeld()
    {
        using var squad = new SquadOnDisk(4);
        string[] before;
        using (Store store = New())
        {
            store.Import(squad.Path, FakeMeasuring.Measure).Require();
            before = Dump.Rows(store);
        }

        using Store again = New();
        Assert.Equal(before, Dump.Rows(again));
    }

    [Fact]
    public void Store_KeepsAWriteAheadLog()
    {
        using Store store = New();

        Assert.Equal("wal", Ask("PRAGMA journal_mode;"));
    }

    [Fact]
    public void Store_IsReadableByItsOwnerAlone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such bits.");
            return;
        }

        using var squad = new SquadOnDisk(2);
        using Store store = New();
        store.Import(squad.Path, FakeMeasuring.Measure).Require();

        foreach (
            string file in Directory
                .EnumerateFiles(_folder, "store.db*")
                .Where(f => !f.EndsWith(".importing", StringComparison.Ordinal))
        )
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Store_OfANewerVersion_IsRefusedUnharmed()
    {
        New().Dispose();
        Run("INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Later', '99.0.0');");
        byte[] before = SHA256.HashData(File.ReadAllBytes(Path));

        Outcome<Store> opened = Store.Open(Path, FixedClock.DemoDay);

        Assert.False(opened.TryGet(out _, out Refusal? refusal));
        Assert.Contains("was written by a newer version of this program and was left as it is", refusal.Sentence);
        Assert.Equal(before, SHA256.HashData(File.ReadAllBytes(Path)));
    }

    [Fact]
    public void AnotherProgramsDatabase_IsRefusedUnharmed()
    {
        Run("CREATE TABLE songs (title TEXT);");
        byte[] before = SHA256.HashData(File.ReadAllBytes(Path));

        Assert.False(Store.Open(Path, FixedClock.DemoDay).TryGet(out _, out Refusal? refusal));

        Assert.Contains("is no store of this program", refusal.Sentence);
        Assert.Equal(before, SHA256.HashData(File.ReadAllBytes(Path)));
    }

    [Fact]
    public void AFileThatIsNoDatabase_IsRefusedUnharmed()
    {
        File.WriteAllText(
            Path,
            "a letter, not a database, and long enough to hold a header of a hundred bytes. " + new string('x', 200)
        );
        byte[] before = SHA256.HashData(File.ReadAllBytes(Path));

        Assert.False(Store.Open(Path, FixedClock.DemoDay).TryGet(out _, out Refusal? refusal));

        Assert.Contains("is no store of this program", refusal.Sentence);
        Assert.Equal(before, SHA256.HashData(File.ReadAllBytes(Path)));
    }

    [Fact]
    public void Tables_AreThoseThatTheMigrationsMake()
    {
        using Store store = New();

        Assert.False(
            store.Inspect(context => context.Database.HasPendingModelChanges()),
            "The tables' code has changed: dotnet ef migrations add NAME -p src/Jumpwright.Storage -s src/Jumpwright.Storage "
                + "-o Stores/Migrations --namespace Jumpwright.Storage.Stores.Migrations"
        );
    }

    [Fact]
    public void Import_WhileAnotherRuns_IsRefused()
    {
        using var squad = new SquadOnDisk(3);
        using Store first = New();
        using Store second = New();
        Outcome<ImportReport>? during = null;

        first
            .Import(
                squad.Path,
                (bytes, labels) =>
                {
                    lock (squad)
                    {
                        during ??= second.Import(squad.Path, FakeMeasuring.Measure);
                    }

                    return FakeMeasuring.Measure(bytes, labels);
                }
            )
            .Require();

        Assert.False(during!.Value.TryGet(out _, out Refusal? refusal));
        Assert.StartsWith("Another import into this store is running", refusal.Sentence);
    }

    [Fact]
    public async Task Reading_WhileAnImportWrites_SeesTheLastWholeStateAndDoesNotWait()
    {
        using var squad = new SquadOnDisk(6);
        using Store store = New();
        store.Import(squad.Path, FakeMeasuring.Measure).Require();
        using var writing = new SqliteConnection($"Data Source={Path};Pooling=False");
        writing.Open();
        using SqliteTransaction transaction = writing.BeginTransaction(deferred: false);

        StoredSquad read = await Task.Run(() => store.Load().Require()).WaitAsync(TimeSpan.FromSeconds(20));

        Assert.Equal(["Ada", "Ben"], read.Histories.Select(h => h.Athlete.Name));
    }

    [Fact]
    public void Check_OfDamagedBytes_NamesThem()
    {
        using var squad = new SquadOnDisk(2);
        string sha256;
        using (Store store = New())
        {
            store.Import(squad.Path, FakeMeasuring.Measure).Require();
            sha256 = store.Recordings()[0].Sha256!;
        }

        Run($"UPDATE raw SET packed = zeroblob(100) WHERE sha256 = '{sha256}';");

        using Store damaged = New();
        Assert.Contains(sha256, Assert.Single(damaged.Check()));
        Assert.False(damaged.RawBytes(sha256).TryGet(out _, out Refusal? refusal));
        Assert.Contains("are damaged", refusal.Sentence);
    }

    [Fact]
    public void KeptFilesDamaged_StopPlanning_SoThatNoTightenedLimitLoosensUnseen()
    {
        using var squad = new SquadOnDisk(2);
        using (Store store = New())
        {
            store.Import(squad.Path, FakeMeasuring.Measure).Require();
            Assert.DoesNotContain(store.Load().Require().Problems, p => p.Weight == ProblemWeight.StopsPlanning);
        }

        Run(
            "UPDATE raw SET packed = zeroblob(100) WHERE sha256 = (SELECT sha256 FROM squad_file WHERE name = 'squad.yaml');"
        );

        using Store damaged = New();
        Assert.Contains(
            damaged.Load().Require().Problems,
            p => p.Weight == ProblemWeight.StopsPlanning && p.Sentence.Contains("overrides", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Erase_StopsNoPlanning()
    {
        using var squad = new SquadOnDisk(3);
        using Store store = New();
        store.Import(squad.Path, FakeMeasuring.Measure).Require();
        store.Erase("a02").Require();
        Assert.DoesNotContain(store.Load().Require().Problems, p => p.Weight == ProblemWeight.StopsPlanning);
    }

    [Fact]
    public void Erase_LeavesNothingInTheFile()
    {
        using var squad = new SquadOnDisk(3);
        squad.Write("athletes.csv", squad.Read("athletes.csv").Replace("Ben", "Unmistakable"));
        using (Store store = New())
        {
            store.Import(squad.Path, FakeMeasuring.Measure).Require();
            Assert.Contains("Unmistakable", Everything());
            store.Erase("a02").Require();
        }

        Assert.DoesNotContain("Unmistakable", Everything());
    }

    private string Everything() =>
        string.Concat(
            Directory
                .EnumerateFiles(_folder)
                .Select(f =>
                {
                    using var stream = new FileStream(f, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
                    using var reader = new StreamReader(stream, Encoding.Latin1);
                    return reader.ReadToEnd();
                })
        );

    private void Run(string sql) => Ask(sql);

    private string? Ask(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()?.ToString();
    }
}
