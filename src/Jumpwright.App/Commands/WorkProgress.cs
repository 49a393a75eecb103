using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
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

        return await Console(terminal)
            .Progress()
            .AutoClear(true)
            .StartAsync(async drawn =>
            {
                ProgressTask task = drawn.AddTask(Markup.Escape(title), maxValue: pieces);
                return await work(() => task.Increment(1));
            });
    }

    /// <summary>Runs an import or whatever reports like one.</summary>
    public static Task<T> OfImport<T>(Terminal terminal, string title, Func<IProgress<ImportProgress>?, T> work) =>
        Bar<T, ImportProgress>(
            terminal,
            title,
            work,
            (task, now) =>
            {
                task.MaxValue = Math.Max(now.Total, 1);
                task.Value = now.Done;
            }
        );

    /// <summary>Runs work that tells in words how far it is.</summary>
    public static Task<T> InWords<T>(Terminal terminal, string title, Func<IProgress<Sentence>?, T> work) =>
        Bar<T, Sentence>(
            terminal,
            title,
            work,
            (task, now) =>
            {
                task.IsIndeterminate = true;
                task.Description = Markup.Escape(now);
            }
        );

    /// <summary>Runs work that tells which part of it is done, 0 to 1.</summary>
    public static Task<T> OfPart<T>(Terminal terminal, string title, Func<IProgress<double>?, T> work) =>
        Bar<T, double>(terminal, title, work, (task, part) => task.Value = 100 * part);

    private static async Task<T> Bar<T, TReport>(
        Terminal terminal,
        string title,
        Func<IProgress<TReport>?, T> work,
        Action<ProgressTask, TReport> draw
    )
    {
        if (!terminal.ShowsProgress)
        {
            return await Task.Run(() => work(null));
        }

        return await Console(terminal)
            .Progress()
            .AutoClear(true)
            .StartAsync(async drawn =>
            {
                ProgressTask task = drawn.AddTask(Markup.Escape(title));
                return await Task.Run(() => work(new Told<TReport>(now => draw(task, now))));
            });
    }

    private static IAnsiConsole Console(Terminal terminal) =>
        AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal.Error) });

    /// <summary>Reports on the calling thread, in order.</summary>
    private sealed class Told<TReport>(Action<TReport> tell) : IProgress<TReport>
    {
        public void Report(TReport value) => tell(value);
    }
}
