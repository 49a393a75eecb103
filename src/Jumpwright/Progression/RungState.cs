namespace Jumpwright.Progression;

/// <summary>Where an athlete stands with an exercise.</summary>
public enum RungState
{
    Closed,
    Open,
    Owned,
}
