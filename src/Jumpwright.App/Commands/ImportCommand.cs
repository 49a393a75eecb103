using System.CommandLine;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright import SQUAD</c>: keeps a squad folder in a store.</summary>
internal sealed class ImportCommand : ITaughtCommand
{
    public const string DefaultStore = "jumpwright.db";

    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright import club", $"keeps the squad folder 'club' in the store {DefaultStore}"),
                ("jumpwright import club --store club.db", "keeps it in club.db; a second time changes nothing"),
            ],
            [
                (ExitCodes.Done, "all was taken in"),
                (ExitCodes.Usage, "not understood, or there is no SQUAD there"),
                (ExitCodes.SomeRefused, "some recordings, or the whole folder, were refused; each says why"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var squad = new Argument<string>("SQUAD") { Description = "A squad folder (docs/squad-folder.md)." };
        var file = new Option<string>("--store")
        {
            Description = "The store's file; made if it is not there.",
            HelpName = "FILE",
            DefaultValueFactory = _ => DefaultStore,
        };
        var command = new Command(
            "import",
            "Keeps a squad folder in a store: recordings whole by their SHA-256, tables, and what was measured. "
                + "Importing twice changes nothing; an import that was killed is completed by the next."
        )
        {
            squad,
            file,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                ImportReport report = await Run(
                    terminal,
                    parsed.GetRequiredValue(squad),
                    parsed.GetRequiredValue(file),
                    cancel
                );
                Write(report, terminal.Out);
                return report.Refused.IsEmpty ? ExitCodes.Done : ExitCodes.SomeRefused;
            }
        );
        return command;
    }

    /// <summary>Imports, telling how far it is.</summary>
    public static Task<ImportReport> Run(
        Terminal terminal,
        string folder,
        string storePath,
        CancellationToken cancel
    ) =>
        Directory.Exists(folder)
            ? StoreWork.On(
                terminal,
                storePath,
                "Importing",
                (store, progress) => store.Import(folder, null, progress, cancel)
            )
            : throw new UsageException($"There is no squad folder '{folder}'.");

    /// <summary>What an import did, in sentences.</summary>
    public static void Write(ImportReport report, TextWriter to)
    {
        string known = report.AlreadyKnown > 0 ? $" ({report.AlreadyKnown} were in the store already)" : "";
        to.WriteLine(
            $"{report.Recordings} recordings: {report.Measured} measured{known}, {report.Refused.Length} refused."
        );
        foreach (StoredRecording refused in report.Refused)
        {
            to.WriteLine($"  refused {refused.File}: {refused.Refusal?.Sentence}");
        }

        // By kind, so that a pile of refusals shows at once whether labels or recordings are at fault.
        foreach (
            IGrouping<RefusedFor, StoredRecording> kind in report
                .Refused.Where(r => r.RefusedFor is not null)
                .GroupBy(r => r.RefusedFor!.Value)
                .OrderByDescending(g => g.Count())
        )
        {
            to.WriteLine($"  {kind.Count()} refused: {TextBook.Of("en", $"import.refused-for.{kind.Key}")}");
        }

        foreach (FolderProblem problem in report.Problems)
        {
            to.WriteLine("  " + problem.Sentence);
        }
    }
}
