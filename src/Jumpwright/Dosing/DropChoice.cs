using Jumpwright.Quantities;

namespace Jumpwright.Dosing;

/// <summary>A height to step from.</summary>
/// <param name="NominalM">The box, m.</param>
/// <param name="ExpectedM">The real fall to be expected, m; null where it was never measured for this athlete.</param>
/// <param name="Because">Why this one.</param>
internal sealed record DropChoice(double NominalM, double? ExpectedM, Sentence Because);
