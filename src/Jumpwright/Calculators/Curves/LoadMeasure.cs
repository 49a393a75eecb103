namespace Jumpwright.Calculators.Curves;

/// <summary>What is drawn over load.</summary>
public enum LoadMeasure
{
    /// <summary>Jump height, m.</summary>
    Height,

    /// <summary>Mean or take-off velocity, m/s; one kind only.</summary>
    Velocity,

    /// <summary>Power, W; peak or mean, one kind only.</summary>
    Power,
}
