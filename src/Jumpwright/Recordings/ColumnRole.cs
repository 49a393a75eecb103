namespace Jumpwright.Recordings;

/// <summary>What a column of a recording holds.</summary>
internal enum ColumnRole
{
    Ignored,
    Time,
    Force,
    LeftForce,
    RightForce,
    Contact,
    Flight,
    Frame,
    Event,
}
