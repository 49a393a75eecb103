using System.CommandLine;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright remeasure STORE</c>: what this version of measuring changes, before it takes effect.</summary>
internal sealed class RemeasureCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                (
                    "jumpwright remeasure club.db",
                    "shows what measuring all recordings again would change; writes nothing"
                ),
                ("jumpwright remeasure club.db --list", "also lists every single change"),
                ("jumpwright remeasure club.db --apply", "lets it take effect"),
            ],
            [
                (ExitCodes.Done, "nothing would change, or it took effect"),
                (ExitCodes.Usage, "not understood, or there is no STORE there"),
                (ExitCodes.SomeRefused, "the store can't be read, or kept bytes are damaged; the sentence says which"),
                (ExitCodes.WouldChange, "something would change, and nothing was written"),
            ]
        );

    public Command Build(Terminal terminal)
    {
        var file = new Argument<string>("STORE") { Description = "A store that import made." };
        var apply = new Option<bool>("--apply") { Description = "Let it take effect, recording by recording." };
        var list = new Option<bool>("--list") { Description = "List every single change." };
        var command = new Command(
            "remeasure",
            "Measures every recording of a store again from its kept bytes and compares: per measure how many change and "
                + "by how much beside its doubt, and which recordings would be newly refused or measured."
        )
        {
            file,
            apply,
            list,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                RemeasureReport report = await Run(
                    terminal,
                    parsed.GetRequiredValue(file),
                    parsed.GetValue(apply),
                    cancel
                );
                RemeasureText.Write(report, parsed.GetValue(list), terminal.Out);
                return report.Applied || report.Changes.IsEmpty ? ExitCodes.Done : ExitCodes.WouldChange;
            }
        );
        return command;
    }

    private static Task<RemeasureReport> Run(Terminal terminal, string path, bool apply, CancellationToken cancel) =>
        File.Exists(path)
            ? StoreWork.On(
                terminal,
                path,
                "Measuring again",
                (store, progress) => store.Remeasure(null, progress, apply, cancel)
            )
            : throw new UsageException($"There is no store '{path}'.");
}
