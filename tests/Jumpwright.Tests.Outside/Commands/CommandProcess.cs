using System.Diagnostics;
using System.Globalization;
using Jumpwright.App.Commands;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>
/// One command run in a process of its own whose managed heap may hold so much and no more. Beyond that the runtime
/// ends the process, so the exit code tells whether the command kept within it, whatever other tests do meanwhile.
/// </summary>
internal static class CommandProcess
{
    /// <param name="heapBytes">The most the process's managed heap may hold, in bytes.</param>
    public static async Task<CommandRun> Within(long heapBytes, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(typeof(CommandLine).Assembly.Location);
        foreach (string one in args)
        {
            start.ArgumentList.Add(one);
        }

        start.Environment["DOTNET_GCHeapHardLimit"] = heapBytes.ToString("X", CultureInfo.InvariantCulture);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(cancel);
        Task<string> errors = process.StandardError.ReadToEndAsync(cancel);
        await process.WaitForExitAsync(cancel);
        return new CommandRun(process.ExitCode, await output, await errors);
    }
}
