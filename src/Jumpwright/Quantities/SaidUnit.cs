using System.Globalization;

namespace Jumpwright.Quantities;

/// <summary>How a sentence writes a quantity: its digits and its unit, as in <c>0.# kg</c>; a unit in brackets is known but not written.</summary>
internal readonly record struct SaidUnit(string Digits, string Unit, bool IsWritten)
{
    public static SaidUnit Of(string? format)
    {
        int at = format?.LastIndexOf(' ') ?? -1;
        if (format is null || at < 1)
        {
            throw new FormatException($"'{format}' does not say in which unit.");
        }

        string unit = format[(at + 1)..];
        return unit is ['(', .. var inside, ')']
            ? new(format[..at], inside, IsWritten: false)
            : new(format[..at], unit, IsWritten: true);
    }

    public string Write(double value) => Write(value, Digits, Unit);

    public string Write(double value, string digits, string unit) =>
        value.ToString(digits, CultureInfo.InvariantCulture).Replace('-', '−') + (IsWritten ? " " + unit : "");
}
