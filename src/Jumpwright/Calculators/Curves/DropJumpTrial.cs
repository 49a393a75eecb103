namespace Jumpwright.Calculators.Curves;

/// <summary>One drop jump on the curve.</summary>
/// <param name="DropM">Height stepped from, m: all nominal, or all measured.</param>
/// <param name="Index">Reactive strength index, m/s, one method and device.</param>
/// <param name="ContactS">Contact time, s.</param>
public sealed record DropJumpTrial(double DropM, double Index, double ContactS);
