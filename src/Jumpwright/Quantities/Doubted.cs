using System.Globalization;

namespace Jumpwright.Quantities;

/// <summary>Numbers with their doubt as a sentence writes them: as exactly as the doubt lets them be, so that one number reads the same everywhere.</summary>
public static class Doubted
{
    /// <summary>A time with one standard uncertainty, both in s, in ms.</summary>
    public static Sentence Milliseconds(double value, double doubt) => $"{Number(1000 * value, 1000 * doubt)} ms";

    /// <summary>A share with one standard uncertainty, both in %.</summary>
    public static Sentence Percent(double value, double doubt) => $"{Number(value, doubt)} %";

    /// <summary>A number with one standard uncertainty, for example <c>0.29 ± 0.02</c>.</summary>
    public static SaidNumber Number(double value, double doubt)
    {
        int digits = Digits.Of(doubt, value);
        // Nothing is written as a negative nought.
        double rounded = Math.Round(value, digits) + 0.0;
        string number = rounded.ToString("F" + digits, CultureInfo.InvariantCulture).Replace('-', '−');
        return new($"{number} ± {doubt.ToString("F" + digits, CultureInfo.InvariantCulture)}");
    }
}
