using Jumpwright.Quantities;
using Jumpwright.Recordings.C3d;

namespace Jumpwright.Recordings;

/// <summary>Bytes in, recording or refusal out: metadata, header, and then the reader of the kind that the header names.</summary>
internal static class RecordingReader
{
    public static Outcome<Recording> Read(ReadOnlySpan<byte> bytes, RecordingLabels manifest)
    {
        if (C3dReader.Claims(bytes))
        {
            return C3dReader.Read(bytes, manifest);
        }

        var warnings = new List<string>();
        if (bytes.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..];
            warnings.Add(Repairs.ByteOrderMark);
        }
        else if (bytes.Length >= 2 && bytes[0] + bytes[1] == 0xFE + 0xFF && Math.Min(bytes[0], bytes[1]) == 0xFE)
        {
            return Refusals.Utf16();
        }

        if (bytes.IsEmpty)
        {
            return Refusals.Empty();
        }

        var labels = new FileLabels();
        var lines = new TextLines(bytes);
        while (lines.Next())
        {
            ReadOnlySpan<byte> line = lines.Current.TrimStart((byte)' ');
            if (line.ContainsAnyInRange((byte)0, (byte)8))
            {
                return Refusals.NotText(lines.Number);
            }

            if (line.IsEmpty)
            {
                continue;
            }

            if (line[0] != (byte)'#')
            {
                return ReadTable(ref lines, labels, manifest, warnings);
            }

            if (labels.Take(line, lines.Number, manifest, warnings) is { } refusal)
            {
                return refusal;
            }
        }

        return Refusals.NoHeader();
    }

    private static Outcome<Recording> ReadTable(
        ref TextLines lines,
        FileLabels labels,
        RecordingLabels manifest,
        List<string> warnings
    )
    {
        Outcome<Header> header = Header.Read(lines.Current, lines.Number, warnings);
        if (!header.TryGet(out Header? columns, out Refusal? refusal))
        {
            return refusal;
        }

        if (manifest.Plates is not null)
        {
            warnings.Add(Repairs.PlatesAreForC3d);
        }

        RecordingLabels merged = labels.Labels.OverlaidBy(manifest);
        return columns.Kind switch
        {
            TableKind.Force => ForceTable.Read(ref lines, columns, merged, warnings),
            TableKind.Interval => IntervalTable.Read(ref lines, columns, merged, warnings),
            _ => FrameTable.Read(ref lines, columns, merged, labels.FramesPerSecond, warnings),
        };
    }
}
