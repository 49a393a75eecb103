using System.Text.Json.Nodes;
using Jumpwright.App.Commands;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>One command run in this process: what it printed and how it ended.</summary>
internal sealed record CommandRun(int Exit, string Output, string Errors)
{
    /// <summary>Standard output as JSON Lines.</summary>
    public IReadOnlyList<JsonObject> Lines =>
        [.. Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonNode.Parse(l)!.AsObject())];

    public static async Task<CommandRun> Of(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, errors, ShowsProgress: false);
        int exit = await CommandLine.RunAsync(args, terminal, TestContext.Current.CancellationToken);
        return new CommandRun(exit, output.ToString(), errors.ToString());
    }
}
