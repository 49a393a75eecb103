namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Any Chromium on the path.</summary>
internal static class Chromium
{
    private static readonly string[] Names =
    [
        "chromium",
        "chromium-browser",
        "google-chrome",
        "google-chrome-stable",
        "chrome.exe",
        "msedge.exe",
    ];

    /// <summary>Its program, or null.</summary>
    public static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
}
