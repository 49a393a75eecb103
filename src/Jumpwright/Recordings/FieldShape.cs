using System.Numerics;
using System.Runtime.CompilerServices;

namespace Jumpwright.Recordings;

/// <summary>
/// How a column's fields are written: so many digits, a point, so many digits, the byte that ends it; seven bytes at most. Fields
/// of one shape are recognised and read in a few operations on a word of eight bytes, without a step for each digit.
/// </summary>
/// <param name="end">The byte that ends the field.</param>
internal struct FieldShape(byte end)
{
    private const ulong Zeros = 0x3030303030303030;
    private const ulong HighBits = 0x8080808080808080;

    /// <summary>What the bytes are less the digits' values: '0' for a digit, point and end themselves.</summary>
    private ulong _template;

    /// <summary>Carries a byte over 0x7F where it is more than a digit may be, or where point or end differ.</summary>
    private ulong _carry;

    /// <summary>The high bit of each byte up to the end; nothing before a shape is learned, but then <see cref="_carry"/> fits none.</summary>
    private ulong _reach;

    private ulong _before;
    private ulong _behind;
    private int _shift;
    private double _power;

    /// <summary>The byte that ends the field.</summary>
    public readonly byte End => end;

    /// <summary>Bytes of the field with its end, without a sign.</summary>
    public int Width { get; private set; }

    /// <summary>Digits after the point.</summary>
    public int Decimals { get; private set; }

    /// <summary>Whether a field of this shape begins with these eight bytes (the first of them lowest).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly bool Fits(ulong bytes)
    {
        ulong rest = bytes ^ _template;
        return (((rest + _carry) | rest) & _reach) == 0 && _reach != 0;
    }

    /// <summary>
    /// The number: its digits beside each other, summed in pairs, in fours and in eights, over the power of ten. Both are exact,
    /// so the one division is correctly rounded.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly double ValueOf(ulong bytes)
    {
        ulong digits = bytes ^ _template;
        digits = ((digits & _before) | ((digits >> 8) & _behind)) << _shift;
        digits = (digits * 2561) >> 8;
        digits = ((digits & 0x00FF00FF00FF00FF) * 6553601) >> 16;
        digits = ((digits & 0x0000FFFF0000FFFF) * 42949672960001) >> 32;
        return (long)digits / _power;
    }

    /// <summary>Takes the shape of a field; false where it is none of this kind, and then the old one stays.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public bool Learn(ulong bytes)
    {
        bytes ^= Zeros;
        ulong others = ((bytes + 0x7676767676767676) | bytes) & HighBits;
        int whole = BitOperations.TrailingZeroCount(others) >> 3;
        int stop = BitOperations.TrailingZeroCount(others & (others - 1)) >> 3;
        if (whole is 0 or 8)
        {
            return false;
        }

        byte first = (byte)(bytes >> (8 * whole));
        bool point = first == ('.' ^ '0') && stop < 8 && (byte)(bytes >> (8 * stop)) == (end ^ '0');
        if (!point && first != (end ^ '0'))
        {
            return false;
        }

        stop = point ? stop : whole;
        Decimals = point ? stop - whole - 1 : 0;
        Width = stop + 1;
        ulong atEnd = 0xFFUL << (8 * stop);
        ulong marks = point ? atEnd | (0xFFUL << (8 * whole)) : atEnd;
        ulong all = stop == 7 ? ulong.MaxValue : (1UL << (8 * (stop + 1))) - 1;
        _template = (Zeros & ~marks) | (((ulong)end << (8 * stop)) & marks);
        _template |= point ? (ulong)'.' << (8 * whole) : 0;
        _carry = (0x7676767676767676 & ~marks) | (0x7F7F7F7F7F7F7F7F & marks);
        _reach = HighBits & all;
        int digits = point ? stop - 1 : stop;
        _before = (1UL << (8 * whole)) - 1;
        _behind = ((1UL << (8 * digits)) - 1) & ~_before;
        _shift = 8 * (8 - digits);
        _power = Number.PowerOfTen(Decimals);
        return true;
    }
}
