using System.Diagnostics;
using System.Globalization;

namespace Jumpwright.Pages.Bench;

/// <summary>Starts the program several times, each time until its first page is whole, and ends it again.</summary>
internal static class FirstBench
{
    public static async Task Run(string folder, string? program, int times, TextWriter to)
    {
        to.WriteLine("| start | s on the clock | s of processor time | load |");
        to.WriteLine("|---|---|---|---|");
        for (int i = 0; i <= times; i++)
        {
            var clock = Stopwatch.StartNew();
            using Process served = PageBench.Start(folder, program, out string address);
            try
            {
                using var client = new HttpClient(new SocketsHttpHandler { UseProxy = false })
                {
                    BaseAddress = new Uri(address),
                };
                await PageBench.FirstAnswer(client, served);
                double first = clock.Elapsed.TotalSeconds;
                // The first warms the system's cache of files, and this process.
                string name = i == 0 ? "before" : i.ToString(CultureInfo.InvariantCulture);
                to.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"| {name} | {first:0.00} | {PageBench.Worked(served):0.00} | {PageBench.Load()} |"
                    )
                );
            }
            finally
            {
                served.Kill(entireProcessTree: true);
                await served.WaitForExitAsync();
            }
        }
    }
}
