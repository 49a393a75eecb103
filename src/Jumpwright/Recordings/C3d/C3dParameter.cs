namespace Jumpwright.Recordings.C3d;

/// <summary>Where a parameter of a C3D file stands and how it is written.</summary>
/// <param name="Group">Number of its group.</param>
/// <param name="Name">Upper-case.</param>
/// <param name="Type">−1 characters, 1 bytes, 2 words of 16 bits, 4 floating point.</param>
/// <param name="Dimensions">The first varies fastest; empty for a single value.</param>
/// <param name="At">Position of its first byte in the file.</param>
/// <param name="Count">How many values; all of them lie within the file.</param>
internal sealed record C3dParameter(int Group, string Name, int Type, int[] Dimensions, int At, int Count);
