using System.Text.RegularExpressions;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>Whose a row is. An id that is nobody's but looks like somebody's closes for them; it is never corrected in silence.</summary>
internal sealed partial class Roster(IEnumerable<string> ids)
{
    private readonly HashSet<string> _ids = ids.ToHashSet(StringComparer.Ordinal);

    /// <summary>Letters and digits with <c>-</c>, <c>_</c> or <c>.</c> between: safe in a file name and in an address.</summary>
    public static bool IsId(string text) => IdShape().IsMatch(text);

    /// <summary>The contract's <c>kebab-case</c>.</summary>
    public static bool IsKebab(string text) => KebabShape().IsMatch(text);

    public bool Knows(string id) => _ids.Contains(id);

    /// <summary>Ids that a person may have meant: equal but for case, spaces, hyphens and leading zeros.</summary>
    public IEnumerable<string> MayBe(string written)
    {
        string plain = Plain(written);
        return _ids.Where(id => Plain(id) == plain).Order(StringComparer.Ordinal);
    }

    private static string Plain(string id) =>
        Zeros().Replace(new string([.. id.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]), "");

    [GeneratedRegex("^[A-Za-z0-9]+([-_.][A-Za-z0-9]+)*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex IdShape();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex KebabShape();

    [GeneratedRegex("(?<![0-9])0+(?=[0-9])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Zeros();
}
