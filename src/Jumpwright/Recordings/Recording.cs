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
        RecordingReader.Read(bytes, manifest ?? RecordingLabels.None);
}
