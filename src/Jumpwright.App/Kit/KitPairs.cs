using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Jumpwright.App.Kit;

/// <summary>
/// A list of pairs as it is typed, <c>20:0.28, 40:0.21</c> or <c>20:0,28; 40:0,21</c>. A comma between two digits parts two pairs, or
/// is a decimal comma where the list has no decimal point and would otherwise fall into more pieces than it has colons.
/// </summary>
internal static partial class KitPairs
{
    private const int Most = 60;

    /// <summary>Both halves of each pair, a decimal comma written as a point; what is no pair is left out.</summary>
    public static ImmutableArray<(string A, string B)> Of(string typed)
    {
        bool isDecimal =
            !typed.Contains('.', StringComparison.Ordinal) && Pieces(typed).Length > typed.Count(c => c == ':');
        string plain = isDecimal ? CommaInANumber().Replace(typed, ".") : typed;
        return
        [
            .. Pieces(plain).Take(Most).Select(p => p.Split(':')).Where(p => p.Length == 2).Select(p => (p[0], p[1])),
        ];
    }

    /// <summary>The list with each half of its pairs written anew.</summary>
    public static string With(string typed, Func<string, string> a, Func<string, string> b) =>
        string.Join(", ", Of(typed).Select(p => $"{a(p.A)}:{b(p.B)}"));

    private static string[] Pieces(string typed) =>
        typed.Split(
            [',', ';', '\n', '\r', ' '],
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );

    [GeneratedRegex(@"(?<=\d),(?=\d)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CommaInANumber();
}
