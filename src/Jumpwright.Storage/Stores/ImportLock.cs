namespace Jumpwright.Storage.Stores;

/// <summary>
/// One import at a time into one file. The lock is the system's own, on a file beside the store, so it ends with the process
/// that holds it however that ends.
/// </summary>
internal sealed class ImportLock : IDisposable
{
    private readonly FileStream? _file;

    private ImportLock(FileStream? file) => _file = file;

    /// <summary>The lock, or null when another import holds it. In memory nothing needs it.</summary>
    public static ImportLock? TryTake(string? storePath)
    {
        if (storePath is null)
        {
            return new ImportLock(null);
        }

        try
        {
            return new ImportLock(
                new FileStream(storePath + ".importing", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None)
            );
        }
        catch (IOException)
        {
            return null;
        }
    }

    public void Dispose() => _file?.Dispose();
}
