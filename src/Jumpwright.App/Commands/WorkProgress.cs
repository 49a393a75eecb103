using Spectre.Console;

namespace Jumpwright.App.Commands;

/// <summary>Progress of long work on standard error; says nothing when nobody watches.</summary>
internal static class WorkProgress
{
    /// <summary>Runs the work; it calls the step action once for each finished piece.</summary>
    /// <param name="terminal">Where to draw.</param>
    /// <param name="title">What is being done, in words.</param>
    /// <param name="pieces">How many steps there will be.</param>
    /// <param name="work">The work, given the step action.</param>
    public static async Task<T> Of<T>(Terminal terminal, string title, int pieces, Func<Action, Task<T>> work)
    {
        if (!terminal.ShowsProgress || pieces < 2)
        {
            return await work(static () => { });
        }

        IAnsiConsole console = AnsiConsole.Create(
            new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal.Error) }
        );
        return await console
            .Progress()
            .AutoClear(true)
            .StartAsync(async drawn =>
            {
                ProgressTask task = drawn.AddTask(Markup.Escape(title), maxValue: pieces);
                return await work(() => task.Increment(1));
            });
    }
}
