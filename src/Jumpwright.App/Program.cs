using Jumpwright.App.Commands;

using Terminal terminal = Terminal.OfThisProcess();
using var cancel = new CancellationTokenSource();
ConsoleCancelEventHandler stop = (_, pressed) =>
{
    // The first Ctrl-C asks the work to end in order; a second one is left to the system.
    pressed.Cancel = !cancel.IsCancellationRequested;
    cancel.Cancel();
};
Console.CancelKeyPress += stop;
int exit = await CommandLine.RunAsync(args, terminal, cancel.Token);
Console.CancelKeyPress -= stop;
return exit;
