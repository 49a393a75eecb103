using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>
/// The fast road for the form that devices write: a known header in its order, plain decimals, commas and line feeds, nothing
/// else. It takes the whole table or none of it: at the first byte that is not of that form it gives up, and
/// <see cref="ForceTable"/> reads from the start, repairs, or says what is wrong. What both can read they read to the same bit.
/// </summary>
internal static class PlainForceTable
{
    private const ulong Zeros = 0x3030303030303030;
    private const ulong HighBits = 0x8080808080808080;

    /// <summary>Whether the columns are time and one force or two, in that order, in seconds and newtons.</summary>
    public static bool Knows(ReadOnlySpan<Column> columns) =>
        BitConverter.IsLittleEndian
        && columns.Length is 2 or 3
        && columns[0] is { Role: ColumnRole.Time, Factor: 1 }
        && (
            columns.Length == 2
                ? columns[1] is { Role: ColumnRole.Force, Factor: 1 }
                : columns[1] is { Role: ColumnRole.LeftForce, Factor: 1 }
                    && columns[2] is { Role: ColumnRole.RightForce, Factor: 1 }
        );

    /// <summary>Reads the table.</summary>
    /// <param name="text">All lines after the header.</param>
    /// <param name="header">The header, which <see cref="Knows"/>.</param>
    /// <param name="labels">Labels of the recording.</param>
    /// <param name="warnings">What reading the lines before it repaired.</param>
    /// <param name="outcome">The recording, or a refusal of its time stamps.</param>
    /// <returns>False: not of the plain form; nothing is said then.</returns>
    public static bool TryRead(
        ReadOnlySpan<byte> text,
        Header header,
        RecordingLabels labels,
        List<string> warnings,
        out Outcome<Recording> outcome
    )
    {
        outcome = default;
        if (text.IsEmpty || text[^1] != (byte)'\n')
        {
            return false;
        }

        int rows = text.Count((byte)'\n');
        if (rows is < ForceTable.FewestSamples or > ForceTable.MostSamples)
        {
            return false;
        }

        bool two = header.Columns.Length == 3;
        double[] times = ArrayPool<double>.Shared.Rent(rows);
        try
        {
            double[] first = GC.AllocateUninitializedArray<double>(rows);
            double[] second = two ? GC.AllocateUninitializedArray<double>(rows) : [];
            double[] total = two ? GC.AllocateUninitializedArray<double>(rows) : first;
            Span<int> decimals = stackalloc int[SamplingRate.Magnitudes];
            decimals.Clear();
            if (!Rows(text, times.AsSpan(0, rows), first, second, total, decimals))
            {
                return false;
            }

            int line = header.Line + 1;
            Outcome<SamplingRate> fit = SamplingRate.Fit(times.AsSpan(0, rows), decimals, 1, i => line + i);
            outcome = fit.TryGet(out SamplingRate rate, out Refusal? uneven)
                ? new ForceRecording(
                    labels,
                    [.. warnings],
                    rate.StartS,
                    rate.RateHz,
                    total,
                    two ? first : default,
                    two ? second : default
                )
                : uneven;
            return true;
        }
        finally
        {
            ArrayPool<double>.Shared.Return(times);
        }
    }

    private static bool Rows(
        ReadOnlySpan<byte> text,
        Span<double> times,
        double[] first,
        double[] second,
        double[] total,
        Span<int> decimals
    )
    {
        bool two = second.Length > 0;
        byte afterFirst = two ? (byte)',' : (byte)'\n';
        int at = 0;
        int timeWidth = 0;
        int firstWidth = 0;
        int secondWidth = 0;
        for (int i = 0; i < times.Length; i++)
        {
            Field(text, ref at, ref timeWidth, (byte)',', out double t, out int places);
            Field(text, ref at, ref firstWidth, afterFirst, out double a, out _);
            double b = 0;
            if (two)
            {
                Field(text, ref at, ref secondWidth, (byte)'\n', out b, out _);
            }

            // A field that could not be read is not a number, and no number is beyond reason here.
            if (
                !(Math.Abs(t) <= ForceTable.MostTimeS)
                || !(Math.Abs(a) <= ForceTable.MostForceN)
                || !(Math.Abs(b) <= ForceTable.MostForceN)
            )
            {
                return false;
            }

            int magnitude = SamplingRate.Magnitude(t);
            if (places > decimals[magnitude])
            {
                decimals[magnitude] = places;
            }

            times[i] = t;
            first[i] = a;
            if (two)
            {
                second[i] = b;
                total[i] = a + b;
            }
        }

        return at == text.Length;
    }

