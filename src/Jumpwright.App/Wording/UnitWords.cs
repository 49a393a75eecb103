using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>Plain numbers with the unit of their table, in the units of the request: lengths in inches and masses in pounds where these are asked for.</summary>
internal static class UnitWords
{
    /// <summary>For example <c>46 cm</c>, or <c>18.1 in</c>; other units stay as they are.</summary>
    public static string Value(double value, string unit) => $"{Number(value, unit)} {Unit(unit)}";

    /// <summary>The same in the language of the request, where it has a word for the unit.</summary>
    public static string Spoken(double value, string unit) =>
        $"{Number(value, unit)} {(value == 1 ? TextBook.Find($"unit.{unit}.one") : null) ?? Word(Unit(unit))}";

    /// <summary>A unit in the language of the request; most are the same in all.</summary>
    public static string Word(string unit) => TextBook.Find($"unit.{unit}") ?? unit;

    /// <summary>So many of what is counted, with the word for one where it is one and there is such a word.</summary>
    public static string Counted(double value, string unit) =>
        $"{ItemWords.Number(value)} {(value == 1 ? TextBook.Find($"unit.{unit}.one") : null) ?? Word(unit)}";

    /// <summary>The name of a field that takes a length or a mass, with the unit in which it is typed: <c>Stature, in</c>.</summary>
    public static string Labelled(string key, string unit) => $"{TextBook.T[key]}, {Word(Unit(unit))}";

    /// <summary>The number alone.</summary>
    public static string Number(double value, string unit) =>
        (Speech.Now.Units, unit) switch
        {
            (UnitSystem.InchPound, "m") => ItemWords.Number(Customary.InchesToWrite(value)),
            (UnitSystem.InchPound, "cm") => ItemWords.Number(Customary.InchesToWrite(value / 100)),
            (UnitSystem.InchPound, "kg") => ItemWords.Number(Math.Round(Customary.PoundsOf(value), 1)),
            _ => ItemWords.Number(value),
        };

    /// <summary>The unit it is said in.</summary>
    public static string Unit(string unit) => TypedAmount.Unit(unit, Speech.Now.Units);
}
