namespace Jumpwright.Storage.Folders;

/// <summary>Writes a file at once.</summary>
public static class WholeFile
{
    /// <summary>Written beside it and moved over it: a kill leaves the old file or the new one, never half of it.</summary>
    /// <exception cref="IOException">It can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> bytes)
    {
        string beside = path + ".new";
        File.WriteAllBytes(beside, bytes);
        File.Move(beside, path, overwrite: true);
    }
}
