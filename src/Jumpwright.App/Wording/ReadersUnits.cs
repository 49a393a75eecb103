using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>
/// Prose that ships with metric lengths and masses written in it, for who reads inches and pounds: to the tenth, as sentences write a
/// <see cref="Length"/>, so that one height reads the same wherever it stands.
/// </summary>
internal static partial class ReadersUnits
{
    /// <summary>The prose in the units of the request, for example <c>a box of 7.8-11.8 in</c>.</summary>
    public static string In(string prose) => In(prose, Speech.Now);

    /// <summary>The same as somebody speaks.</summary>
    public static string In(string prose, Speech speech) =>
        speech.Units == UnitSystem.Metric
            ? prose
            : Amounts()
                .Replace(
                    prose,
                    found =>
                    {
                        string unit = found.Groups["unit"].Value;
                        string said = unit == "kg" ? "lb" : "in";
                        return Number()
                                .Replace(found.Groups["numbers"].Value, n => Converted(n.Value, unit, speech.Language))
                            + " "
                            + (TextBook.Of(speech.Language, $"unit.{said}") ?? said);
                    }
                );

    private static string Converted(string written, string unit, string language)
    {
        double value = double.Parse(written.Replace(',', '.'), CultureInfo.InvariantCulture);
        double said = unit switch
        {
            "cm" => Customary.InchesToWrite(value / 100),
            "m" => Customary.InchesToWrite(value),
            _ => Math.Round(Customary.PoundsOf(value), 1),
        };
        return Numerals.Write(said, "0.#", language);
    }

    /// <summary>One number or several of one unit: <c>20-30 cm</c>, <c>10 then 15 then 20 cm</c>.</summary>
    [GeneratedRegex(
        @"(?<![\w.,])(?<numbers>\d+(?:[.,]\d+)?(?:(?:[-–]|, | to | and | then |, then | bis | und |, dann )\d+(?:[.,]\d+)?)*) (?<unit>cm|m|kg)(?![\w/²^])",
        RegexOptions.CultureInvariant,
        1000
    )]
    private static partial Regex Amounts();

    [GeneratedRegex(@"\d+(?:[.,]\d+)?", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Number();
}
