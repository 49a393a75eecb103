using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Jumpwright.Recordings;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>Names a measurement by what it depends on, so that nothing is measured twice and nothing stale is taken.</summary>
internal static class MeasurementIds
{
    /// <summary>Stands before the labels of the few recordings whose plates were chosen, so that the others' ids stay as they were.</summary>
    private const string PlatesMark = "plates=";

    /// <summary>The same for the few whose camera's rate was written in the manifest.</summary>
    private const string FramesMark = "frames=";

    public static string Sha256(ReadOnlySpan<byte> bytes)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(bytes, hash);
        return Convert.ToHexStringLower(hash);
    }

    /// <summary>128 bits of the SHA-256 over content, version and manifest labels, in hexadecimal.</summary>
    public static string Of(string sha256, string version, string manifest) =>
        Sha256(Encoding.UTF8.GetBytes(sha256 + "\n" + version + "\n" + manifest))[..32];

    /// <summary>The manifest's labels as one line; empty when the manifest does not list the recording.</summary>
    public static string Line(RecordingLabels? labels) =>
        labels is null
            ? ""
            : (labels.Plates is { } plates ? PlatesMark + plates + "\t" : "")
                + (labels.FramesPerSecond is { } rate ? FramesMark + Text(rate) + "\t" : "")
                + string.Join(
                    '\t',
                    labels.Athlete,
                    labels.Date is { } d ? LocalDatePattern.Iso.Format(d) : "",
                    labels.Task?.Id(),
                    Text(labels.BodyMassKg),
                    Text(labels.ExternalLoadKg),
                    Text(labels.DropHeightM),
                    labels.Limb?.ToString(),
                    labels.Note
                );

    /// <summary>Whether such a line says more than the store's columns hold.</summary>
    public static bool HasMarks(string line) =>
        line.StartsWith(PlatesMark, StringComparison.Ordinal) || line.StartsWith(FramesMark, StringComparison.Ordinal);

    /// <summary>The labels that <see cref="Line"/> wrote.</summary>
    public static RecordingLabels? Labels(string line)
    {
        if (line.Length == 0)
        {
            return null;
        }

        PlateChoice? plates = Marked(PlatesMark) is { } chosen ? PlateChoice.Parse(chosen) : null;
        double? framesPerSecond = Marked(FramesMark) is { } written
            ? double.Parse(written, CultureInfo.InvariantCulture)
            : null;
        string[] cells = line.Split('\t', 8);
        return new RecordingLabels(
            Cell(0),
            Cell(1) is { } day ? LocalDatePattern.Iso.Parse(day).Value : null,
            JumpTasks.Parse(Cell(2)),
            Number(3),
            Number(4),
            Number(5),
            Cell(6) is { } limb ? Enum.Parse<Limb>(limb) : null,
            Cell(7),
            plates,
            framesPerSecond
        );

        string? Marked(string mark)
        {
            if (!line.StartsWith(mark, StringComparison.Ordinal))
            {
                return null;
            }

            int end = line.IndexOf('\t', StringComparison.Ordinal);
            string marked = line[mark.Length..end];
            line = line[(end + 1)..];
            return marked;
        }

        string? Cell(int place) => place < cells.Length && cells[place].Length > 0 ? cells[place] : null;

        double? Number(int place) => Cell(place) is { } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;
    }

    private static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
