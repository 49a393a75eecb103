namespace Jumpwright.Recordings;

/// <summary>Reads bytes of a file from a place on, as many as it likes.</summary>
/// <param name="into">Receives them; not empty.</param>
/// <param name="offset">Place of the first, from the beginning of the file.</param>
/// <returns>How many were read; 0 only at the end.</returns>
public delegate int ReadAt(Span<byte> into, long offset);
