using System.CommandLine;
using Jumpwright.App.Desk;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright backup SQUAD FILE</c>: the squad in one file.</summary>
internal sealed class BackupCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                (
                    "jumpwright backup club club-2027-01-04.zip",
                    "writes folder, recordings and store into one file, also while pages are served"
                ),
            ],
            [
                (ExitCodes.Done, "the backup is written"),
                (ExitCodes.Usage, "not understood, no SQUAD there, or FILE exists already"),
                (ExitCodes.SomeRefused, "the squad can't be read; the sentence says why"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        var file = new Argument<string>("FILE") { Description = "The zip file to be written; it must not exist yet." };
        var command = new Command(
            "backup",
            "Writes a squad into one file: tables, recordings, and the store with all that was written in the pages. It holds health data: keep it as you keep the squad."
        )
        {
            squad,
            file,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                string to = parsed.GetRequiredValue(file);
                if (File.Exists(to))
                {
                    throw new UsageException($"'{to}' exists already; give another name.");
                }

                string path = parsed.GetRequiredValue(squad);
                using OpenedSquad opened = await SquadArgument.Open(terminal, path, cancel);
                var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.ReadWrite };
                if (!OperatingSystem.IsWindows())
                {
                    options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
                }

                await using var stream = new FileStream(to, options);
                Archive.Write(opened.Folder, opened.Store, stream);
                terminal.Out.WriteLine($"{opened.Material.Squad.Name} is in {to}.");
                return ExitCodes.Done;
            }
        );
        return command;
    }
}
