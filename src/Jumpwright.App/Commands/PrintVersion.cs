using System.CommandLine;
using System.CommandLine.Invocation;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary>Prints the version that makes the numbers, and nothing else.</summary>
internal sealed class PrintVersion : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(ProductVersion.Current);
        return ExitCodes.Done;
    }
}
