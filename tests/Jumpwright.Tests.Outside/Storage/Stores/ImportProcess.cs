using System.Diagnostics;
using System.Runtime.CompilerServices;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>
/// An import in a process of its own, so that it can be killed. The process is this test program again: told by its
/// environment what to import, it does that before anything else and ends.
/// </summary>
internal static class ImportProcess
{
    private const string Folder = "JUMPWRIGHT_TEST_IMPORT_FOLDER";
    private const string Database = "JUMPWRIGHT_TEST_IMPORT_STORE";

    /// <summary>Starts the import (measured by the core); it prints <c>begin</c> when it begins, then how many recordings it has stored.</summary>
    public static Process Start(string folder, string database)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList = { typeof(ImportProcess).Assembly.Location },
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment[Folder] = folder;
        start.Environment[Database] = database;
        return Process.Start(start)!;
    }

#pragma warning disable CA2255 // This is a program of tests, not a library; the initializer is how it becomes an importer.
    [ModuleInitializer]
    internal static void ImportIfTold()
    {
        string? folder = Environment.GetEnvironmentVariable(Folder);
        string? database = Environment.GetEnvironmentVariable(Database);
        if (folder is null || database is null)
        {
            return;
        }

        Console.WriteLine("begin");
        Console.Out.Flush();
        using Store store = Store.Open(database, FixedClock.DemoDay).Require();
        store.Import(folder, progress: new Printed()).Require();
        Console.WriteLine("end");
        Environment.Exit(0);
    }
#pragma warning restore CA2255

    private sealed class Printed : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value)
        {
            Console.WriteLine(value.Done);
            Console.Out.Flush();
        }
    }
}
