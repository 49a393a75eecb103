using System.CommandLine;

namespace Jumpwright.App.Commands;

/// <summary>One command and what its help teaches.</summary>
internal interface ITaughtCommand
{
    /// <summary>Examples and exit status; Ctrl-C is added for all.</summary>
    Lesson Lesson { get; }

    /// <summary>The command with its arguments, options and action.</summary>
    Command Build(Terminal terminal);
}
