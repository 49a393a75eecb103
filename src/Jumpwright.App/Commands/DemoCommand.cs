using System.CommandLine;
using System.Reflection;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.App.Settings;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Progression;
using Jumpwright.Simulation.Demo;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright demo</c>: the whole line on an invented club, from recordings to cards, then the pages.</summary>
internal sealed class DemoCommand : ITaughtCommand
{
    /// <summary>The demo's day: its squad's history ends just before.</summary>
    public static readonly LocalDate Day = new(2027, 1, 4);

    private const string Marker = ".jumpwright-demo";

    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright demo", "does the whole job into ./jumpwright-demo, then serves the pages until Ctrl-C"),
                ("jumpwright demo --no-serve --out try", "the same into ./try, and ends after the cards"),
            ],
            [
                (ExitCodes.Done, "done (the demo's own bad recordings are refused as they should be)"),
                (ExitCodes.Usage, "not understood, or the folder holds something else"),
                (ExitCodes.NoPlan, "no plan was found"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var noServe = new Option<bool>("--no-serve") { Description = "End after the cards." };
        var into = new Option<string>("--out")
        {
            Description = "Folder to work in; what an earlier demo left there is replaced.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "jumpwright-demo",
        };
        Option<int> port = ServeCommand.Port();
        var command = new Command(
            "demo",
            "Does the whole job on an invented club: simulated recordings (some bad on purpose) are measured or refused, "
                + "profiles and ladders are made, one week is planned, cards are printed, pages are served."
        )
        {
            noServe,
            into,
            port,
        };
        command.SetAction(
            (parsed, cancel) =>
                Run(
                    terminal,
                    parsed.GetRequiredValue(into),
                    parsed.GetValue(noServe) ? null : parsed.GetValue(port),
                    cancel
                )
        );
        return command;
    }

    /// <summary>The demo squad's folder: its tables, and the recordings simulated from them.</summary>
    public static void WriteSquad(string folder)
    {
        Assembly program = typeof(DemoCommand).Assembly;
        string? simulated = null;
        foreach (string resource in program.GetManifestResourceNames().Where(IsDemo).Order(StringComparer.Ordinal))
        {
            using Stream stream = program.GetManifestResourceStream(resource)!;
            using var reader = new StreamReader(stream);
            string text = reader.ReadToEnd();
            string name = resource["demo/".Length..];
            if (name == "simulated-trials.csv")
            {
                simulated = text;
            }
            else
            {
                Save(folder, name, System.Text.Encoding.UTF8.GetBytes(text));
            }
        }

        foreach ((string path, byte[] bytes) in DemoRecordings.Write(simulated!))
        {
            Save(folder, path, bytes);
        }
    }

    private static async Task<int> Run(Terminal terminal, string root, int? port, CancellationToken cancel)
    {
        TextWriter to = terminal.Out;
        Clear(root);
        string squadFolder = Path.Combine(root, "squad");
        string storeFile = Path.Combine(root, "store.db");
        string cardFolder = Path.Combine(root, "cards");
        await WorkProgress.InWords<bool>(
            terminal,
            "Simulating the demo squad's recordings",
            _ =>
            {
                WriteSquad(squadFolder);
                return true;
            }
        );
        cancel.ThrowIfCancellationRequested();
        ImportReport report = await ImportCommand.Run(terminal, squadFolder, storeFile, cancel);
        using OpenedSquad opened = await SquadArgument.Open(terminal, storeFile, cancel);
        SquadMaterial material = opened.Material;
        Catalogue catalogue = Catalogue.Standard;
        to.WriteLine($"{material.Squad.Name}: {material.Histories.Length} athletes, {Dates.Long(Day)}.");
        ImportCommand.Write(report, to);
        to.WriteLine();

        var leaves = Bookkeeping.Leaves(material, catalogue, Day);
        foreach (AthleteLeaf leaf in leaves)
        {
            int Count(RungState state) => leaf.Ladder.Rungs.Count(r => r.State == state);
            to.WriteLine($"{leaf.Athlete.Name}: {TerminalWords.Of(Sentences.Of(leaf))}");
            to.WriteLine(
                $"  exercises: {Count(RungState.Owned)} owned, {Count(RungState.Open)} open, {Count(RungState.Closed)} closed"
            );
        }

        to.WriteLine();
        await to.FlushAsync(cancel);
        PlannedWeek week = await PlanCommand.Planned(terminal, material, Day, 1, null, cancel);
        string planFile = Path.Combine(root, "plan.json");
        await File.WriteAllTextAsync(planFile, PlanJson.Write(week.Plan) + "\n", cancel);
        to.WriteLine(PlanWords.Proof(week.Plan));
        if (PlanCommand.ExitOf(week.Plan) != ExitCodes.Done)
        {
            PlanText.Write(week, material, terminal.Error);
            return ExitCodes.NoPlan;
        }

        int written = await WorkProgress.Of(
            terminal,
            "Drawing cards",
            week.Cards.Length + week.Sheets.Length,
            step =>
                Task.Run(
                    () =>
                        CardFiles.Write(week, material, HouseSettings.Standard, cardFolder, CardPaper.A5, step, cancel),
                    cancel
                )
        );
        to.WriteLine($"The squad folder is in {squadFolder}, the store is {storeFile}, the plan is {planFile},");
        to.WriteLine($"and {written} PDFs, cards and coach's sheets, are in {cardFolder}.");
        to.WriteLine($"To see the pages of it again: jumpwright serve {squadFolder} --on {Dates.Iso(Day)}");
        await to.FlushAsync(cancel);
        if (port is { } p)
        {
            OpenedSquad kept = await SquadArgument.OpenKept(terminal, squadFolder, storeFile, cancel);
            using var desk = new FrontDesk(kept, Day, 1);
            desk.Show(week);
            await ServeCommand.Serve(terminal, desk, p, cancel);
        }

        return ExitCodes.Done;
    }

    /// <summary>Empties what an earlier demo left; a folder that holds anything else is not touched.</summary>
    private static void Clear(string root)
    {
        string marker = Path.Combine(root, Marker);
        if (
            File.Exists(root)
            || (Directory.Exists(root) && Directory.EnumerateFileSystemEntries(root).Any() && !File.Exists(marker))
        )
        {
            throw new UsageException($"'{root}' holds something else; give a new folder with --out.");
        }

        Directory.CreateDirectory(root);
        File.WriteAllText(marker, "Made by 'jumpwright demo', which replaces everything here.\n");
        foreach (string folder in new[] { "squad", "cards" }.Select(f => Path.Combine(root, f)).Where(Directory.Exists))
        {
            Directory.Delete(folder, recursive: true);
        }

        foreach (string file in Directory.EnumerateFiles(root, "store.db*"))
        {
            File.Delete(file);
        }
    }

    private static bool IsDemo(string resource) =>
        resource.StartsWith("demo/", StringComparison.Ordinal)
        && !resource.EndsWith(".md", StringComparison.OrdinalIgnoreCase);

    private static void Save(string folder, string name, byte[] bytes)
    {
        string path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }
}
