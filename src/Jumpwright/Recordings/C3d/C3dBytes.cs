using System.Buffers.Binary;

namespace Jumpwright.Recordings.C3d;

/// <summary>A C3D file's bytes with its byte order. Positions are the caller's to check.</summary>
internal readonly ref struct C3dBytes(ReadOnlySpan<byte> file, C3dByteOrder order)
{
    private readonly ReadOnlySpan<byte> _file = file;

    public ReadOnlySpan<byte> File => _file;

    public int Length => _file.Length;

    public ushort Word(int at) =>
        order == C3dByteOrder.Mips
            ? BinaryPrimitives.ReadUInt16BigEndian(_file[at..])
            : BinaryPrimitives.ReadUInt16LittleEndian(_file[at..]);

    /// <summary>A 32-bit floating-point number; a reserved VAX operand is not a number.</summary>
    public double Float(int at) =>
        order switch
        {
            C3dByteOrder.Mips => BinaryPrimitives.ReadSingleBigEndian(_file[at..]),
            C3dByteOrder.Dec => Vax(_file[at..]),
            _ => BinaryPrimitives.ReadSingleLittleEndian(_file[at..]),
        };

    /// <summary>
    /// VAX F floating: two little-endian words, the high one first; sign, 8 bits of exponent in excess of 128, and a fraction
    /// in [0.5, 1) whose first bit is hidden. Exponent 0 is zero, or with the sign set a reserved operand.
    /// </summary>
    private static double Vax(ReadOnlySpan<byte> bytes)
    {
        uint high = BinaryPrimitives.ReadUInt16LittleEndian(bytes);
        uint low = BinaryPrimitives.ReadUInt16LittleEndian(bytes[2..]);
        int exponent = (int)((high >> 7) & 0xFF);
        bool negative = (high & 0x8000) != 0;
        if (exponent == 0)
        {
            return negative ? double.NaN : 0;
        }

        uint fraction = ((high & 0x7F) << 16) | low | 0x80_0000;
        double value = Math.ScaleB(fraction, exponent - 128 - 24);
        return negative ? -value : value;
    }
}
