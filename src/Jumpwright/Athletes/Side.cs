namespace Jumpwright.Athletes;

/// <summary>A side of the body.</summary>
public enum Side
{
    Unknown,
    Left,
    Right,
    Both,
}
