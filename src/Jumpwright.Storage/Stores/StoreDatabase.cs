using System.Reflection;
using Jumpwright.Quantities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Jumpwright.Storage.Stores;

/// <summary>
/// Opens the database and brings its tables up to date. The migration runs in one transaction of ours, so that a kill leaves
/// either the old tables or the new ones, and no lock that nobody takes away.
/// </summary>
internal sealed class StoreDatabase : IDisposable
{
    /// <summary>Marks the file as ours in SQLite's header ("Jmpw").</summary>
    private const int ApplicationId = 0x4A6D7077;

    /// <summary>This program's migrations, in their order; asked of the assembly, because asking the mapper builds its model.</summary>
    private static readonly string[] Known =
    [
        .. typeof(StoreDatabase)
            .Assembly.GetTypes()
            .Select(t => t.GetCustomAttribute<MigrationAttribute>(inherit: false)?.Id)
            .OfType<string>()
            .Order(StringComparer.Ordinal),
    ];

    private readonly SqliteConnection? _memory;
    private readonly string _connectionString;
    private readonly Lock _gate = new();

    private StoreDatabase(string connectionString, SqliteConnection? memory, string? path) =>
        (_connectionString, _memory, Path) = (connectionString, memory, path);

    /// <summary>The file; null in memory.</summary>
    public string? Path { get; }

    /// <summary>A database that lives as long as this object.</summary>
    public static StoreDatabase InMemory()
    {
        var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        var database = new StoreDatabase("", connection, null);
        Migrate(connection);
        return database;
    }

    public static Outcome<StoreDatabase> AtPath(string path)
    {
        string full = System.IO.Path.GetFullPath(path);
        try
        {
            if (File.Exists(full) && new FileInfo(full).Length > 0)
            {
                if (Objection(full) is { } objection)
                {
                    return objection;
                }
            }
            else
            {
                CreateFile(full);
            }

            string connectionString = new SqliteConnectionStringBuilder
            {
                DataSource = full,
                Mode = SqliteOpenMode.ReadWrite,
                ForeignKeys = true,
                DefaultTimeout = 30,
            }.ToString();
            var database = new StoreDatabase(connectionString, null, full);
            using SqliteConnection connection = database.OpenFile();
            Run(connection, "PRAGMA journal_mode=WAL;");
            Migrate(connection);
            return database;
        }
        catch (SqliteException e) when (e.SqliteErrorCode == 26)
        {
            return StoreRefusals.NotAStore(path);
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException)
        {
            return StoreRefusals.CannotOpen(path, e.Message.TrimEnd('.'));
        }
    }

    /// <summary>Runs work on a context of its own. In memory there is one connection, so one at a time.</summary>
    public T With<T>(Func<StoreContext, T> work)
    {
        if (_memory is not null)
        {
            lock (_gate)
            {
                using var context = new StoreContext(Options(_memory));
                return work(context);
            }
        }

        using SqliteConnection connection = OpenFile();
        using var own = new StoreContext(Options(connection));
        return work(own);
    }

