namespace Jumpwright.Bench.Speed;

/// <summary>
/// The floor of parsing: every number of a file as digits gathered into a whole number and divided once by a power of ten,
/// with no check of anything. It is what a reader can't do without; it is written here and shares nothing with the reader.
/// </summary>
internal static class PlainParse
{
    private static readonly double[] Tens = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];

    /// <summary>The sum of all numbers after the header.</summary>
    public static double Sum(ReadOnlySpan<byte> text)
    {
        int at = 0;
        while (text[at] == (byte)'#')
        {
            at += text[at..].IndexOf((byte)'\n') + 1;
        }

        at += text[at..].IndexOf((byte)'\n') + 1;
        double sum = 0;
        while (at < text.Length)
        {
            bool negative = text[at] == (byte)'-';
            at += negative ? 1 : 0;
            ulong digits = 0;
            uint d;
            while ((d = (uint)(text[at] - '0')) <= 9)
            {
                digits = (digits * 10) + d;
                at++;
            }

            double value;
            if (text[at] == (byte)'.')
            {
                int point = ++at;
                while ((d = (uint)(text[at] - '0')) <= 9)
                {
                    digits = (digits * 10) + d;
                    at++;
                }

                value = digits / Tens[at - point];
            }
            else
            {
                value = digits;
            }

            sum += negative ? -value : value;
            at++;
        }

        return sum;
    }
}
