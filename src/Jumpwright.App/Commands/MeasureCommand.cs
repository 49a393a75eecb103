using System.CommandLine;
using Jumpwright.App.Contracts;
using Jumpwright.App.Intake;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright measure PATH…</c>: recordings in, measures with their doubt or a refusal out (contracts §2).</summary>
internal sealed class MeasureCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright measure jump.csv", "measures one recording and prints each measure with its ±"),
                (
                    "jumpwright measure recordings --json > measures.jsonl",
                    "measures a folder, in the order of its trials.csv; one JSON object a trial, or a refused recording"
                ),
            ],
            [
                (ExitCodes.Done, "all were measured"),
                (ExitCodes.Usage, "not understood, or a PATH does not exist"),
                (ExitCodes.SomeRefused, "some were refused; each says why, where and what to do"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var paths = new Argument<string[]>("PATH")
        {
            Description = "A recording, or a folder of recordings.",
            Arity = ArgumentArity.OneOrMore,
        };
        var json = new Option<bool>("--json") { Description = "JSON Lines on standard output, one object a trial." };
        var jobs = new Option<int>("--jobs")
        {
            Description = "Recordings measured at a time. The output stays in order.",
            HelpName = "N",
            DefaultValueFactory = _ => Environment.ProcessorCount,
        };
        jobs.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, out int n) || n is < 1 or > 256))
            {
                result.AddError("--jobs takes a whole number from 1 to 256.");
            }
        });
        var command = new Command(
            "measure",
            "Measures recordings of force plates, contact mats and cameras. A recording that can't be trusted is "
                + "refused with one sentence; it never stops the others."
        )
        {
            paths,
            json,
            jobs,
        };
        command.SetAction(
            (parsed, cancel) =>
                Run(terminal, parsed.GetRequiredValue(paths), parsed.GetValue(json), parsed.GetValue(jobs), cancel)
        );
        return command;
    }

    private static async Task<int> Run(Terminal terminal, string[] paths, bool json, int jobs, CancellationToken cancel)
    {
        foreach (string path in paths)
        {
            if (!File.Exists(path) && !Directory.Exists(path))
            {
                throw new UsageException($"There is no file or folder '{path}'.");
            }
        }

        ListedRecording[] entries = [.. paths.SelectMany(path => RecordingList.Of(path))];
        if (entries.Length == 0)
        {
            await terminal.Error.WriteLineAsync("There is no recording (.csv or .c3d) in " + string.Join(", ", paths));
        }

        int refused = await WorkProgress.Of(
            terminal,
            "Measuring",
            entries.Length,
            async step =>
            {
                int count = 0;
                await foreach (MeasuredFile file in MeasureFiles.InOrder(entries, jobs, cancel))
                {
                    step();
                    count += file.Measured.Trials.TryGet(out _, out _) ? 0 : 1;
                    if (json)
                    {
                        foreach (TrialJson line in TrialJson.Of(file))
                        {
                            terminal.Out.WriteLine(ContractJson.Line(line));
                        }
                    }
                    else
                    {
                        MeasureText.Write(file, terminal.Out);
                    }
                }

                return count;
            }
        );
        if (!json && entries.Length > 0)
        {
            terminal.Out.WriteLine(MeasureWords.PlusMinus);
            if (refused > 0)
            {
                terminal.Out.WriteLine($"{entries.Length - refused} measured, {refused} refused.");
            }
        }

        return refused == 0 ? ExitCodes.Done : ExitCodes.SomeRefused;
    }
}
