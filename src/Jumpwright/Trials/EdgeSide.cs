namespace Jumpwright.Trials;

/// <summary>One edge of the force before it is read closely.</summary>
/// <param name="First">First sample on the empty side that is not surely loaded.</param>
/// <param name="Way">Step from the loaded side to the empty one: +1 at a take-off, −1 at a touch-down.</param>
/// <param name="ZeroN">Force of the empty plate there, N.</param>
/// <param name="NoiseN">Standard deviation of a sample, N.</param>
/// <param name="LoadN">Usual load, N.</param>
/// <param name="RingingN">How far the plate swings after take-offs, N; 0 for a quiet one.</param>
/// <param name="About">Where a first reading saw it, samples inwards of the first one; NaN where it is not known.</param>
/// <param name="AboutU">Standard uncertainty of that, samples.</param>
internal readonly record struct EdgeSide(
    int First,
    int Way,
    double ZeroN,
    double NoiseN,
    double LoadN,
    double RingingN = 0,
    double About = double.NaN,
    double AboutU = 0
);
