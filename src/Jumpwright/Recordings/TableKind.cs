namespace Jumpwright.Recordings;

/// <summary>Which table follows the header.</summary>
internal enum TableKind
{
    Force,
    Interval,
    Frame,
}
