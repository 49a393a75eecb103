namespace Jumpwright.Storage.Folders;

/// <summary>Reads a file whole, or says why not.</summary>
internal static class FileBytes
{
    /// <summary>No table that people keep by hand is larger; a larger file is a slip.</summary>
    public const long MostBytes = 64L * 1024 * 1024;

    public static byte[]? TryRead(string path, string name, ProblemList problems)
    {
        try
        {
            if (new FileInfo(path).Length > MostBytes)
            {
                problems.Add(
                    name,
                    null,
                    ProblemWeight.StopsPlanning,
                    "is larger than 64 MiB, no table of a squad is: check the file."
                );
                return null;
            }

            return File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problems.Add(
                name,
                null,
                ProblemWeight.StopsPlanning,
                $"can't be opened ({e.GetType().Name}): close it in other programs and check its permissions."
            );
            return null;
        }
    }
}
