namespace Jumpwright.Statistics;

/// <summary>One trial on a curve.</summary>
/// <param name="X">Where.</param>
/// <param name="Y">What came out.</param>
public readonly record struct CurvePoint(double X, double Y);
