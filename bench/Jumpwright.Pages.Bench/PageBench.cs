using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Pages.Bench;

/// <summary>
/// Starts the program as its users do, in a process of its own, and asks it for every page, so many requests at once from this
/// process on the same cores. Beside it stands the time of what the page needs from the database, asked for by as many readers
/// at once.
/// </summary>
internal static class PageBench
{
    /// <param name="folder">The squad folder that <see cref="LargeSquad"/> made.</param>
    /// <param name="program">The program to start: an executable or a dll; null takes the one that was built beside this bench.</param>
    /// <param name="requests">How many requests a page.</param>
    /// <param name="atOnce">How many of them at once.</param>
    /// <param name="plan">Whether a week is planned first.</param>
    /// <param name="to">Where the table goes.</param>
    /// <param name="only">Only pages whose name begins so; null: all.</param>
    public static async Task Run(
        string folder,
        string? program,
        int requests,
        int atOnce,
        bool plan,
        TextWriter to,
        string? only = null
    )
    {
        var clock = Stopwatch.StartNew();
        using Process served = Start(folder, program, out string address);
        try
        {
            using var client = new HttpClient(
                new SocketsHttpHandler { MaxConnectionsPerServer = atOnce, UseProxy = false }
            )
            {
                BaseAddress = new Uri(address),
                Timeout = TimeSpan.FromMinutes(10),
            };
            await FirstAnswer(client, served);
            double first = clock.Elapsed.TotalSeconds;
            to.WriteLine(
                Invariant(
                    $"first page usable {first:0.00} s after the start of the process, {Worked(served):0.00} s of processor time; load {Load()}"
                )
            );
            await Read(client);
            to.WriteLine(
                Invariant(
                    $"everybody read after {clock.Elapsed.TotalSeconds:0.0} s, {Worked(served):0.0} s of processor time"
                )
            );
            string home = await client.GetStringAsync(new Uri("/", UriKind.Relative));
            to.WriteLine(Invariant($"squad page: {home.Length / 1024} kB"));
            await Plan(client, plan, to);
            await Quiet(served);
            to.WriteLine(
                Invariant($"working set {Process.GetProcessById(served.Id).WorkingSet64 / 1e6:0} MB; load {Load()}")
            );
            using Store store = Store.Open(Path.Combine(folder, "jumpwright.db"), TimeProvider.System).Require();
            string[] ids = [.. Enumerable.Range(1, 300).Select(i => $"p{i:000}")];
            StoredRecording[] plates =
            [
                .. store.Recordings().Where(r => r.File.EndsWith("-plate.csv", StringComparison.Ordinal)),
            ];
            string session = "2027-01-04-pm";
            Page[] all =
            [
                new("squad", i => "/", null),
                new("squad, found", i => $"/?find=athlete+{1 + (i % 300)}&first=decide", null),
                new(
                    "athlete",
                    i => "/athletes/" + ids[i % ids.Length],
                    i => store.TrialsOf(ids[i % ids.Length]).Length
                ),
                new("ladder", i => $"/athletes/{ids[i % ids.Length]}/ladder", null),
                new("measures", i => $"/athletes/{ids[i % ids.Length]}/measures", null),
                new(
                    "trial",
                    i => $"/trials/{plates[i % plates.Length].Sha256}/1",
                    i => store.RawBytes(plates[i % plates.Length].Sha256!).Require().Length
                ),
                new("week", i => "/week", null),
                new("card", i => $"/cards/{session}/{ids[i % ids.Length]}", null),
                new("card, PDF", i => $"/cards/{session}/{ids[i % ids.Length]}.pdf", null),
                new("why", i => $"/cards/{session}/{ids[i % ids.Length]}/why", null),
                new("why not", i => $"/cards/{session}/{ids[i % ids.Length]}/why?not=depth-jump", null),
                new("said", i => $"/athletes/{ids[i % ids.Length]}/said", null),
                new("recordings", i => $"/athletes/{ids[i % ids.Length]}/recordings", null),
                new(
                    "roll called",
                    i =>
                        $"/week/sessions/{session}?called=yes&minutes={20 + (i % 20)}&"
                        + string.Join('&', ids.Where((_, k) => (k + i) % 3 > 0).Select(k => "here=" + k)),
                    null
                ),
                new("roll call", i => $"/week/sessions/{session}", null),
                new("floor", i => "/floor/", null),
                new("floor's session", i => $"/floor/sessions/{session}", null),
                new("floor's log", i => $"/floor/sessions/{session}/log", i => store.Journal().Length),
                new("coach's sheet, PDF", i => $"/sheets/{session}.pdf", null),
                new("API, roll", i => "/api/athletes", null),
                new(
                    "API, trials",
                    i => $"/api/athletes/{ids[i % ids.Length]}/trials",
                    i => store.TrialsOf(ids[i % ids.Length]).Length
                ),
                new(
                    "API, FHIR",
                    i => $"/api/athletes/{ids[i % ids.Length]}/fhir",
                    i => store.TrialsOf(ids[i % ids.Length]).Length
                ),
                new("API, report", i => $"/api/athletes/{ids[i % ids.Length]}/report", null),
                new("API, plan", i => "/api/plan", null),
                new("API, exercises", i => "/api/catalogue", null),
                new("done", i => "/done", i => store.Journal().Length),
                new("import", i => "/import", null),
                new("refused", i => "/refused", null),
                new("exercises", i => "/exercises", null),
                new("kit", i => "/kit", null),
                new("share", i => "/share", null),
                new("settings", i => "/settings", null),
                new("rules", i => "/settings/rules", null),
                new("set up", i => "/set-up", null),
                new("export, CSV", i => "/api/export/measures.csv", i => Everything(store, ids)) { Few = true },
                new("export, Parquet", i => "/api/export/measures.parquet", i => Everything(store, ids)) { Few = true },
            ];
            Page[] pages = [.. all.Where(p => only is null || p.Name.StartsWith(only, StringComparison.Ordinal))];
            to.WriteLine();
            to.WriteLine(
                "| page | answers | p50 ms | p95 ms | processor ms a request | queries alone, p95 ms | kB | script and style kB |"
            );
            to.WriteLine("|---|---|---|---|---|---|---|---|");
            bool failed = false;
            foreach (Page page in pages)
            {
                // A whole export is a file of many megabytes that one person asks for now and then: one after the other.
                (int asked, int together) = page.Few ? (3, 1) : (requests, atOnce);
                await Asked(client, page, together, together);
                double before = Worked(served);
                (double[] times, string answers, int length) = await Asked(client, page, asked, together);
                double each = 1000 * (Worked(served) - before) / asked;
                failed |= answers != Invariant($"{asked}×200");
                string queries = page.Query is { } query
                    ? Invariant($"{At(Queried(query, asked, together), 0.95):0.0}")
                    : "none";
                int drawn = await Drawn(client, page.Path(0));
                to.WriteLine(
                    Invariant(
                        $"| {page.Name} | {answers} | {At(times, 0.5):0.0} | {At(times, 0.95):0.0} | {each:0.0} | {queries} | {length / 1024.0:0} | {drawn / 1024.0:0} |"
                    )
                );
            }

            to.WriteLine();
            to.WriteLine(Invariant($"load at the end {Load()}"));
            if (failed)
            {
                to.WriteLine("Some answers were not 200: the times of those pages say nothing about them.");
            }
        }
        finally
        {
            served.Kill();
            await served.WaitForExitAsync();
        }
    }

