using System.CommandLine;
using Jumpwright.App.Desk;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright restore FILE FOLDER</c>: a backup becomes a squad folder again.</summary>
internal sealed class RestoreCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [("jumpwright restore club-2027-01-04.zip club", "makes the folder 'club' from the backup")],
            [
                (ExitCodes.Done, "the squad is restored"),
                (ExitCodes.Usage, "not understood, or there is no FILE"),
                (ExitCodes.SomeRefused, "the file is no backup, or the folder is not empty; nothing there was changed"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "A file made by backup." };
        var folder = new Argument<string>("FOLDER") { Description = "A new or empty folder." };
        var command = new Command("restore", "Makes a squad folder from a backup. Nothing that exists is overwritten.")
        {
            file,
            folder,
        };
        command.SetAction(parsed =>
        {
            string from = parsed.GetRequiredValue(file);
            if (!File.Exists(from))
            {
                throw new UsageException($"There is no file '{from}'.");
            }

            string to = parsed.GetRequiredValue(folder);
            if (!Archive.Restore(from, to).TryGet(out int files, out Refusal? refusal))
            {
                throw new RefusedException(refusal);
            }

            terminal.Out.WriteLine($"{files} files are in {to}.");
            return ExitCodes.Done;
        });
        return command;
    }
}
