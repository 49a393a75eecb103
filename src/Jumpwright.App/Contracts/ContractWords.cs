using System.Text;

namespace Jumpwright.App.Contracts;

/// <summary>How names of the program's own types are spelled in JSON.</summary>
internal static class ContractWords
{
    /// <summary><c>PushToBox</c> becomes <c>push-to-box</c>.</summary>
    public static string Kebab(string pascal)
    {
        var kebab = new StringBuilder(pascal.Length + 8);
        foreach (char letter in pascal)
        {
            if (char.IsAsciiLetterUpper(letter) && kebab.Length > 0)
            {
                kebab.Append('-');
            }

            kebab.Append(char.ToLowerInvariant(letter));
        }

        return kebab.ToString();
    }
}