    private static long Everything(Store store, string[] ids) => ids.Sum(id => (long)store.TrialsOf(id).Length);

    private sealed record Page(string Name, Func<int, string> Path, Func<int, long>? Query)
    {
        /// <summary>Whether it is asked for three times, one after the other.</summary>
        public bool Few { get; init; }
    }

    /// <summary>Starts the program, which serves the folder at the address.</summary>
    internal static Process Start(string folder, string? program, out string address)
    {
        int port = Free();
        address = $"http://127.0.0.1:{port}";
        program ??= Path.GetFullPath(
            Path.Combine(AppContext.BaseDirectory, "..", "..", "Jumpwright.App", "release", "Jumpwright.App.dll")
        );
        bool isLibrary = program.EndsWith(".dll", StringComparison.OrdinalIgnoreCase);
        string[] serve = ["serve", folder, "--from", "2027-01-04", "--port", $"{port}"];
        Process served = Process.Start(
            new ProcessStartInfo(isLibrary ? "dotnet" : program, isLibrary ? [program, .. serve] : serve)
            {
                UseShellExecute = false,
                RedirectStandardError = true,
                RedirectStandardOutput = true,
            }
        )!;
        served.ErrorDataReceived += (_, _) => { };
        served.OutputDataReceived += (_, _) => { };
        served.BeginErrorReadLine();
        served.BeginOutputReadLine();
        return served;
    }

