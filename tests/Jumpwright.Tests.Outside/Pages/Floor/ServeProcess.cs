using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Runtime.CompilerServices;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Plans;

namespace Jumpwright.Tests.Outside.Pages.Floor;

/// <summary>
/// The pages in a process of their own, so that it can be killed. The process is this test program again: told by its
/// environment what to serve, it does that before anything else.
/// </summary>
internal sealed class ServeProcess(string folder) : IDisposable
{
    private const string Folder = "JUMPWRIGHT_TEST_SERVE_FOLDER";
    private const string Port = "JUMPWRIGHT_TEST_SERVE_PORT";
    private const string Plans = "JUMPWRIGHT_TEST_SERVE_PLANS";
    private Process? _process;

    public int OnPort { get; } = Free();

    public string Address => $"http://127.0.0.1:{OnPort}";

    /// <summary>Starts it and waits until it answers.</summary>
    /// <param name="plans">Whether it plans the week; a tablet that has its session needs no other.</param>
    public async Task Start(bool plans = false)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList = { typeof(ServeProcess).Assembly.Location },
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        start.Environment[Folder] = folder;
        start.Environment[Port] = OnPort.ToString(CultureInfo.InvariantCulture);
        start.Environment[Plans] = plans ? "yes" : "no";
        _process = Process.Start(start)!;
        string? line = await _process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        Assert.Equal("serving", line);
    }

    /// <summary>Kills it: no chance to end in order.</summary>
    public void Kill()
    {
        if (_process is { } process)
        {
            process.Kill();
            process.WaitForExit();
            process.Dispose();
            _process = null;
        }
    }

    public void Dispose() => Kill();

    private static int Free()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

#pragma warning disable CA2255 // This is a program of tests, not a library; the initializer is how it becomes a server.
    [ModuleInitializer]
    internal static void ServeIfTold()
    {
        string? folder = Environment.GetEnvironmentVariable(Folder);
        string? port = Environment.GetEnvironmentVariable(Port);
        if (folder is null || port is null)
        {
            return;
        }

        using var desk = new FrontDesk(
            OpenedSquad.Kept(folder, null, null, CancellationToken.None).Require(),
            DemoCommand.Day,
            1,
            new SolveBudget { DeterministicTime = 0.3 }
        );
        if (Environment.GetEnvironmentVariable(Plans) == "yes")
        {
            desk.StartPlanning();
        }

        Microsoft.AspNetCore.Builder.WebApplication site = Site.Build(
            desk,
            int.Parse(port, CultureInfo.InvariantCulture)
        );
        site.StartAsync().GetAwaiter().GetResult();
        // A plan made before is there again with the program; who asks for one finds it.
        SpinWait.SpinUntil(() => !desk.IsOpening, TimeSpan.FromSeconds(30));
        Console.WriteLine("serving");
        Console.Out.Flush();
        Thread.Sleep(Timeout.Infinite);
    }
#pragma warning restore CA2255
}
