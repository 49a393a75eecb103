using System.CommandLine;
using Jumpwright.App.Desk;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright log SQUAD</c>: what was really done, taken in from a CSV and held against the plan and its stop rules.</summary>
internal sealed class LogCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright log club --add monday.csv", "takes a log into the squad's completed.csv"),
                (
                    "jumpwright log club --from 2027-01-04 --weeks 1",
                    "shows load done beside load planned, stop rules reached, and the week's session-RPE load"
                ),
            ],
            [
                (ExitCodes.Done, "done"),
                (ExitCodes.Usage, "not understood, or there is no SQUAD or FILE there"),
                (
                    ExitCodes.SomeRefused,
                    "some rows were not added, each with its sentence; or the squad can't be planned"
                ),
                (ExitCodes.NoPlan, "there is no plan of those days to hold the log against"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        Argument<string> squad = SquadArgument.Squad();
        Option<LocalDate> from = SquadArgument.From();
        from.Required = false;
        Option<int> weeks = SquadArgument.Weeks(required: false);
        var add = new Option<string?>("--add")
        {
            Description = "A CSV with the columns of completed.csv; rows that are there already change nothing.",
            HelpName = "FILE",
        };
        var command = new Command(
            "log",
            "Takes in what was really done, and shows it beside what was planned. The plan of those days is made again from what "
                + "was known on their first day. A stop rule that the log says was reached is named, and whether the exercise went on."
        )
        {
            squad,
            add,
            from,
            weeks,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                string path = parsed.GetRequiredValue(squad);
                int status = parsed.GetValue(add) is { } file ? Added(terminal, path, file) : ExitCodes.Done;
                if (parsed.GetResult(from) is null)
                {
                    return parsed.GetValue(add) is null
                        ? throw new UsageException("log takes --add FILE, --from DATE, or both.")
                        : status;
                }

                using OpenedSquad opened = await SquadArgument.Open(terminal, path, cancel);
                SquadMaterial then = opened.Material.BeforeWorkOn(parsed.GetValue(from));
                if (await PlanCommand.Found(terminal, then, parsed, from, weeks, cancel) is not { } week)
                {
                    return ExitCodes.NoPlan;
                }

                LogText.Write(week, opened.Material, terminal.Out);
                return status;
            }
        );
        return command;
    }

    private static int Added(Terminal terminal, string folder, string file)
    {
        if (!Directory.Exists(folder))
        {
            throw new UsageException($"A log is added to a squad folder; '{folder}' is none.");
        }

        if (!File.Exists(file))
        {
            throw new UsageException($"There is no file '{file}'.");
        }

        if (!WorkDone.Add(folder, file).TryGet(out WorkAdded? added, out Refusal? refusal))
        {
            throw new RefusedException(refusal);
        }

        foreach (string sentence in added.NotAdded)
        {
            terminal.Error.WriteLine(sentence);
        }

        foreach (string id in added.Strange)
        {
            terminal.Error.WriteLine(
                $"'{id}' is no exercise of the catalogue, so nobody knows what it asked of which tissue; its contacts still count."
            );
        }

        terminal.Out.WriteLine(
            $"{added.Added.Length} {(added.Added.Length == 1 ? "row" : "rows")} added to {SquadTables.Completed}"
                + (added.Known > 0 ? $", {added.Known} there already" : "")
                + (added.NotAdded.Length > 0 ? $", {added.NotAdded.Length} not added" : "")
        );
        return added.NotAdded.IsEmpty ? ExitCodes.Done : ExitCodes.SomeRefused;
    }
}
