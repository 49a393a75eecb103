using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Recordings kept beside the tests, with their licences in their folders.</summary>
internal static class Recorded
{
    public static byte[] Bytes(string name)
    {
        using Stream stream =
            typeof(Recorded).Assembly.GetManifestResourceStream("data/" + name)
            ?? throw new FileNotFoundException(name);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    public static Recording Recording(string name) => Jumpwright.Recordings.Recording.From(Bytes(name)).Require();

    public static Trial[] Trials(string name, JumpTask? task = null) =>
        [.. Measuring.Of(Recording(name), task).Require()];

    public static double Value(this Trial trial, string measure) =>
        trial.Find(measure)?.Value ?? throw new InvalidOperationException(measure + " is absent.");
}
