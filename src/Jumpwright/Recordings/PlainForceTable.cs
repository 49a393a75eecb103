using System.Buffers;
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
    /// <param name="lines">The lines after the header; they are left anywhere.</param>
    /// <param name="header">The header, which <see cref="Knows"/>.</param>
    /// <param name="labels">Labels of the recording.</param>
    /// <param name="warnings">What reading the lines before it repaired.</param>
    /// <param name="outcome">The recording, or a refusal of its time stamps.</param>
    /// <returns>False: not of the plain form; nothing is said then.</returns>
    public static bool TryRead(
        ref TextLines lines,
        Header header,
        RecordingLabels labels,
        List<string> warnings,
        out Outcome<Recording> outcome
    )
    {
        outcome = default;
        if (!lines.MayEndWhole)
        {
            return false;
        }

        bool two = header.Columns.Length == 3;
        double[] times = [];
        double[] first = [];
        double[] second = [];
        double[] total = [];
        int count = 0;
        Span<int> decimals = stackalloc int[SamplingRate.Magnitudes];
        decimals.Clear();
        try
        {
            while (!lines.AtEnd)
            {
                ReadOnlySpan<byte> text = lines.Whole;
                int rows = text.Count((byte)'\n');
                if (rows == 0 || count + rows > ForceTable.MostSamples)
                {
                    return false;
                }

                if (count + rows > first.Length)
                {
                    int room = Room(count + rows, rows * (double)(lines.Bytes - text.Length) / text.Length);
                    times = Rented(times, count, room);
                    Grow(ref first, count, room);
                    Grow(ref second, count, two ? room : 0);
                    Grow(ref total, count, two ? room : 0);
                }

                if (
                    !Rows(
                        text,
                        times.AsSpan(count, rows),
                        first.AsSpan(count),
                        second.AsSpan(two ? count : 0),
                        total.AsSpan(two ? count : 0),
                        decimals
                    )
                )
                {
                    return false;
                }

                count += rows;
                lines.Pass(text.Length);
            }

            if (count < ForceTable.FewestSamples)
            {
                return false;
            }

            int line = header.Line + 1;
            Outcome<SamplingRate> fit = SamplingRate.Fit(times.AsSpan(0, count), decimals, 1, i => line + i);
            ReadOnlyMemory<double> one = first.AsMemory(0, count);
            outcome = fit.TryGet(out SamplingRate rate, out Refusal? uneven)
                ? new ForceRecording(
                    labels,
                    [.. warnings],
                    rate.StartS,
                    rate.RateHz,
                    two ? total.AsMemory(0, count) : one,
                    two ? one : default,
                    two ? second.AsMemory(0, count) : default
                )
                : uneven;
            return true;
        }
        finally
        {
            Return(times);
        }
    }

    /// <summary>Room for the samples at hand and, a little more than it seems, for those that follow.</summary>
    private static int Room(int atHand, double following) =>
        following <= 0 ? atHand : (int)Math.Min((1.02 * following) + atHand + 64, ForceTable.MostSamples);

    private static double[] Rented(double[] before, int count, int room)
    {
        double[] times = ArrayPool<double>.Shared.Rent(room);
        before.AsSpan(0, count).CopyTo(times);
        Return(before);
        return times;
    }

    private static void Return(double[] times)
    {
        if (times.Length > 0)
        {
            ArrayPool<double>.Shared.Return(times);
        }
    }

    private static void Grow(ref double[] column, int count, int room)
    {
        if (room > 0)
        {
            double[] larger = GC.AllocateUninitializedArray<double>(room);
            column.AsSpan(0, count).CopyTo(larger);
            column = larger;
        }
    }

    private static bool Rows(
        ReadOnlySpan<byte> text,
        Span<double> times,
        Span<double> first,
        Span<double> second,
        Span<double> total,
        Span<int> decimals
    )
    {
        bool two = second.Length > 0;
        int at = 0;
        Span<FieldShape> shapes = [new((byte)','), new(two ? (byte)',' : (byte)'\n'), new((byte)'\n')];
        ref FieldShape timeShape = ref shapes[0];
        ref FieldShape firstShape = ref shapes[1];
        ref FieldShape secondShape = ref shapes[2];
        for (int i = 0; i < times.Length; i++)
        {
            double t = Field(text, ref at, ref timeShape, out int places);
            double a = Field(text, ref at, ref firstShape, out _);
            double b = two ? Field(text, ref at, ref secondShape, out _) : 0;

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
    /// taken at once, eight bytes in a word, against the shape of the field above it: then where the next field begins does
    /// not hang on what stands in this one, and the processor goes ahead. Then one exact division as <see cref="Number"/>.
    /// </summary>
    /// <param name="text">The table.</param>
    /// <param name="at">Where the field begins; afterwards, where the next one does.</param>
    /// <param name="shape">The column's shape; learned anew where the field has another.</param>
    /// <param name="decimals">Digits after the point.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Field(ReadOnlySpan<byte> text, ref int at, ref FieldShape shape, out int decimals)
    {
        int p = at;
        if (p + 9 <= text.Length)
        {
            ref byte start = ref MemoryMarshal.GetReference(text);
            bool negative = Unsafe.Add(ref start, p) == (byte)'-';
            if (negative)
            {
                p++;
            }

            ulong bytes = Unsafe.ReadUnaligned<ulong>(ref Unsafe.Add(ref start, p));
            if (shape.Fits(bytes) || shape.Learn(bytes))
            {
                at = p + shape.Width;
                decimals = shape.Decimals;
                double value = shape.ValueOf(bytes);
                return negative ? -value : value;
            }
        }

        (double slow, decimals, at) = Slowly(text, at, shape.End);
        return slow;
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