    internal static async Task FirstAnswer(HttpClient client, Process served)
    {
        while (true)
        {
            try
            {
                using HttpResponseMessage answer = await client.GetAsync(new Uri("/", UriKind.Relative));
                if (answer.IsSuccessStatusCode && (await answer.Content.ReadAsStringAsync()).Contains("</html>"))
                {
                    return;
                }
            }
            catch (HttpRequestException) when (!served.HasExited)
            {
                await Task.Delay(5);
            }
        }
    }

    /// <summary>Processor time of the program so far, s: what other work on the machine does not change.</summary>
    internal static double Worked(Process served)
    {
        served.Refresh();
        return served.TotalProcessorTime.TotalSeconds;
    }

    /// <summary>Waits until the roll says of nobody that they are still being read, nor that recordings are looked through.</summary>
    private static async Task Read(HttpClient client)
    {
        while ((await client.GetStringAsync(new Uri("/", UriKind.Relative))).Contains("data-reading"))
        {
            await Task.Delay(100);
        }
    }

    /// <summary>Waits until the program does nothing by itself any more.</summary>
    private static async Task Quiet(Process served)
    {
        for (double before = -1, now = Worked(served); now - before > 0.05; (before, now) = (now, Worked(served)))
        {
            await Task.Delay(1000);
        }
    }

    /// <summary>Waits for the plan of the first week, or ends the search, so that it takes no core from the pages.</summary>
    private static async Task Plan(HttpClient client, bool wait, TextWriter to)
    {
        if (!wait)
        {
            using HttpResponseMessage stopped = await client.PostAsync(new Uri("/week/stop", UriKind.Relative), null);
        }

        var clock = Stopwatch.StartNew();
        while ((await client.GetStringAsync(new Uri("/week/state", UriKind.Relative))).Contains("\"planning\":true"))
        {
            await Task.Delay(200);
        }

        to.WriteLine(Invariant($"planning {(wait ? "took" : "ended after")} {clock.Elapsed.TotalSeconds:0} s"));
    }

    private static async Task<(double[] Milliseconds, string Answers, int Length)> Asked(
        HttpClient client,
        Page page,
        int requests,
        int atOnce
    )
    {
        double[] times = new double[requests];
        var codes = new HttpStatusCode[requests];
        int length = 0;
        await Parallel.ForAsync(
            0,
            requests,
            new ParallelOptions { MaxDegreeOfParallelism = atOnce },
            async (i, cancel) =>
            {
                long from = Stopwatch.GetTimestamp();
                using HttpResponseMessage answer = await client.GetAsync(
                    new Uri(page.Path(i), UriKind.Relative),
                    cancel
                );
                byte[] body = await answer.Content.ReadAsByteArrayAsync(cancel);
                times[i] = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
                codes[i] = answer.StatusCode;
                length = Math.Max(length, body.Length);
            }
        );
        return (times, string.Join(" ", codes.CountBy(c => (int)c).Select(c => $"{c.Value}×{c.Key}")), length);
    }

    private static double[] Queried(Func<int, long> query, int requests, int atOnce)
    {
        double[] times = new double[requests];
        Thread[] readers =
        [
            .. Enumerable
                .Range(0, atOnce)
                .Select(r => new Thread(() =>
                {
                    for (int i = r; i < requests; i += atOnce)
                    {
                        long from = Stopwatch.GetTimestamp();
                        query(i);
                        times[i] = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
                    }
                })),
        ];
        Array.ForEach(readers, r => r.Start());
        Array.ForEach(readers, r => r.Join());
        return times;
    }

    /// <summary>Bytes of the script and style that a page names.</summary>
    private static async Task<int> Drawn(HttpClient client, string path)
    {
        using HttpResponseMessage answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        string html = await answer.Content.ReadAsStringAsync();
        int bytes = 0;
        foreach (
            string name in System
                .Text.RegularExpressions.Regex.Matches(html, "(?:src|href)=\"([^\"]+\\.(?:js|css))\"")
                .Select(m => m.Groups[1].Value)
                .Distinct()
        )
        {
            Uri from = new(new Uri(client.BaseAddress!, path), name);
            bytes += (await client.GetByteArrayAsync(from)).Length;
        }

        return bytes;
    }

    private static double At(double[] times, double share)
    {
        double[] sorted = [.. times.Order()];
        return sorted[Math.Clamp((int)Math.Ceiling(share * sorted.Length) - 1, 0, sorted.Length - 1)];
    }

    internal static string Load() =>
        File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";

    private static int Free()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
