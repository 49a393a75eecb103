namespace Jumpwright.App.Commands;

/// <summary>What the exit status of every command means. A test holds the help and docs/commands.md to it.</summary>
internal static class ExitCodes
{
    /// <summary>Everything asked for was done.</summary>
    public const int Done = 0;

    /// <summary>The program itself failed; that is a defect to report.</summary>
    public const int Failed = 1;

    /// <summary>The command was not understood, or a path does not exist.</summary>
    public const int Usage = 2;

    /// <summary>Some of what was given was refused; the rest was done.</summary>
    public const int SomeRefused = 3;

    /// <summary>There is no plan: the requirements collide, or time ran out before one was found.</summary>
    public const int NoPlan = 4;

    /// <summary>Measuring again would change what is stored, and nothing was written.</summary>
    public const int WouldChange = 5;

    /// <summary>Ctrl-C.</summary>
    public const int Cancelled = 130;
}
