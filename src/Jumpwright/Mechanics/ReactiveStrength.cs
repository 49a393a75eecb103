namespace Jumpwright.Mechanics;

/// <summary>
/// Indices of rebound. They are not interchangeable: each has its own name. RSImod: Ebben and Petushek 2010, J Strength Cond
/// Res 24:1983–1987, doi:10.1519/JSC.0b013e3181e72466.
/// </summary>
public static class ReactiveStrength
{
    /// <summary>Reactive strength index, m/s: jump height over contact time.</summary>
    public static double Index(double jumpHeightM, double contactS) => jumpHeightM / contactS;

    /// <summary>Flight over contact time, without unit.</summary>
    public static double FlightContactRatio(double flightS, double contactS) => flightS / contactS;

    /// <summary>Modified index, m/s: jump height over time to take-off.</summary>
    public static double ModifiedIndex(double jumpHeightM, double timeToTakeOffS) => jumpHeightM / timeToTakeOffS;
}
