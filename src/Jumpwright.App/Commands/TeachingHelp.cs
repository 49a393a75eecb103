using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Jumpwright.App.Commands;

/// <summary>The usual help, followed by examples that can be typed and by what each exit status means.</summary>
internal sealed class TeachingHelp(HelpAction usual, IReadOnlyDictionary<Command, Lesson> lessons)
    : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        if (!lessons.TryGetValue(parseResult.CommandResult.Command, out Lesson? lesson))
        {
            return ExitCodes.Done;
        }

        TextWriter to = parseResult.InvocationConfiguration.Output;
        to.WriteLine("Examples:");
        foreach ((string line, string does) in lesson.Examples)
        {
            to.WriteLine("  " + line);
            to.WriteLine("      " + does);
        }

        to.WriteLine();
        to.WriteLine("Exit status:");
        foreach ((int code, string means) in lesson.ExitStatus)
        {
            to.WriteLine($"  {code, 3}  {means}");
        }

        to.WriteLine();
        return ExitCodes.Done;
    }
}
