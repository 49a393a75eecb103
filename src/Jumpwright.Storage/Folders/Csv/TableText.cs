using System.Text;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>Turns the bytes of a table into text: byte-order marks, UTF-16 and stray bytes are repaired and said.</summary>
internal static class TableText
{
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The text with plain line feeds; null when the bytes are no text.</summary>
    public static string? Decode(string file, ReadOnlySpan<byte> bytes, ProblemWeight whole, ProblemList problems)
    {
        string? text = Decode(file, bytes, problems);
        if (text is null || text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(file, null, whole, "is no text: save it again as CSV, UTF-8.");
            return null;
        }

        return text.ReplaceLineEndings("\n");
    }

    private static string? Decode(string file, ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        if (bytes.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..];
        }
        else if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.Add(file, null, ProblemWeight.Note, "is UTF-16; it was read, but save it as UTF-8.");
            Encoding encoding = bytes[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode;
            return encoding.GetString(bytes[2..]);
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            problems.Add(
                file,
                null,
                ProblemWeight.Note,
                "is not UTF-8; letters outside plain ASCII were lost. Save it again as CSV, UTF-8."
            );
            return Encoding.UTF8.GetString(bytes);
        }
    }
}
