namespace Jumpwright.Statistics;

/// <summary>Which SD stands in monotony: both are in use and give different numbers, so it is always named.</summary>
public enum DeviationKind
{
    /// <summary>n − 1 in the denominator.</summary>
    Sample,

    /// <summary>n in the denominator.</summary>
    Population,
}
