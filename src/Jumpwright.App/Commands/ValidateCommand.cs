using System.CommandLine;
using Jumpwright.Simulation.Foreign;
using Jumpwright.Simulation.Profiles;
using Jumpwright.Simulation.Validating;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright validate</c>: measures simulated recordings whose truth is exact, and reports the errors.</summary>
internal sealed class ValidateCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright validate", "prints bias, limits and coverage on simulated recordings"),
                (
                    "jumpwright validate --each 2000 --write docs/validation.md",
                    "18,000 varied recordings, kept in a file"
                ),
                (
                    "jumpwright validate --foreign --each 200",
                    "the same on a second population, made by other mechanics, so that measuring is not fitted to one simulator"
                ),
                (
                    "jumpwright validate --profiles",
                    "prints how levels, alarms, drop heights and next tests did on athletes whose truth is known"
                ),
            ],
            [
                (ExitCodes.Done, "the report is made; whether it is good stands in it"),
                (ExitCodes.Usage, "not understood"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var file = new Option<string?>("--write") { Description = "Write the report here too.", HelpName = "FILE" };
        var each = new Option<int>("--each")
        {
            Description = "Varied recordings of each task.",
            HelpName = "COUNT",
            DefaultValueFactory = _ => ValidationOptions.Default.VariedOfEachTask,
        };
        var profiles = new Option<bool>("--profiles")
        {
            Description = "Validate what is made of measures instead: levels, bands, alarms, drop heights, next tests.",
        };
        var foreign = new Option<bool>("--foreign")
        {
            Description = "Take the second population, made by other mechanics, instead.",
        };
        var command = new Command(
            "validate",
            "Simulates recordings with exact truth, good and spoiled, measures them through the same doors as real ones, "
                + "and reports how far off the measures are. The same version gives the same report."
        )
        {
            file,
            each,
            profiles,
            foreign,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                string page =
                    parsed.GetValue(profiles) ? (await Task.Run(() => ProfileReport.Run(), cancel)).Markdown()
                    : parsed.GetValue(foreign) ? await Foreign(terminal, parsed.GetValue(each), cancel)
                    : await Recordings(terminal, parsed.GetValue(each), cancel);
                if (parsed.GetValue(file) is { } path)
                {
                    await File.WriteAllTextAsync(path, page, cancel);
                    await terminal.Error.WriteLineAsync("Written to " + path);
                }

                await terminal.Out.WriteLineAsync(page);
                return ExitCodes.Done;
            }
        );
        return command;
    }

    private static async Task<string> Foreign(Terminal terminal, int each, CancellationToken cancel)
    {
        int count = Math.Clamp(each, 1, 100_000);
        ForeignReport report = await WorkProgress.OfPart(
            terminal,
            "Validating",
            told => ForeignReport.Run(count, told, cancel: cancel)
        );
        return report.Markdown($"./jumpwright validate --foreign --each {count} --write docs/validation-foreign.md");
    }

    private static async Task<string> Recordings(Terminal terminal, int each, CancellationToken cancel)
    {
        ValidationReport report = await WorkProgress.OfPart(
            terminal,
            "Validating",
            told =>
                Validation.Run(
                    ValidationOptions.Default with
                    {
                        VariedOfEachTask = Math.Clamp(each, 1, 1_000_000),
                    },
                    told,
                    cancel
                )
        );
        return report.Markdown(
            $"./jumpwright validate --each {report.Options.VariedOfEachTask} --write docs/validation.md"
        );
    }
}
