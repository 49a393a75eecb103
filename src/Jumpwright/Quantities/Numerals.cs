using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Jumpwright.Quantities;

/// <summary>
/// The one place that knows how a language writes a number: with a point in English, with a comma in German. Files, fields to type in and
/// drawings' own coordinates are not read as a language and never pass here.
/// </summary>
public static partial class Numerals
{
    private static readonly FrozenDictionary<string, CultureInfo> WithComma = new[] { "de" }.ToFrozenDictionary(
        l => l,
        _ => Comma(),
        StringComparer.Ordinal
    );

    /// <summary>What formats numbers in that language; as files do where the language is not known.</summary>
    public static CultureInfo In(string language) =>
        WithComma.GetValueOrDefault(language) ?? CultureInfo.InvariantCulture;

    /// <summary>A number.</summary>
    public static string Write(double value, string format, string language) => value.ToString(format, In(language));

    /// <summary>Words whose numbers were written with points, such as <c>0.29 ± 0.02</c>; only for what holds no day, version or name.</summary>
    public static string Write(string withPoints, string language) =>
        WithComma.ContainsKey(language) ? Point().Replace(withPoints, ",") : withPoints;

    private static CultureInfo Comma()
    {
        // Made of the invariant one, so that nothing of the system's language data is needed.
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NumberGroupSeparator = ".";
        return CultureInfo.ReadOnly(comma);
    }

    [GeneratedRegex(@"(?<=\d)\.(?=\d)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Point();
}
