using System.Buffers.Text;

namespace Jumpwright.Recordings;

/// <summary>Decimal numbers from UTF-8 text, exactly.</summary>
internal static class Number
{
    private const ulong LargestExactInteger = 1UL << 53;

    private static readonly double[] PowersOfTen =
    [
        1e0,
        1e1,
        1e2,
        1e3,
        1e4,
        1e5,
        1e6,
        1e7,
        1e8,
        1e9,
        1e10,
        1e11,
        1e12,
        1e13,
        1e14,
        1e15,
        1e16,
        1e17,
        1e18,
        1e19,
        1e20,
        1e21,
        1e22,
    ];

    /// <summary>
    /// Reads a number at the start of <paramref name="text"/>. The plain form (sign, digits, point, digits) takes a fast
    /// road that is exact: a whole number up to 2^53 divided once by a power of ten up to 10^22, both of them exact
    /// doubles, so that the one division is correctly rounded. Everything else takes the base library's parser.
    /// </summary>
    /// <param name="text">Begins with the number.</param>
    /// <param name="value">The number; may be infinite or NaN when the text says so.</param>
    /// <param name="length">How many bytes it took; 0 where there is no number.</param>
    /// <param name="decimals">Digits after the point, less the exponent.</param>
    public static bool TryRead(ReadOnlySpan<byte> text, out double value, out int length, out int decimals)
    {
        int at = 0;
        bool negative = false;
        if (text.Length > 0 && (text[0] == (byte)'-' || text[0] == (byte)'+'))
        {
            negative = text[0] == (byte)'-';
            at = 1;
        }

        ulong digits = 0;
        int first = at;
        while (at < text.Length && (uint)(text[at] - '0') <= 9)
        {
            digits = (digits * 10) + (uint)(text[at] - '0');
            at++;
        }

        int count = at - first;
        decimals = 0;
        if (at < text.Length && text[at] == (byte)'.')
        {
            at++;
            int point = at;
            while (at < text.Length && (uint)(text[at] - '0') <= 9)
            {
                digits = (digits * 10) + (uint)(text[at] - '0');
                at++;
            }

            decimals = at - point;
            count += decimals;
        }

        bool plain = at == text.Length || text[at] == (byte)',';
        if (plain && count is > 0 and <= 18 && digits <= LargestExactInteger)
        {
            // By a whole number with a sign: the processor turns that into a double in one step.
            value = (long)digits / PowersOfTen[decimals];
            value = negative ? -value : value;
            length = at;
            return true;
        }

        return TryReadSlowly(text, out value, out length, ref decimals);
    }

    /// <summary>A power of ten, exact from 0 to 22.</summary>
    public static double PowerOfTen(int exponent) => PowersOfTen[exponent];

    private static bool TryReadSlowly(ReadOnlySpan<byte> text, out double value, out int length, ref int decimals)
    {
        int lead = text.Length > 0 && text[0] == (byte)'+' ? 1 : 0;
        if (!Utf8Parser.TryParse(text[lead..], out value, out length) || length == 0)
        {
            length = 0;
            return false;
        }

        length += lead;
        int exponent = text[..length].IndexOfAny((byte)'e', (byte)'E');
        if (exponent >= 0 && Utf8Parser.TryParse(text[(exponent + 1)..length], out int power, out _))
        {
            decimals = Math.Clamp(decimals - power, 0, 17);
        }

        return true;
    }
}