    /// <summary>Reads from one consistent state; with the write-ahead log it waits for no writer and stops none.</summary>
    public T Read<T>(Func<StoreContext, T> read) =>
        With(context =>
        {
            context.Database.OpenConnection();
            var connection = (SqliteConnection)context.Database.GetDbConnection();
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: true);
            context.Database.UseTransaction(transaction);
            context.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
            T result = read(context);
            context.Database.UseTransaction(null);
            transaction.Rollback();
            return result;
        });

    /// <summary>
    /// The same by plain SQL, without the mapper, whose model takes longer to build than a page may take. The second argument
    /// gives a context on the same state, for the rare case that needs one.
    /// </summary>
    public T Plain<T>(Func<PlainReader, Func<StoreContext>, T> read)
    {
        if (_memory is not null)
        {
            lock (_gate)
            {
                return Plain(_memory, read);
            }
        }

        using SqliteConnection connection = OpenFile();
        return Plain(connection, read);
    }

    private static T Plain<T>(SqliteConnection connection, Func<PlainReader, Func<StoreContext>, T> read)
    {
        using SqliteTransaction transaction = connection.BeginTransaction(deferred: true);
        var mapped = new Lazy<StoreContext>(() =>
        {
            var context = new StoreContext(Options(connection));
            context.Database.UseTransaction(transaction);
            context.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
            return context;
        });
        try
        {
            return read(new PlainReader(connection, transaction), () => mapped.Value);
        }
        finally
        {
            if (mapped.IsValueCreated)
            {
                mapped.Value.Database.UseTransaction(null);
                mapped.Value.Dispose();
            }

            transaction.Rollback();
        }
    }

    /// <summary>Writes everything or nothing.</summary>
    public T Write<T>(Func<StoreContext, T> write) =>
        With(context =>
        {
            using var transaction = context.Database.BeginTransaction(System.Data.IsolationLevel.Serializable);
            T result = write(context);
            context.SaveChanges();
            transaction.Commit();
            return result;
        });

    /// <summary>After an erasure: rewrites the file, so that nothing removed is left in free pages or in the log.</summary>
    public void Compact()
    {
        if (_memory is not null)
        {
            return;
        }

        using SqliteConnection connection = OpenFile();
        Run(connection, "VACUUM;");
        Run(connection, "PRAGMA wal_checkpoint(TRUNCATE);");
    }

    /// <summary>A whole copy as of this moment, while others read and write.</summary>
    public void CopyTo(string path) =>
        With(context =>
        {
            context.Database.OpenConnection();
            var connection = (SqliteConnection)context.Database.GetDbConnection();
            using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "VACUUM INTO $path;";
            command.Parameters.AddWithValue("$path", path);
            command.ExecuteNonQuery();
            return true;
        });

    public void Dispose()
    {
        if (_memory is not null)
        {
            _memory.Dispose();
            return;
        }

        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }

    /// <summary>Why an existing file is not opened; it is read only, never touched.</summary>
    private static Refusal? Objection(string path)
    {
        string connectionString = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadOnly,
            Pooling = false,
        }.ToString();
        using var connection = new SqliteConnection(connectionString);
        connection.Open();
        if (Scalar(connection, "PRAGMA application_id;") != ApplicationId)
        {
            bool untouched = Scalar(connection, "SELECT COUNT(*) FROM sqlite_master;") == 0;
            return untouched ? null : StoreRefusals.NotAStore(path);
        }

        return Applied(connection).Exists(m => !Known.Contains(m)) ? StoreRefusals.Newer(path) : null;
    }

    private static void CreateFile(string path)
    {
        if (System.IO.Path.GetDirectoryName(path) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }

        var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            // Health data: only its owner may read it. SQLite gives its side files the same rights.
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        new FileStream(path, options).Dispose();
    }

    private static void Migrate(SqliteConnection connection)
    {
        if (Applied(connection).Count == Known.Length)
        {
            return;
        }

        using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
        List<string> applied = Applied(connection);
        if (Known.Length > applied.Count)
        {
            using var context = new StoreContext(Options(connection));
            string script = context
                .GetService<IMigrator>()
                .GenerateScript(applied.LastOrDefault(), Known[^1], MigrationsSqlGenerationOptions.NoTransactions);
            Run(connection, script, transaction);
            Run(connection, $"PRAGMA application_id={ApplicationId};", transaction);
        }

        transaction.Commit();
    }

    private static List<string> Applied(SqliteConnection connection)
    {
        var applied = new List<string>();
        if (Scalar(connection, "SELECT COUNT(*) FROM sqlite_master WHERE name = '__EFMigrationsHistory';") == 0)
        {
            return applied;
        }

        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId;";
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            applied.Add(reader.GetString(0));
        }

        return applied;
    }

    private SqliteConnection OpenFile()
    {
        var connection = new SqliteConnection(_connectionString);
        connection.Open();

        // With the write-ahead log, NORMAL loses at most the last imports in a power cut, never the store's soundness.
        Run(connection, "PRAGMA synchronous=NORMAL; PRAGMA secure_delete=ON;");
        return connection;
    }

    private static DbContextOptions<StoreContext> Options(SqliteConnection connection) =>
        new DbContextOptionsBuilder<StoreContext>().UseSqlite(connection).Options;

    private static void Run(SqliteConnection connection, string sql, SqliteTransaction? transaction = null)
    {
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The text is the program's own: pragmas and the migrations' script.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.Transaction = transaction;
        command.ExecuteNonQuery();
    }

    private static long Scalar(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // As above.
        command.CommandText = sql;
#pragma warning restore CA2100
        return Convert.ToInt64(command.ExecuteScalar());
    }
}
