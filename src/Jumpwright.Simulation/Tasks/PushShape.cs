namespace Jumpwright.Simulation.Tasks;

/// <summary>Where propulsion's force peaks.</summary>
public enum PushShape
{
    /// <summary>Near the lowest point, then falling.</summary>
    Early,

    /// <summary>Late, just before the ankles finish.</summary>
    Late,

    /// <summary>Twice, with a dip between.</summary>
    TwoPeaks,

    /// <summary>Nearly level.</summary>
    Level,
}
