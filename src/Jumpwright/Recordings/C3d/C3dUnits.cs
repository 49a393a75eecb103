namespace Jumpwright.Recordings.C3d;

/// <summary>Units of force as C3D files write them.</summary>
internal static class C3dUnits
{
    /// <summary>Standard gravity in N/kg, exact; the pound is 0.45359237 kg, exact (SI brochure; NIST SP 811).</summary>
    private const double KilogramForceN = 9.80665;

    private const double PoundForceN = 0.45359237 * KilogramForceN;

    /// <summary>Newtons in one of that unit, or null where the unit is not known.</summary>
    public static double? Newtons(string unit) =>
        unit.ToUpperInvariant() switch
        {
            "N" or "NT" or "NEWTON" or "NEWTONS" => 1,
            "KN" or "KILONEWTON" or "KILONEWTONS" => 1000,
            "LBF" or "LB" or "LBS" or "POUND" or "POUNDS" => PoundForceN,
            "KGF" or "KP" => KilogramForceN,
            _ => null,
        };

    /// <summary>A calibration matrix takes volts and gives newtons; some files name its input by what comes out.</summary>
    public static double? ThroughMatrix(string unit) =>
        unit.ToUpperInvariant() is "V" or "VOLT" or "VOLTS"
        || Newtons(unit) is 1
        || unit.ToUpperInvariant() is "NM" or "N-M" or "N.M" or "NMM" or "N-MM" or "N.MM" or "NTMM"
            ? 1
            : null;
}
