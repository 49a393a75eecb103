using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>A line of a short table, with as many fields as its header.</summary>
internal static class ShortRow
{
    /// <summary>The fields of the current line.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="header">The header.</param>
    /// <param name="fields">Its fields; none of an empty line or a remark.</param>
    /// <returns>What is wrong with it, or null.</returns>
    public static Refusal? Of(ref TextLines lines, Header header, out List<string> fields)
    {
        fields = [];
        if (lines.Current.Trim(" \t"u8).IsEmpty || lines.Current[0] == (byte)'#')
        {
            return null;
        }

        if (lines.Current.ContainsAnyInRange((byte)0, (byte)8))
        {
            return Refusals.NotText(lines.Number);
        }

        fields = Fields.Of(lines.Current);
        int asked = header.Columns.Length;
        return fields.Count == asked ? null
            : fields.Count < asked ? Refusals.TooFewFields(lines.Number, fields.Count, asked)
            : Refusals.TooManyFields(lines.Number, fields.Count, asked);
    }
}
