using System.Collections.Frozen;

namespace Jumpwright.Quantities;

/// <summary>
/// What a line must not tear apart: a number and its unit, a value and its ±, a count and what is counted, a day and its month, the two
/// numbers of a count, a thing and its number, a word and the point after it. Whoever breaks a text into lines (a page, a sheet of paper, the floor) asks here, so that no text has to carry
/// such spaces itself; files and what programs ask for never pass here.
/// </summary>
public static class Unbroken
{
    /// <summary>The space that no line ends at.</summary>
    public const char Space = '\u00A0';

    private static readonly FrozenSet<string> Units = Set(
        "cm mm m km in Zoll ft lb kg g N kN W kW J s ms min h d Hz % ° °C BW m/s m/s² N/s kN/s N/m kN/m N/kg W/kg J/kg kg/m contacts/h Kontakte/h"
    );

    /// <summary>What is counted: <c>21 days</c>, <c>2 landings</c>.</summary>
    private static readonly FrozenSet<string> Counted = Set(
        "day days week weeks month months year years hour hours minute minutes second seconds session sessions contact contacts landing landings "
            + "set sets rep reps jump jumps hop hops trial trials step steps box boxes leg legs fault faults test tests exercise exercises athlete "
            + "athletes recording recordings point points body times frames "
            + "Tag Tage Tagen Woche Wochen Monat Monate Monaten Jahr Jahre Jahren Stunde Stunden Minute Minuten Sekunde Sekunden Einheit Einheiten "
            + "Kontakt Kontakte Kontakten Landung Landungen Satz Sätze Sätzen Wiederholung Wiederholungen Wdh Wdh. Sprung Sprünge Sprüngen Hop Hops "
            + "Versuch Versuche Versuchen Schritt Schritte Schritten Kasten Kästen Bein Beine Beinen Fehler Fehlern Test Tests Übung Übungen Athlet "
            + "Athleten Aufnahme Aufnahmen Punkt Punkte Punkten Mal Bilder Bildern"
    );

    /// <summary>A thing before its number or its size: <c>box 30 cm</c>, <c>tier 2</c>.</summary>
    private static readonly FrozenSet<string> Numbered = Set(
        "box Box Kasten tier Tier Stufe page Page Seite note Notiz day Tag trial Trial Versuch number Nummer line Line Zeile"
    );

    private static readonly FrozenSet<string> Months = Set(
        "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec January February March April June July August September October November December "
            + "März Mai Okt Dez Januar Februar Juni Juli Oktober Dezember"
    );

    private static readonly FrozenSet<string> Weekdays = Set("Mon Tue Wed Thu Fri Sat Sun Mo Di Mi Do Fr Sa So");

    /// <summary>Between two numbers: <c>12 of 20</c>, <c>3 to 5</c>.</summary>
    private static readonly FrozenSet<string> Between = Set("of to von bis");

    /// <summary>The text with <see cref="Space"/> wherever a line must not end; every other letter as it was.</summary>
    public static string In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (
            !text.Contains(' ', StringComparison.Ordinal)
            || !(text.AsSpan().ContainsAnyInRange('0', '9') || text.Contains('·', StringComparison.Ordinal))
        )
        {
            return text;
        }

        char[]? held = null;
        for (int at = text.IndexOf(' ', StringComparison.Ordinal); at >= 0; at = text.IndexOf(' ', at + 1))
        {
            if (Holds(text, at))
            {
                held ??= text.ToCharArray();
                held[at] = Space;
            }
        }

        return held is null ? text : new string(held);
    }

    private static bool Holds(ReadOnlySpan<char> text, int at)
    {
        ReadOnlySpan<char> before = Last(text[..at]);
        ReadOnlySpan<char> after = First(text[(at + 1)..]);
        // A point between two things ends a line, it never begins one; before it stands a word, or what another piece of the text ends with.
        if (after is "·")
        {
            return at == 0 || !before.IsEmpty;
        }

        if (before.IsEmpty || after.IsEmpty)
        {
            return false;
        }

        if (IsNumber(before))
        {
            ReadOnlySpan<char> word = after.TrimEnd(".,;:!?)\"“");
            return after[0] is '±' or '×'
                || IsOneOf(Units, word)
                || IsOneOf(Counted, word)
                || (IsOneOf(Months, word) && IsDay(before))
                || (IsOneOf(Between, after) && StartsWithDigit(Second(text[(at + 1)..])));
        }

        return before is "±" or "×" or "≤" or "≥" or "<" or ">" or "≈" ? StartsWithDigit(after) || before is "×"
            // One span of time: 1 min 30 s.
            : before is "min" or "h" ? IsNumber(after) && IsNumber(SecondLast(text[..at]))
            // A product of units: 58 N s.
            : before is "N" ? after.TrimEnd(".,;:!?)") is "s" && IsNumber(SecondLast(text[..at]))
            : StartsWithDigit(after)
                && (
                    (IsOneOf(Months, before.TrimEnd('.')) && IsYear(after))
                    || (IsOneOf(Weekdays, before.TrimEnd(".,")) && IsDay(after))
                    || (IsOneOf(Between, before) && IsNumber(SecondLast(text[..at])))
                    || IsOneOf(Numbered, before.TrimStart('('))
                );
    }

    /// <summary>Ends with a figure, or with the bracket or the point of an ordinal after one.</summary>
    private static bool IsNumber(ReadOnlySpan<char> word) =>
        word.TrimEnd(").") is { Length: > 0 } bare && char.IsAsciiDigit(bare[^1]) && word.Length - bare.Length < 2;

    private static bool IsDay(ReadOnlySpan<char> word) =>
        word.TrimStart('(').TrimEnd('.') is { Length: 1 or 2 } day && int.TryParse(day, out int n) && n is > 0 and < 32;

    private static bool IsYear(ReadOnlySpan<char> word) =>
        word.TrimEnd(".,;:!?)\"“") is { Length: 4 } year && int.TryParse(year, out _);

    private static bool StartsWithDigit(ReadOnlySpan<char> word) =>
        word.TrimStart("−-(") is { Length: > 0 } bare && char.IsAsciiDigit(bare[0]);

    private static bool IsOneOf(FrozenSet<string> words, ReadOnlySpan<char> word) =>
        words.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    private static ReadOnlySpan<char> Last(ReadOnlySpan<char> text) => text[(text.LastIndexOfAny(Gaps) + 1)..];

    private static ReadOnlySpan<char> SecondLast(ReadOnlySpan<char> text) =>
        text.LastIndexOfAny(Gaps) is > 0 and var gap ? Last(text[..gap]) : [];

    private static ReadOnlySpan<char> First(ReadOnlySpan<char> text) =>
        text.IndexOfAny(Gaps) is >= 0 and var gap ? text[..gap] : text;

    private static ReadOnlySpan<char> Second(ReadOnlySpan<char> text) =>
        text.IndexOfAny(Gaps) is >= 0 and var gap ? First(text[(gap + 1)..]) : [];

    private static ReadOnlySpan<char> Gaps => " \n\r\t\u00A0";

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
