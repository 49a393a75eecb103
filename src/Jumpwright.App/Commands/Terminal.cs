using System.Text;

namespace Jumpwright.App.Commands;

/// <summary>Where a command writes: results to <see cref="Out"/>, everything else to <see cref="Error"/>.</summary>
/// <param name="Out">Standard output, UTF-8 without a mark.</param>
/// <param name="Error">Standard error.</param>
/// <param name="ShowsProgress">True when a person watches standard error; progress is quiet otherwise.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error, bool ShowsProgress) : IDisposable
{
    /// <summary>The streams of this process.</summary>
    public static Terminal OfThisProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Terminal(
            new StreamWriter(Console.OpenStandardOutput(), utf8, 1 << 16) { NewLine = "\n" },
            new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true },
            !Console.IsErrorRedirected
        );
    }

    public void Dispose()
    {
        Out.Dispose();
        Error.Dispose();
    }
}
