using System.CommandLine;
using Jumpwright.App.Contracts;
using Jumpwright.App.Wording;
using Jumpwright.Safety;

namespace Jumpwright.App.Commands;

/// <summary><c>jumpwright limits</c>: every limit with its value, kind and source.</summary>
internal sealed class LimitsCommand : ITaughtCommand
{
    public Lesson Lesson { get; } =
        new(
            [
                ("jumpwright limits", "lists every limit, how firm it is and where it comes from"),
                ("jumpwright limits --json", "prints them as one JSON object for other programs"),
            ],
            [(ExitCodes.Done, "printed")]
        );

    public Command Build(Terminal terminal)
    {
        var json = new Option<bool>("--json") { Description = "One JSON object on standard output." };
        var command = new Command(
            "limits",
            "Lists the limits that plans keep. House limits can be tightened, never loosened; others can be overridden in "
                + "overrides.csv with who, reason and until (28 days at most); preferences freely, in policy of squad.yaml."
        )
        {
            json,
        };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(json))
            {
                terminal.Out.WriteLine(LimitValuesJson.Write(LimitBook.Standard));
                return ExitCodes.Done;
            }

            foreach (LimitValue limit in LimitBook.Standard.All)
            {
                string sense = limit.Sense == LimitSense.AtMost ? "lower is tighter" : "higher is tighter";
                string unit = limit.Unit == "1" ? "" : " " + limit.Unit;
                terminal.Out.WriteLine(
                    FormattableString.Invariant(
                        $"{TerminalWords.Limit(limit.Id)}: {limit.Value:0.####}{unit}  ({TextBook.T[$"origin.firmness.{limit.Kind}"]}, {sense})"
                    )
                );
                terminal.Out.WriteLine("    " + limit.Says);
                terminal.Out.WriteLine($"    Source: {Origins.Said(limit.Source)}");
                terminal.Out.WriteLine($"    In overrides.csv and squad.yaml: {limit.Id}");
            }

            return ExitCodes.Done;
        });
        return command;
    }
}
