namespace Jumpwright.Quantities;

/// <summary>Acceleration of free fall used throughout.</summary>
public static class Gravity
{
    /// <summary>
    /// 9.81 m/s², the value behind every check value of the literature we compare with. The standard value is 9.80665
    /// (3rd General Conference on Weights and Measures, 1901); the difference moves a height by 0.03 %.
    /// </summary>
    public const double MetresPerSecondSquared = 9.81;
}
