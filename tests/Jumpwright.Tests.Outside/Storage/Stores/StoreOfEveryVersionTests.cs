using System.IO.Compression;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Stores;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>
/// A store that any earlier version wrote opens in this one and holds what it held. Each file was made by that version's
/// migrations, and is never made again. A new migration asks for the file of the version before it: run this class with
/// JUMPWRIGHT_WRITE_STORE=1, which writes the newest one into the source folder.
/// </summary>
public sealed class StoreOfEveryVersionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-versions-").FullName;

    public static TheoryData<string> Kept =>
        [.. Directory.EnumerateFiles(Data, "*.db.gz").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    private static string Data => Path.Combine(AppContext.BaseDirectory, "Data", "stores");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void EveryMigration_HasItsKeptStore()
    {
        string[] migrations = Migrations();
        if (Environment.GetEnvironmentVariable("JUMPWRIGHT_WRITE_STORE") == "1")
        {
            foreach (string migration in migrations.Where(m => !File.Exists(Path.Combine(Source(), m + ".db.gz"))))
            {
                WriteStore(migration);
            }
        }

        Assert.Equal(migrations.Select(m => m + ".db.gz"), Kept.Select(k => k.Data));
    }

    [Theory]
    [MemberData(nameof(Kept))]
    public void Store_OfAnEarlierVersion_OpensInThisOne_AndHoldsWhatItHeld(string kept)
    {
        string path = Unpacked(kept);
        string migration = kept[..^".db.gz".Length];
        Assert.Equal(migration, Ask(path, "SELECT MAX(MigrationId) FROM __EFMigrationsHistory;"));

        using (Store store = Store.Open(path, FixedClock.DemoDay).Require())
        {
            Assert.Empty(store.Check());
            StoredSquad squad = store.Load().Require();
            Assert.Equal(["Ada", "Ben"], squad.Histories.Select(h => h.Athlete.Name));
            Assert.Equal(6, squad.Recordings.Length);
            Assert.Equal([8, 4], squad.Histories.Select(h => h.Trials.Length));
            Assert.Equal("knee", Assert.Single(squad.Histories[1].Symptoms).Site.ToString(), ignoreCase: true);
            Assert.Single(squad.Histories[1].Restrictions);
            Assert.Single(squad.Histories[0].Completed);
            Assert.Single(store.Plans());
            int had = store.Journal().Length;
            Assert.Equal(migration.EndsWith("_Start", StringComparison.Ordinal) ? 0 : 1, had);

            store.Append([Entry("00000000-0000-4000-8000-000000000002")]);
            Assert.Equal(had + 1, store.Journal().Length);
        }

        using Store again = Store.Open(path, FixedClock.DemoDay).Require();
        Assert.Empty(again.Check());
        Assert.Equal(Migrations()[^1], Ask(path, "SELECT MAX(MigrationId) FROM __EFMigrationsHistory;"));
    }

    [Theory]
    [MemberData(nameof(Kept))]
    public void Store_OfAnEarlierVersion_BackedUpAndRestored_HasTheSameRows(string kept)
    {
        using Store store = Store.Open(Unpacked(kept), FixedClock.DemoDay).Require();
        string archive = Path.Combine(_folder, "squad.zip");
        using (FileStream to = File.Create(archive))
        {
            Archive.Write(null, store, to);
        }

        string restored = Path.Combine(_folder, "restored");
        Archive.Restore(archive, restored).Require();

        using Store back = Store.Open(Path.Combine(restored, OpenedSquad.StoreInFolder), FixedClock.DemoDay).Require();
        Assert.Equal(Dump.Rows(store), Dump.Rows(back));
    }

    private static JournalEntry Entry(string id) =>
        new(
            id,
            "consent",
            "a01",
            null,
            Instant.FromUtc(2027, 1, 4, 9, 0),
            "kept store",
            "{\"by\":\"A parent\",\"given\":true}"
        );

    private string Unpacked(string kept)
    {
        string path = Path.Combine(_folder, "store.db");
        using FileStream packed = File.OpenRead(Path.Combine(Data, kept));
        using var unpacking = new GZipStream(packed, CompressionMode.Decompress);
        using FileStream to = File.Create(path);
        unpacking.CopyTo(to);
        return path;
    }

    private string[] Migrations()
    {
        using Store store = Store.InMemory(FixedClock.DemoDay);
        return store.Inspect(context => context.Database.GetMigrations().ToArray());
    }

    /// <summary>Tables as that version's migrations make them, with the rows of a small squad.</summary>
    private void WriteStore(string migration)
    {
        string full = Path.Combine(_folder, "full.db");
        using (var squad = new SquadOnDisk(6))
        using (Store store = Store.Open(full, FixedClock.DemoDay).Require())
        {
            store.Import(squad.Path, FakeMeasuring.Measure).Require();
            store.KeepPlan(new LocalDate(2027, 1, 4), 1, "{\"from\":\"2027-01-04\"}");
            store.Append([Entry("00000000-0000-4000-8000-000000000001")]);
        }

        string path = Path.Combine(_folder, "old.db");
        File.Delete(path);
        using (Store memory = Store.InMemory(FixedClock.DemoDay))
        {
            string script = memory.Inspect(context =>
                context
                    .GetService<IMigrator>()
                    .GenerateScript(null, migration, MigrationsSqlGenerationOptions.NoTransactions)
            );
            Ask(path, script);
        }

        Ask(path, $"PRAGMA application_id={Ask(full, "PRAGMA application_id;")};");
        using (var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False"))
        {
            connection.Open();
            using SqliteCommand tables = connection.CreateCommand();
            tables.CommandText =
                "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\';";
            var names = new List<string>();
            using (SqliteDataReader reader = tables.ExecuteReader())
            {
                while (reader.Read())
                {
                    names.Add(reader.GetString(0));
                }
            }

            string copy = string.Concat(names.Select(n => $"INSERT INTO \"{n}\" SELECT * FROM full.\"{n}\";"));
            tables.CommandText = $"ATTACH '{full}' AS full; {copy} DETACH full;";
            tables.ExecuteNonQuery();
        }

        Ask(path, "VACUUM;");
        Directory.CreateDirectory(Source());
        using FileStream to = File.Create(Path.Combine(Source(), migration + ".db.gz"));
        using var packing = new GZipStream(to, CompressionLevel.SmallestSize);
        packing.Write(File.ReadAllBytes(path));
    }

    /// <summary>The source folder of the kept stores, found upwards from the program.</summary>
    private static string Source()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Jumpwright.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return Path.Combine(at!, "tests", "Jumpwright.Tests.Outside", "Data", "stores");
    }

    private static string? Ask(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()?.ToString();
    }
}
