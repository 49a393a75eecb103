using System.CommandLine;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.App.Pages.Routes;
using Jumpwright.App.Sharing;
using Jumpwright.Exercises;
using Jumpwright.Storage.Folders;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright serve SQUAD</c>: the pages on 127.0.0.1 until Ctrl-C.</summary>
internal sealed class ServeCommand : ITaughtCommand
{
    public const int DefaultPort = 5175;

    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright serve club", "shows the squad as of today, and plans one week from today"),
                ("jumpwright serve --new club", "begins a squad in ./club, which may hold recordings already"),
                ("jumpwright serve club.db --on 2027-01-04 --port 8080", "shows a store as seen from that day"),
            ],
            [
                (ExitCodes.Done, "ended by Ctrl-C"),
                (ExitCodes.Usage, "not understood, no SQUAD there, or the port is taken"),
                (ExitCodes.SomeRefused, "the squad can't be read; the sentence says why and what to do"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var squad = new Argument<string>("SQUAD")
        {
            Description = "A squad folder, or a store made by import.",
            DefaultValueFactory = _ => ImportCommand.DefaultStore,
        };
        Option<LocalDate> on = SquadArgument.Day("--on", "--from");
        on.DefaultValueFactory = _ => Today();
        on.Description =
            "Day the pages are seen from, for example 2027-01-04; today if left out. What lies after it is not counted, and every page says so.";
        Option<int> weeks = SquadArgument.Weeks(required: false);
        Option<int> port = Port();
        var share = new Option<bool>("--share")
        {
            Description =
                "Let paired tablets and phones in this network in, over TLS. Without it only this machine sees anything.",
        };
        Option<int> sharePort = Port("--share-port", DefaultPort + 1, "Port for other devices, with --share");
        var fresh = new Option<bool>("--new")
        {
            Description =
                "Begin a squad in that folder (which may hold recordings, or not be there yet): athletes, times and kit are then set up in the pages.",
        };
        var command = new Command(
            "serve",
            "Shows squad, athletes, week, floor and cards as pages on this machine only (127.0.0.1), until Ctrl-C. "
                + "What is written in them is kept in jumpwright.db inside the squad folder."
        )
        {
            squad,
            on,
            weeks,
            port,
            share,
            sharePort,
            fresh,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                string path = parsed.GetRequiredValue(squad);
                if (parsed.GetValue(fresh))
                {
                    SquadWriter.Begin(path, Path.GetFileName(Path.GetFullPath(path)), Zone());
                }
                else if (Directory.Exists(path) && !SquadWriter.IsSquad(path))
                {
                    throw new UsageException(
                        $"'{path}' holds no squad yet. To begin one there, recordings or not: jumpwright serve --new {path}"
                    );
                }

                Task<WebApplicationBuilder> prepared = Task.Run(Site.PrepareForFirst, cancel);
                OpenedSquad opened = await SquadArgument.OpenAtOnce(terminal, path, cancel);
                using var desk = new FrontDesk(opened, parsed.GetValue(on), parsed.GetValue(weeks));
                desk.Begin();
                Sharing.Sharing? sharing = parsed.GetValue(share) ? Share(path, parsed.GetValue(sharePort)) : null;
                await Serve(terminal, desk, parsed.GetValue(port), cancel, sharing, await prepared);
                return ExitCodes.Done;
            }
        );
        return command;
    }

    /// <summary>The option that names the port.</summary>
    public static Option<int> Port() => Port("--port", DefaultPort, "Port on 127.0.0.1");

    private static Option<int> Port(string name, int byDefault, string what)
    {
        var port = new Option<int>(name)
        {
            Description = what + "; 0 takes any that is free.",
            HelpName = "N",
            DefaultValueFactory = _ => byDefault,
        };
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, out int n) || n is < 0 or > 65535))
            {
                result.AddError($"{name} takes a whole number from 0 to 65535.");
            }
        });
        return port;
    }

    /// <summary>Serves the desk until cancelled.</summary>
    public static async Task Serve(
        Terminal terminal,
        FrontDesk desk,
        int port,
        CancellationToken cancel,
        Sharing.Sharing? sharing = null,
        WebApplicationBuilder? prepared = null
    )
    {
        await using WebApplication site = Site.Build(desk, port, sharing, prepared: prepared);
        try
        {
            await site.StartAsync(cancel);
        }
        catch (IOException taken)
        {
            throw new UsageException(
                $"Port {port} on 127.0.0.1 can't be used ({taken.Message.TrimEnd('.')}). Give another with --port, or 0 for any."
            );
        }

        string address = site
            .Services.GetRequiredService<IServer>()
            .Features.Get<IServerAddressesFeature>()!
            .Addresses.First(a => a.StartsWith("http:", StringComparison.Ordinal));
        await terminal.Error.WriteLineAsync($"The pages are at {address} (this machine only). Ctrl-C ends.");
        if (sharing is not null)
        {
            await terminal.Error.WriteLineAsync(
                $"Shared at {string.Join(" or ", ShareRoutes.Addresses(site))}, TLS: a device that types the code {sharing.Door.NewCode()} "
                    + "at /pair within five minutes sees names, plans, trials and what limits each athlete, and can log; everybody else "
                    + "sees nothing. More codes, links to cards, and shutting out: the page Share on this machine."
            );
        }

        // Ends by Ctrl-C or by the system's ask to end; both are a good end.
        await site.WaitForShutdownAsync(cancel);
    }

    private static Sharing.Sharing Share(string squad, int port)
    {
        string folder = Directory.Exists(squad) ? squad : Path.GetDirectoryName(Path.GetFullPath(squad))!;
        return new Sharing.Sharing(
            port,
            ShareCertificate.In(folder, TimeProvider.System.GetUtcNow()),
            new Doorkeeper(SystemClock.Instance)
        );
    }

    /// <summary>The time zone of this machine, as squad.yaml has it.</summary>
    private static string Zone()
    {
        try
        {
            return DateTimeZoneProviders.Tzdb.GetSystemDefault().Id;
        }
        catch (NodaTime.TimeZones.DateTimeZoneNotFoundException)
        {
            return "Etc/UTC";
        }
    }

    private static LocalDate Today() => LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
}
