namespace Jumpwright.Quantities;

/// <summary>In which units lengths and masses are said to people. Files, API and store are SI always.</summary>
public enum UnitSystem
{
    /// <summary>Centimetres and kilograms.</summary>
    Metric,

    /// <summary>Inches and pounds.</summary>
    InchPound,
}
