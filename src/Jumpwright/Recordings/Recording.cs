using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>What a device wrote, read but not judged: labels, samples, and the repairs that reading needed.</summary>
/// <param name="Labels">What a person wrote about it.</param>
/// <param name="Warnings">Sentences about what was repaired or ignored.</param>
public abstract record Recording(RecordingLabels Labels, ImmutableArray<string> Warnings)
{
    /// <summary>
    /// Reads the bytes of a force, interval or frame recording (contracts §1), or of a C3D file with force plates.
    /// </summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="manifest">Labels of the manifest; they win over those in the file.</param>
    /// <returns>The recording, or a sentence that says what is wrong, on which line, and what to do.</returns>
    public static Outcome<Recording> From(ReadOnlySpan<byte> bytes, RecordingLabels? manifest = null) =>
        RecordingReader.Read(bytes, manifest ?? RecordingLabels.None).Then(InsertedSamples.LeftOut);

    /// <summary>
    /// The same from a file that is read piece by piece: beside the samples no more of a table is held than a buffer of fixed
    /// size, and a small file is read once, whole. Of a C3D file, whose parts lie anywhere, all is held.
    /// </summary>
    /// <param name="read">Reads the file. It is asked for the same place again where a table needs repair.</param>
    /// <param name="length">Length of the file; what lies beyond is not read.</param>
    /// <param name="manifest">Labels of the manifest; they win over those in the file.</param>
    public static Outcome<Recording> From(ReadAt read, long length, RecordingLabels? manifest = null)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentOutOfRangeException.ThrowIfNegative(length);
        return RecordingReader
            .Read(read, length, manifest ?? RecordingLabels.None, RecordingReader.UsualWindow)
            .Then(InsertedSamples.LeftOut);
    }
}
