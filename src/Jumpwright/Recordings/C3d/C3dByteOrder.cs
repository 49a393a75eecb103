namespace Jumpwright.Recordings.C3d;

/// <summary>How a C3D file writes numbers; the values are the file's own.</summary>
internal enum C3dByteOrder
{
    /// <summary>Little-endian, IEEE floating point.</summary>
    Intel = 84,

    /// <summary>Little-endian whole numbers, VAX floating point (F format).</summary>
    Dec = 85,

    /// <summary>Big-endian, IEEE floating point (MIPS, SGI).</summary>
    Mips = 86,
}
