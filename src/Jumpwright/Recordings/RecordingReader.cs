using System.Buffers;
using Jumpwright.Quantities;
using Jumpwright.Recordings.C3d;

namespace Jumpwright.Recordings;

/// <summary>Bytes in, recording or refusal out: metadata, header, and then the reader of the kind that the header names.</summary>
internal static class RecordingReader
{
    /// <summary>Most recordings of a jump fit in; it holds any line.</summary>
    public const int UsualWindow = 256 * 1024;

    public static Outcome<Recording> Read(ReadOnlySpan<byte> bytes, RecordingLabels manifest) =>
        C3dReader.Claims(bytes)
            ? C3dReader.Read(bytes, manifest)
            : ReadText(bytes, null, manifest, mayBePlain: true, out _);

    /// <summary>The same through a buffer of that many bytes.</summary>
    public static Outcome<Recording> Read(ReadAt read, long length, RecordingLabels manifest, int windowBytes)
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent((int)Math.Min(windowBytes, Math.Max(length, 1)));
        try
        {
            // Rented buffers may be larger than asked for; a small window is a small window.
            var window = new ByteWindow(
                read,
                length,
                new ArraySegment<byte>(buffer, 0, Math.Min(windowBytes, buffer.Length))
            );
            ReadOnlySpan<byte> start = window.Start();
            if (window.Unread == 0)
            {
                return Read(start, manifest);
            }

            if (C3dReader.Claims(start))
            {
                return ReadWhole(read, length, manifest);
            }

            Outcome<Recording> outcome = ReadText(start, window, manifest, mayBePlain: true, out bool again);
            return again ? ReadText(window.Start(), window, manifest, mayBePlain: false, out _) : outcome;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static Outcome<Recording> ReadWhole(ReadAt read, long length, RecordingLabels manifest)
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent(checked((int)length));
        try
        {
            return Read(new ByteWindow(read, length, new ArraySegment<byte>(buffer, 0, (int)length)).Start(), manifest);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    /// <summary>Reads a table.</summary>
    /// <param name="bytes">The text, or its beginning.</param>
    /// <param name="window">Where more comes from; null where that is all.</param>
    /// <param name="manifest">Labels that win.</param>
    /// <param name="mayBePlain">Whether the fast road may be tried.</param>
    /// <param name="again">Whether to read once more from the beginning, without it; what is given then is nothing.</param>
    private static Outcome<Recording> ReadText(
        ReadOnlySpan<byte> bytes,
        ByteWindow? window,
        RecordingLabels manifest,
        bool mayBePlain,
        out bool again
    )
    {
        again = false;
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
        var lines = new TextLines(bytes, window);
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
                return ReadTable(ref lines, labels, manifest, warnings, mayBePlain, out again);
            }

            if (labels.Take(line, lines.Number, manifest, warnings) is { } refusal)
            {
                return refusal;
            }
        }

        return lines.Fault ?? Refusals.NoHeader();
    }

    private static Outcome<Recording> ReadTable(
        ref TextLines lines,
        FileLabels labels,
        RecordingLabels manifest,
        List<string> warnings,
        bool mayBePlain,
        out bool again
    )
    {
        again = false;
        Outcome<Header> header = Header.Read(lines.Current, lines.Number, warnings);
        if (!header.TryGet(out Header? columns, out Refusal? refusal))
        {
            return refusal;
        }

        if (manifest.Plates is not null)
        {
            warnings.Add(Repairs.PlatesAreForC3d);
        }

        if (manifest.FramesPerSecond is not null && columns.Kind is TableKind.Force or TableKind.Interval)
        {
            warnings.Add(Repairs.RateIsForFrames);
        }

        RecordingLabels merged = labels.Labels.OverlaidBy(manifest);
        return columns.Kind switch
        {
            TableKind.Force => ForceTable.Read(ref lines, columns, merged, warnings, mayBePlain, out again),
            TableKind.Interval => IntervalTable.Read(ref lines, columns, merged, warnings),
            _ => FrameTable.Read(ref lines, columns, merged, warnings),
        };
    }
}
