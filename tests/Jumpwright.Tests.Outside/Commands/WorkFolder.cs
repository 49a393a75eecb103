namespace Jumpwright.Tests.Outside.Commands;

/// <summary>A folder for one test, gone afterwards.</summary>
internal sealed class WorkFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("jumpwright-test-").FullName;

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    public WorkFolder With(string relative, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(relative))!);
        File.WriteAllText(At(relative), text);
        return this;
    }

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Path, recursive: true);
    }
}
