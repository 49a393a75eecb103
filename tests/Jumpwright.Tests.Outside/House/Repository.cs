namespace Jumpwright.Tests.Outside.House;

/// <summary>The checkout that the tests were built from, found by walking up from the test program.</summary>
public static class Repository
{
    private static readonly Lazy<string> Found = new(() =>
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Jumpwright.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException(
            "The tests must run inside a checkout (Jumpwright.slnx not found above them)."
        );
    });

    public static string Root => Found.Value;

    /// <summary>A file's text.</summary>
    public static string Read(string relative) => File.ReadAllText(At(relative));

    public static string At(params string[] relative) => Path.Combine([Root, .. relative]);

    /// <summary>The folder of shared references beside the checkout, or null: the product must work without it.</summary>
    public static string? Shared => Directory.Exists(At("..", "shared")) ? Path.GetFullPath(At("..", "shared")) : null;
}
