using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using Microsoft.AspNetCore.Builder;

namespace Jumpwright.Pages.Bench;

/// <summary>
/// Processor time and methods compiled of each step from nothing to the first page, one after the other in this process. Run
/// it in a fresh process each time: what was compiled once costs nothing the second time.
/// </summary>
internal static class StartBench
{
    public static async Task Run(string folder, TextWriter to)
    {
        to.WriteLine("| step | processor ms | ms | methods compiled |");
        to.WriteLine("|---|---|---|---|");
        using Terminal terminal = Terminal.OfThisProcess();
        await Time("command line", to, () => Task.FromResult(CommandLine.Root(terminal).Parse(["serve", folder])));
        await Time("the exercises", to, () => Task.Run(() => Catalogue.Standard));
        string file = Path.Combine(folder, OpenedSquad.StoreInFolder);
        using (
            Store store = await Time(
                "open the store",
                to,
                () => Task.Run(() => Store.Open(file, TimeProvider.System).Require())
            )
        )
        {
            await Time("are its tables the folder's", to, () => Task.Run(() => store.KnowsTablesOf(folder)));
            await Time("read its outline", to, () => Task.Run(() => store.Outline()));
            await Time("read its journal", to, () => Task.Run(() => store.Journal()));
        }

        OpenedSquad opened = await Time(
            "open the squad, once more",
            to,
            () => Task.Run(() => OpenedSquad.AtOnce(folder, null, CancellationToken.None).Require())
        );
        await Time(
            "read and work out everybody",
            to,
            () =>
                Task.Run(() =>
                {
                    foreach (
                        AthleteLeaf leaf in Bookkeeping.Leaves(
                            opened.Material,
                            opened.Material.Catalogue,
                            LargeSquad.Day
                        )
                    )
                    {
                        leaf.WorkOut();
                    }

                    return true;
                })
        );
        using FrontDesk desk = await Time("desk", to, () => Task.FromResult(new FrontDesk(opened, LargeSquad.Day, 1)));
        WebApplication site = await Time("build the site", to, () => Task.FromResult(Site.Build(desk, 0)));
        await Time("start it", to, () => site.StartAsync().ContinueWith(_ => true, TaskScheduler.Default));
        using var client = new HttpClient(new SocketsHttpHandler { UseProxy = false });
        await Time("first page, its asking in it", to, () => client.GetStringAsync(new Uri(site.Urls.First())));
        await Time("the same again", to, () => client.GetStringAsync(new Uri(site.Urls.First())));
        await site.DisposeAsync();
    }

    private static async Task<T> Time<T>(string step, TextWriter to, Func<Task<T>> work)
    {
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        long compiled = JitInfo.GetCompiledMethodCount();
        long from = Stopwatch.GetTimestamp();
        T made = await work();
        TimeSpan clock = Stopwatch.GetElapsedTime(from);
        TimeSpan took = Process.GetCurrentProcess().TotalProcessorTime - before;
        to.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {step} | {took.TotalMilliseconds:0} | {clock.TotalMilliseconds:0} | {JitInfo.GetCompiledMethodCount() - compiled} |"
            )
        );
        return made;
    }
}
