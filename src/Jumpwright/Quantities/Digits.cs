namespace Jumpwright.Quantities;

/// <summary>How exactly a value is written: as exactly as its doubt lets it.</summary>
public static class Digits
{
    /// <summary>More are never written.</summary>
    private const int Most = 3;

    /// <summary>Decimals that leave a doubt one digit, or two where it begins with a one (GUM 7.2.6 asks for at most two).</summary>
    /// <param name="doubt">Standard uncertainty in the unit written; 0 for none stated.</param>
    /// <param name="value">The value in the same unit; whole numbers without doubt stay whole.</param>
    public static int Of(double doubt, double value)
    {
        if (doubt <= 0)
        {
            return double.IsInteger(value) ? 0 : 2;
        }

        int leading = (int)Math.Floor(Math.Log10(doubt));
        bool small = doubt / Math.Pow(10, leading) < 1.95;
        return Math.Clamp(-leading + (small ? 1 : 0), 0, Most);
    }
}
