using System.Text;

namespace Jumpwright.Recordings;

/// <summary>The fields of one line of a CSV (RFC 4180): quotes are taken off, white space round a field too.</summary>
internal static class Fields
{
    /// <summary>The fields as strings; for headers and short tables, not for samples.</summary>
    public static List<string> Of(ReadOnlySpan<byte> line)
    {
        var fields = new List<string>();
        var text = new StringBuilder();
        bool quoted = false;
        string whole = Encoding.UTF8.GetString(line);
        for (int i = 0; i < whole.Length; i++)
        {
            char c = whole[i];
            if (quoted)
            {
                if (c != '"')
                {
                    text.Append(c);
                }
                else if (i + 1 < whole.Length && whole[i + 1] == '"')
                {
                    text.Append('"');
                    i++;
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c == ',')
            {
                fields.Add(text.ToString().Trim());
                text.Clear();
            }
            else
            {
                text.Append(c);
            }
        }

        fields.Add(text.ToString().Trim());
        return fields;
    }

    /// <summary>A field as a person should see it in a sentence: short, on one line, without control characters.</summary>
    public static string Shown(ReadOnlySpan<byte> field) =>
        Shown(Encoding.UTF8.GetString(field[..Math.Min(field.Length, 80)]));

    /// <inheritdoc cref="Shown(ReadOnlySpan{byte})"/>
    public static string Shown(string field)
    {
        var shown = new StringBuilder();
        foreach (char c in field.Trim())
        {
            if (shown.Length >= 40)
            {
                shown.Append('…');
                break;
            }

            shown.Append(char.IsControl(c) || c == '\uFFFD' ? '?' : c);
        }

        return shown.ToString();
    }

    /// <summary>A CSV line with quotes taken off, for the sample reader; commas inside quotes stay out of reach.</summary>
    public static byte[] Unquoted(ReadOnlySpan<byte> line)
    {
        List<string> fields = Of(line);
        return Encoding.UTF8.GetBytes(string.Join(',', fields.Select(f => f.Replace(',', ';'))));
    }
}
