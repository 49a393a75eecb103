namespace Jumpwright.Calculators.Curves;

/// <summary>A curve at one place, for drawing.</summary>
/// <param name="X">Place.</param>
/// <param name="Mean">Expected value there.</param>
/// <param name="Low">Lower end of the 95 % band.</param>
/// <param name="High">Upper end.</param>
public readonly record struct CurveSample(double X, double Mean, double Low, double High);
