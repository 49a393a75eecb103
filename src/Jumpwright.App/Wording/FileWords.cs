namespace Jumpwright.App.Wording;

/// <summary>A recording's file as a page names it: by its name, and by the folder within the squad's where that is not the usual one.</summary>
internal static class FileWords
{
    private const string Usual = "recordings";

    /// <summary>The name, and in brackets the folder where it is another than that of recordings.</summary>
    public static string Of(string file) =>
        Path.GetDirectoryName(file)?.Replace('\\', '/') is { Length: > 0 } folder && folder != Usual
            ? $"{Path.GetFileName(file)} ({folder})"
            : Path.GetFileName(file);
}
