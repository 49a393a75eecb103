namespace Jumpwright.Dosing;

/// <summary>Drop jumps from one box, averaged.</summary>
/// <param name="NominalM">Height stepped from, m.</param>
/// <param name="Index">Reactive strength index, m/s.</param>
/// <param name="IndexUncertainty">Its standard uncertainty, m/s.</param>
/// <param name="ContactS">Contact, s.</param>
/// <param name="ContactUncertaintyS">Its standard uncertainty, s.</param>
internal readonly record struct DropTest(
    double NominalM,
    double Index,
    double IndexUncertainty,
    double ContactS,
    double ContactUncertaintyS
);