    /// <summary>
    /// One field with the byte that ends it; not a number where it can't be read. Up to seven bytes of digits and point are
    /// taken at once: eight bytes in a word, the point cut out, the digits summed in pairs, in fours and in eights; then the
    /// one exact division of <see cref="Number"/>.
    /// </summary>
    /// <param name="text">The table.</param>
    /// <param name="at">Where the field begins; afterwards, where the next one does.</param>
    /// <param name="width">
    /// Bytes from field to field in the row before. A column's width seldom changes, and a guess that proves right lets the
    /// processor begin the next field before it is done with this one.
    /// </param>
    /// <param name="end">The byte that ends it.</param>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Digits after the point.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Field(
        ReadOnlySpan<byte> text,
        ref int at,
        ref int width,
        byte end,
        out double value,
        out int decimals
    )
    {
        ref byte start = ref MemoryMarshal.GetReference(text);
        int p = at;
        if (p + 9 <= text.Length)
        {
            bool negative = Unsafe.Add(ref start, p) == (byte)'-';
            if (negative)
            {
                p++;
            }

            ulong bytes = Unsafe.ReadUnaligned<ulong>(ref Unsafe.Add(ref start, p)) ^ Zeros;
            ulong others = ((bytes + 0x7676767676767676) | bytes) & HighBits;
            int whole = BitOperations.TrailingZeroCount(others) >> 3;
            int stop = BitOperations.TrailingZeroCount(others & (others - 1)) >> 3;
            ulong digits = 0;
            decimals = -1;
            // The first byte that is no digit is the point and the second the end, or, in a whole number, the first is the end;
            // both are compared as they stand behind the mask.
            if (whole is not 0 and not 8)
            {
                byte first = (byte)(bytes >> (8 * whole));
                if (first == ('.' ^ '0') && stop < 8 && (byte)(bytes >> (8 * stop)) == (end ^ '0'))
                {
                    decimals = stop - whole - 1;
                    ulong before = bytes & ((1UL << (8 * whole)) - 1);
                    ulong behind = (bytes >> (8 * (whole + 1))) << (8 * whole);
                    digits = (before | behind) << (8 * (9 - stop));
                }
                else if (first == (end ^ '0'))
                {
                    decimals = 0;
                    digits = bytes << (8 * (8 - whole));
                    stop = whole;
                }
            }

            if (decimals >= 0)
            {
                digits = (digits * 2561) >> 8;
                digits = ((digits & 0x00FF00FF00FF00FF) * 6553601) >> 16;
                digits = ((digits & 0x0000FFFF0000FFFF) * 42949672960001) >> 32;
                value = Number.Scaled(digits, decimals);
                value = negative ? -value : value;
                int next = p + stop + 1;
                int guess = at + width;
                if (next == guess)
                {
                    at = guess;
                }
                else
                {
                    width = next - at;
                    at = next;
                }

                return;
            }
        }

        (value, decimals, int after) = Slowly(text, at, end);
        width = after - at;
        at = after;
    }

    /// <summary>A field that is longer or written otherwise, by the reader that all others use.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (double Value, int Decimals, int Next) Slowly(ReadOnlySpan<byte> text, int at, byte end)
    {
        int length = at < text.Length ? text[at..].IndexOf(end) : -1;
        return
            length > 0
            && Number.TryRead(text.Slice(at, length), out double value, out int taken, out int decimals)
            && taken == length
            ? (value, decimals, at + length + 1)
            : (double.NaN, 0, at);
    }
}
