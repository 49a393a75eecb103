namespace Jumpwright.Storage.Folders.Csv;

/// <summary>
/// Finds the first quotation mark that stands where RFC 4180 allows none. A parser that is generous there swallows the
/// rows that follow, and with them somebody's restriction.
/// </summary>
internal static class QuoteScan
{
    /// <summary>True when every quoted cell opens after a delimiter, doubles its inner marks, and closes before one.</summary>
    public static bool IsRegular(ReadOnlySpan<char> text, char delimiter)
    {
        bool inside = false;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] != '"')
            {
                continue;
            }

            if (!inside)
            {
                if (i > 0 && text[i - 1] != delimiter && text[i - 1] != '\n')
                {
                    return false;
                }

                inside = true;
            }
            else if (i + 1 < text.Length && text[i + 1] == '"')
            {
                i++;
            }
            else
            {
                if (i + 1 < text.Length && text[i + 1] != delimiter && text[i + 1] != '\n')
                {
                    return false;
                }

                inside = false;
            }
        }

        return !inside;
    }
}
