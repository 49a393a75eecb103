namespace Jumpwright.Recordings;

/// <summary>Which legs took part.</summary>
public enum Limb
{
    Both,
    Left,
    Right,
}
