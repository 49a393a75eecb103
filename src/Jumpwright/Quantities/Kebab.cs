using System.Diagnostics.CodeAnalysis;

namespace Jumpwright.Quantities;

/// <summary>Ids are kebab-case: lower-case letters, digits and single hyphens, beginning with a letter.</summary>
public static class Kebab
{
    /// <summary>True for an id such as <c>depth-jump</c>.</summary>
    public static bool Is([NotNullWhen(true)] string? id)
    {
        if (string.IsNullOrEmpty(id) || !char.IsAsciiLetterLower(id[0]) || id[^1] == '-')
        {
            return false;
        }

        for (int i = 1; i < id.Length; i++)
        {
            bool fine =
                char.IsAsciiLetterLower(id[i]) || char.IsAsciiDigit(id[i]) || (id[i] == '-' && id[i - 1] != '-');
            if (!fine)
            {
                return false;
            }
        }

        return true;
    }
}
