using System.Globalization;
using Jumpwright.App.Commands;
using Jumpwright.Tests.Outside.House;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>The help of every command teaches, and the document on commands knows all that the help knows.</summary>
public class HelpTests
{
    public static TheoryData<string> Names() =>
        [
            "demo",
            "measure",
            "import",
            "remeasure",
            "plan",
            "cards",
            "calendar",
            "log",
            "report",
            "serve",
            "backup",
            "restore",
            "catalogue",
            "limits",
            "validate",
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Help_ShowsExamplesThatCanBeTyped_AndEveryExitStatus(string name)
    {
        CommandRun run = await CommandRun.Of(name, "--help");
        Assert.Equal(0, run.Exit);
        Assert.Contains("Examples:\n  jumpwright " + name, run.Output, StringComparison.Ordinal);
        Assert.Contains("Exit status:", run.Output, StringComparison.Ordinal);
        Assert.Contains("130  stopped by Ctrl-C", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Document_NamesEveryOption(string name)
    {
        string row = Repository
            .Read("docs/commands.md")
            .Split('\n')
            .Single(l => l.StartsWith($"| `{name} ", StringComparison.Ordinal));
        using var silent = new Terminal(TextWriter.Null, TextWriter.Null, ShowsProgress: false);
        var command = CommandLine.Root(silent).Subcommands.Single(c => c.Name == name);
        Assert.All(command.Options, option => Assert.Contains(option.Name, row, StringComparison.Ordinal));
        Assert.All(command.Arguments, argument => Assert.Contains(argument.Name, row, StringComparison.Ordinal));
    }

    [Fact]
    public void Document_NamesEveryCommand_AndEveryExitStatus()
    {
        string document = Repository.Read("docs/commands.md");
        using var silent = new Terminal(TextWriter.Null, TextWriter.Null, ShowsProgress: false);
        Assert.Equal(
            Names().Select(row => row.Data).Order(StringComparer.Ordinal),
            CommandLine.Root(silent).Subcommands.Select(c => c.Name).Order(StringComparer.Ordinal)
        );
        int[] codes =
        [
            ExitCodes.Done,
            ExitCodes.Failed,
            ExitCodes.Usage,
            ExitCodes.SomeRefused,
            ExitCodes.NoPlan,
            ExitCodes.WouldChange,
            ExitCodes.Cancelled,
        ];
        Assert.All(
            codes,
            code =>
                Assert.Contains(
                    "\n| " + code.ToString(CultureInfo.InvariantCulture) + " | ",
                    document,
                    StringComparison.Ordinal
                )
        );
    }
}
