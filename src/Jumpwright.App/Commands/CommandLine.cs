using System.CommandLine;
using System.CommandLine.Help;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary>The composition root: every command, and how a command's end becomes an exit status.</summary>
internal static class CommandLine
{
    private static readonly (int, string) Cancelled = (ExitCodes.Cancelled, "stopped by Ctrl-C");

    /// <summary>Runs one command line. Results go to <see cref="Terminal.Out"/>, everything else to its error stream.</summary>
    public static async Task<int> RunAsync(
        IReadOnlyList<string> args,
        Terminal terminal,
        CancellationToken cancel = default
    )
    {
        ParseResult parsed = Root(terminal).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is not TeachingHelp)
        {
            foreach (string sentence in parsed.Errors.Select(e => e.Message).Distinct(StringComparer.Ordinal))
            {
                await terminal.Error.WriteLineAsync(sentence);
            }

            string name = parsed.CommandResult.Parent is null ? "" : parsed.CommandResult.Command.Name + " ";
            await terminal.Error.WriteLineAsync($"Try: jumpwright {name}--help");
            return ExitCodes.Usage;
        }

        var io = new InvocationConfiguration
        {
            Output = terminal.Out,
            Error = terminal.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        try
        {
            return await parsed.InvokeAsync(io, cancel);
        }
        catch (UsageException mistake)
        {
            await terminal.Error.WriteLineAsync(mistake.Message);
            return ExitCodes.Usage;
        }
        catch (RefusedException refused)
        {
            await terminal.Error.WriteLineAsync(refused.Message);
            return ExitCodes.SomeRefused;
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            await terminal.Error.WriteLineAsync("Stopped.");
            return ExitCodes.Cancelled;
        }
        catch (Exception defect) when (defect is not OutOfMemoryException)
        {
            await terminal.Error.WriteLineAsync("This is a defect in jumpwright, not in your data. Please report:");
            await terminal.Error.WriteLineAsync(defect.ToString());
            return ExitCodes.Failed;
        }
        finally
        {
            await terminal.Out.FlushAsync(CancellationToken.None);
        }
    }

    /// <summary>The root command with all commands and their help.</summary>
    public static Command Root(Terminal terminal)
    {
        var lessons = new Dictionary<Command, Lesson>();
        var root = new Command(
            "jumpwright",
            "Jumpwright measures jumps, says what limits each athlete and how sure that is, plans a squad's jump "
                + "training inside its limits, and prints the cards to train from. It advises; it clears nobody."
        );
        foreach (ITaughtCommand taught in All)
        {
            Command command = taught.Build(terminal);
            lessons[command] = taught.Lesson with { ExitStatus = [.. taught.Lesson.ExitStatus, Cancelled] };
            root.Subcommands.Add(command);
        }

        lessons[root] = new Lesson(
            [
                ("jumpwright demo", "does the whole job on a made-up club and serves the pages"),
                ("jumpwright measure recordings", "measures every recording in a folder"),
                ("jumpwright COMMAND --help", "teaches one command"),
            ],
            [
                (ExitCodes.Done, "done"),
                (ExitCodes.Failed, "a defect in the program"),
                (ExitCodes.Usage, "not understood, or a path does not exist"),
                (ExitCodes.SomeRefused, "some of what was given was refused"),
                (ExitCodes.NoPlan, "no plan: requirements collide, or none was found in time"),
                (ExitCodes.WouldChange, "measuring again would change something, and nothing was written"),
                Cancelled,
            ]
        );
        root.Options.Add(
            new HelpOption
            {
                Description = "Shows this help.",
                Action = new TeachingHelp(new HelpAction { MaxWidth = 100 }, lessons),
            }
        );
        root.Options.Add(new VersionOption { Description = "Prints the version.", Action = new PrintVersion() });
        return root;
    }

    /// <summary>All commands, in the order in which the help lists them.</summary>
    public static IReadOnlyList<ITaughtCommand> All { get; } =
    [
        new DemoCommand(),
        new MeasureCommand(),
        new ImportCommand(),
        new RemeasureCommand(),
        new PlanCommand(),
        new CardsCommand(),
        new CalendarCommand(),
        new LogCommand(),
        new ReportCommand(),
        new ServeCommand(),
        new BackupCommand(),
        new RestoreCommand(),
        new CatalogueCommand(),
        new LimitsCommand(),
        new ValidateCommand(),
    ];
}
