namespace Jumpwright.Safety;

/// <summary>The words of free text: lower case, letters, digits and inner hyphens.</summary>
internal static class TextWords
{
    public static string[] Of(string? text) =>
        text is null
            ? []
            :
            [
                .. new string([.. text.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) || c == '-' ? c : ' ')])
                    .Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Select(w => w.Trim('-'))
                    .Where(w => w.Length > 0),
            ];
}
