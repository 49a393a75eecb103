using System.CommandLine;
using Jumpwright.App.Contracts;
using Jumpwright.Exercises;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright catalogue</c>: the exercises, for a person or as JSON.</summary>
internal sealed class CatalogueCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright catalogue", "lists the exercises by stage"),
                ("jumpwright catalogue --json", "prints them as one JSON object for other programs"),
            ],
            [(ExitCodes.Done, "printed")]
        );

    public Command Build(Terminal terminal)
    {
        var json = new Option<bool>("--json") { Description = "One JSON object on standard output." };
        var command = new Command(
            "catalogue",
            "Lists the exercises: what each is for, what it asks of each tissue, when it opens, and its sources."
        )
        {
            json,
        };
        command.SetAction(parsed =>
        {
            Catalogue catalogue = Catalogue.Standard;
            if (parsed.GetValue(json))
            {
                terminal.Out.WriteLine(CatalogueJson.Write(catalogue));
            }
            else
            {
                CatalogueText.Write(catalogue, terminal.Out);
            }

            return ExitCodes.Done;
        });
        return command;
    }
}
